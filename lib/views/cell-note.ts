import { NONE } from './format-number.ts';
import { withUnit } from './format-quantity.ts';
import type { RowMessage, ScenarioRow } from './scenario-rows.ts';
import type { SheetColumn } from './sheet-columns.ts';

/** The line under the sheet: what the focused cell is about. */
export interface CellNote {
  readonly label: string;
  /** All that stands in the cell, which may be too narrow for it. */
  readonly value: string;
  readonly words: string;
  /** What is wrong with the entry and what mends it; empty when nothing is. */
  readonly fault: string;
  /** What somebody wrote beside the cell; empty for nothing. */
  readonly note: string;
  /** What else there is to tell of the row. */
  readonly messages: readonly RowMessage[];
}

function cellValue(row: ScenarioRow, column: SheetColumn): string {
  const text = row.entries[column.id]?.text ?? row.outputs[column.id]?.text;
  if (text !== undefined) return text === '' || text === NONE ? text : withUnit(text, column.unit);
  return row.flag ? `${row.flag.title}: ${row.flag.figure}` : '';
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
    label: column.label,
    value: fault ? '' : cellValue(row, column),
    words: `${column.meaning}${how}`,
    fault: fault ? `${fault.problem} ${fault.remedy}` : '',
    note: row.notes[column.id] ?? '',
    messages: fault ? [] : row.messages,
  };
}
