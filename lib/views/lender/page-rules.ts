import { cssString } from './css-string.ts';
import type { LenderDocument } from './document-types.ts';

const SIZES = { a4: 'A4', letter: 'letter' } as const;

/** Rules of the printed page: its size, and what stands at the foot of every page. */
export function pageRules({ shop, scenario, date }: LenderDocument, paper: keyof typeof SIZES): string {
  const size = SIZES[paper];
  const foot = 'font: 8pt system-ui, sans-serif; color: #435864;';
  const boxes = `
  @bottom-left { content: ${cssString(`${shop}, ${scenario}`)}; ${foot} }
  @bottom-right { content: ${cssString(`${date} · page `)} counter(page) " of " counter(pages); ${foot} }`;
  return `@page { size: ${size} portrait; margin: 16mm 17mm 18mm;${boxes} }
@page wide { size: ${size} landscape; margin: 14mm 12mm 16mm; }`;
}
