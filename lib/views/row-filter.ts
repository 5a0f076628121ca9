/** What a cell holds, for comparing: as it is shown, and plain. */
export interface FilteredCell {
  readonly text: string;
  readonly plainText: string;
}

const COMPARED = /^(<=|>=|<|>|=)\s*(.+)$/;
const BETWEEN = /^(.+?)\s*\.\.\s*(.+)$/;

/** A figure in a filter: thousands may be marked, signs of money and per cent are passed over. */
function figure(text: string): number {
  const plain = text.replace(/[,$€£¥%\s]/g, '').replace('−', '-');
  return plain === '' ? Number.NaN : Number(plain);
}

function holds(value: number, sign: string, limit: number): boolean {
  if (sign === '<') return value < limit;
  if (sign === '>') return value > limit;
  if (sign === '<=') return value <= limit;
  return sign === '>=' ? value >= limit : value === limit;
}

/**
 * True when a cell passes a filter: `>5`, `<= 1,200`, `=3` and `2..5` compare figures, anything else must be part of what
 * the cell shows, in large or small letters.
 */
export function passesFilter(cell: FilteredCell, filter: string): boolean {
  const text = filter.trim();
  const value = figure(cell.plainText);
  const [, sign = '', limit = ''] = COMPARED.exec(text) ?? [];
  if (sign !== '' && !Number.isNaN(figure(limit))) return holds(value, sign, figure(limit));
  const [, low = '', high = ''] = BETWEEN.exec(text) ?? [];
  const [least, most] = [figure(low), figure(high)];
  if (!Number.isNaN(least) && !Number.isNaN(most)) return value >= least && value <= most;
  const wanted = text.replace(/^=\s*/, '').toLowerCase();
  return cell.text.toLowerCase().includes(wanted) || cell.plainText.toLowerCase().includes(wanted);
}
