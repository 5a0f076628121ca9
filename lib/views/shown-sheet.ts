import type { CellPlace, SheetSize } from './cell-range.ts';
import { plainCellText } from './plain-cell-text.ts';
import type { ScenarioRow } from './scenario-rows.ts';

/**
 * The sheet as it is shown. Upright, scenarios are its rows and columns its columns; sideways it is the other way round, and
 * the first column holds the labels. Places count along what is on screen.
 */
export interface ShownSheet {
  /** Scenarios in the order shown. */
  readonly rows: readonly ScenarioRow[];
  /** Columns in the order shown; sideways there may be headings among them, which no column has for an id. */
  readonly columnIds: readonly string[];
  /** The columns that take entries. */
  readonly entryIds: ReadonlySet<string>;
  readonly isSideways: boolean;
  /** What stands in the first column sideways, by the id of the line. */
  readonly labels: ReadonlyMap<string, string>;
}

/** A cell by what it is about. */
export interface ShownCell {
  readonly row: ScenarioRow;
  readonly columnId: string;
}

export function sheetSize({ rows, columnIds, isSideways }: ShownSheet): SheetSize {
  return isSideways
    ? { rows: columnIds.length, columns: rows.length + 1 }
    : { rows: rows.length, columns: columnIds.length };
}

/** The cell at a place; null for labels, headings and places off the sheet. */
export function cellAt(sheet: ShownSheet, place: CellPlace): ShownCell | null {
  const { rows, columnIds, isSideways } = sheet;
  const row = isSideways ? rows[place.column - 1] : rows[place.row];
  const columnId = isSideways ? columnIds[place.row] : columnIds[place.column];
  const isHeading = isSideways && columnId !== undefined && isHeadingId(columnId);
  return row && columnId !== undefined && !isHeading ? { row, columnId } : null;
}

const HEADING = 'heading:';

/** The id of the heading over a group's lines. */
export function headingId(group: string): string {
  return `${HEADING}${group}`;
}

export function isHeadingId(id: string): boolean {
  return id.startsWith(HEADING);
}

/** What stands at a place, for other programs: plain figures, and labels as they are. */
export function plainTextAt(sheet: ShownSheet, place: CellPlace): string {
  const cell = cellAt(sheet, place);
  if (cell) return plainCellText(cell.row, cell.columnId);
  const id = sheet.isSideways && place.column === 0 ? sheet.columnIds[place.row] : undefined;
  return id === undefined ? '' : (sheet.labels.get(id) ?? '');
}

/** Ids of the scenarios that a range of places runs across. */
export function scenariosIn(sheet: ShownSheet, places: readonly CellPlace[]): readonly string[] {
  const ids = places.flatMap((place) => {
    const row = sheet.isSideways ? sheet.rows[place.column - 1] : sheet.rows[place.row];
    return row ? [row.id] : [];
  });
  return [...new Set(ids)];
}
