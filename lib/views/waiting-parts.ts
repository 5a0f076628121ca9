import type { SheetState } from './sheet-state.ts';

/** The part of the page that shows a part of the plan, where the two go by different names. */
const SHOWN_IN: Readonly<Record<string, string>> = { crew: 'site', freezer: 'site' };

function partOf(place: string): string {
  const [root = ''] = place.split('.');
  return SHOWN_IN[root] ?? root;
}

/** How many entries wait to be mended in each part of the page, by the part's id; parts without any are left out. */
export function waitingParts({ rejected, misread }: SheetState): ReadonlyMap<string, number> {
  const parts = [...rejected.map(() => 'scenarios'), ...misread.map(({ place }) => partOf(place))];
  return new Map([...new Set(parts)].map((part) => [part, parts.filter((other) => other === part).length]));
}

/** "2 entries to mend". */
export function waitingWords(count: number): string {
  return count === 1 ? '1 entry to mend' : `${count} entries to mend`;
}
