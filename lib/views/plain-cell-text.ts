import type { ScenarioRow } from './scenario-rows.ts';
import { FLAG_COLUMN_ID } from './sheet-columns.ts';

/** The text of one cell for other programs: plain figures without marks for thousands. */
export function plainCellText(row: ScenarioRow, columnId: string): string {
  if (columnId === FLAG_COLUMN_ID) return row.flag ? `${row.flag.title}: ${row.flag.figure}` : '';
  return (row.entries[columnId] ?? row.outputs[columnId])?.plainText ?? '';
}
