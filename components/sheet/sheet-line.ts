import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import type { SideLine } from '../../lib/views/side-lines.ts';

/** One line of the grid: a scenario, or sideways an entry or output of all of them. */
export type SheetLine = ScenarioRow | SideLine;

/** What a cell of the grid is about. */
export interface PickedCell {
  readonly row: ScenarioRow;
  readonly column: SheetColumn;
}

/** Finds what the cells of one grid column are about; null for headings and labels. */
export type PickCell = (line: SheetLine | undefined) => PickedCell | null;

export function isSideLine(line: SheetLine): line is SideLine {
  return 'kind' in line;
}
