import { countOf } from './format-number.ts';
import type { SheetColumn } from './sheet-columns.ts';
import type { SheetLook } from './sheet-look.ts';

/** Which rows are on screen and in what order, when that is not simply the plan; empty when it is. */
export function lookingWords(
  { sort, filters }: SheetLook,
  columns: readonly SheetColumn[],
  shown: number,
  all: number,
): string {
  const labelOf = (id: string) => columns.find((column) => column.id === id)?.label ?? id;
  const filtered = Object.entries(filters).map(([id, filter]) => `${labelOf(id)} ${filter}`);
  const rows = filtered.length === 0 ? '' : `${shown} of ${countOf(all, 'scenario')}: ${filtered.join(', ')}.`;
  const order = sort
    ? `Sorted by ${labelOf(sort.columnId)}, ${sort.way === 'rising' ? 'smallest' : 'largest'} first.`
    : '';
  return [rows, order].filter((part) => part !== '').join(' ');
}
