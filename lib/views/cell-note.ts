import type { ScenarioRow } from './scenario-rows.ts';
import type { SheetColumn } from './sheet-columns.ts';

/** The line under the sheet: what the focused cell is about. */
export interface CellNote {
  readonly label: string;
  readonly words: string;
  /** What is wrong with the entry and what mends it; empty when nothing is. */
  readonly fault: string;
}

/** What there is to say of a cell; null when there is no such cell. */
export function cellNote(
  rows: readonly ScenarioRow[],
  columns: readonly SheetColumn[],
  cell: { readonly scenarioId: string; readonly columnId: string } | null,
): CellNote | null {
  const row = rows.find((candidate) => candidate.id === cell?.scenarioId);
  const column = columns.find((candidate) => candidate.id === cell?.columnId);
  if (!row || !column) return null;
  const fault = row.entries[column.id]?.fault;
  const how = column.formula === '' ? '' : ` Worked out as: ${column.formula}.`;
  return {
    label: column.unit === '' ? column.label : `${column.label} [${column.unit}]`,
    words: `${column.meaning}${how}`,
    fault: fault ? `${fault.problem} ${fault.remedy}` : '',
  };
}
