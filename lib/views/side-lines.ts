import type { ScenarioRow } from './scenario-rows.ts';
import { FLAG_COLUMN_ID, GROUP_LABELS, type SheetColumn, type SheetGroup } from './sheet-columns.ts';
import { headingId } from './shown-sheet.ts';

/** One line of the sheet sideways: an entry or an output of all scenarios, or the heading of a group of them. */
export interface SideLine {
  readonly kind: 'side';
  readonly id: string;
  readonly label: string;
  readonly unit: string;
  /** Null for a heading. */
  readonly column: SheetColumn | null;
  /** The scenarios from left to right. */
  readonly rows: readonly ScenarioRow[];
}

function headingLine(group: SheetGroup, rows: readonly ScenarioRow[]): SideLine {
  return { kind: 'side', id: headingId(group), label: GROUP_LABELS[group], unit: '', column: null, rows };
}

function lineOf(column: SheetColumn, rows: readonly ScenarioRow[]): SideLine {
  return { kind: 'side', id: column.id, label: column.label, unit: column.unit, column, rows };
}

/** The lines of the sheet sideways, group by group; the names stand over the first heading. @param columns those to be seen, in order */
export function sideLines(columns: readonly SheetColumn[], rows: readonly ScenarioRow[]): readonly SideLine[] {
  return columns.flatMap((column, at) => {
    const before = columns[at - 1];
    const isFirst =
      column.id !== 'name' && (before === undefined || before.id === 'name' || before.group !== column.group);
    return isFirst ? [headingLine(column.group, rows), lineOf(column, rows)] : [lineOf(column, rows)];
  });
}

/** What stands in the first column sideways, for other programs: "Capital [USD]". */
export function sideLabels(lines: readonly SideLine[]): ReadonlyMap<string, string> {
  return new Map(lines.map(({ id, label, unit }) => [id, unit === '' ? label : `${label} [${unit}]`]));
}

/** What of a row shows in one of its cells. */
function shownIn(row: ScenarioRow, id: string): readonly unknown[] {
  const { isToday, state, isFlagFresh, flag, entries, outputs, notes } = row;
  const flagged = id === FLAG_COLUMN_ID ? [flag, isFlagFresh] : [];
  const named = id === 'name' ? [row.messages, row.place] : [];
  return [row.id, isToday, state, entries[id], outputs[id], notes[id], ...flagged, ...named];
}

/** True when two lines show the same. */
export function isSameLine(a: SideLine, b: SideLine): boolean {
  const isSameHead = a.id === b.id && a.label === b.label && a.unit === b.unit && a.rows.length === b.rows.length;
  return (
    isSameHead &&
    a.rows.every((row, at) => {
      const other = b.rows[at];
      if (row === other || !other) return row === other;
      return JSON.stringify(shownIn(row, a.id)) === JSON.stringify(shownIn(other, a.id));
    })
  );
}
