import type { CellEntry, CellName } from './apply-entries.ts';
import { boundsOf, type CellRange, placesIn, type SheetSize } from './cell-range.ts';
import { countOf } from './format-number.ts';
import { plainCellText } from './range-text.ts';
import type { ScenarioRow } from './scenario-rows.ts';
import { fillTargets, spreadBlock } from './spread-block.ts';
import { parseTabSeparated } from './tab-separated.ts';

/** The sheet as it is shown: rows from top to bottom, columns from left to right, and which of them take entries. */
export interface ShownSheet {
  readonly rows: readonly ScenarioRow[];
  readonly columnIds: readonly string[];
  readonly entryIds: ReadonlySet<string>;
}

export interface BlockEntries {
  readonly entries: readonly CellEntry[];
  /** What of the block found no place; empty when all of it did. */
  readonly leftOut: string;
}

function sizeOf(sheet: ShownSheet): SheetSize {
  return { rows: sheet.rows.length, columns: sheet.columnIds.length };
}

function entryAt(sheet: ShownSheet, row: number, column: number, text: string): CellEntry | null {
  const scenarioId = sheet.rows[row]?.id;
  const columnId = sheet.columnIds[column];
  if (scenarioId === undefined || columnId === undefined || !sheet.entryIds.has(columnId)) return null;
  return { scenarioId, columnId, text };
}

function isEntry(entry: CellEntry | null): entry is CellEntry {
  return entry !== null;
}

function leftOutWords(computed: number, clipped: number): string {
  const words = [
    computed > 0 ? `${countOf(computed, 'cell')} fell on computed columns` : '',
    clipped > 0 ? `${countOf(clipped, 'cell')} fell off the sheet` : '',
  ].filter((part) => part !== '');
  return words.length === 0 ? '' : ` ${words.join(', ')}.`;
}

/** The entries that a pasted block means, from the top left of the range on. */
export function pasteEntries(text: string, range: CellRange, sheet: ShownSheet): BlockEntries {
  const { cells, clipped } = spreadBlock(parseTabSeparated(text), range, sizeOf(sheet));
  const entries = cells.map((cell) => entryAt(sheet, cell.row, cell.column, cell.text)).filter(isEntry);
  return { entries, leftOut: leftOutWords(cells.length - entries.length, clipped) };
}

/** The entries that repeat the first row (or column) of a range over the rest of it. */
export function fillEntries(range: CellRange, way: 'down' | 'right', sheet: ShownSheet): readonly CellEntry[] {
  return fillTargets(range, way)
    .map(({ from, to }) => {
      const row = sheet.rows[from.row];
      const columnId = sheet.columnIds[from.column];
      if (!row || columnId === undefined) return null;
      return entryAt(sheet, to.row, to.column, plainCellText(row, columnId));
    })
    .filter(isEntry);
}

/** The cells of a range that take entries. */
export function entryCellsIn(range: CellRange, sheet: ShownSheet): readonly CellName[] {
  return placesIn(range)
    .map((place) => entryAt(sheet, place.row, place.column, ''))
    .filter(isEntry);
}

/** The scenarios that a range runs across. */
export function scenariosAcross(range: CellRange, rows: readonly ScenarioRow[]): readonly string[] {
  const { top, bottom } = boundsOf(range);
  return rows.slice(top, bottom + 1).map((row) => row.id);
}
