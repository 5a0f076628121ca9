import type { CellEntry, CellName } from './apply-entries.ts';
import { type CellPlace, type CellRange, placesIn } from './cell-range.ts';
import { drawnFill, type FillTarget } from './fill-drag.ts';
import { countOf } from './format-number.ts';
import { cellAt, plainTextAt, type ShownSheet, scenariosIn, sheetSize } from './shown-sheet.ts';
import { fillTargets, spreadBlock } from './spread-block.ts';
import { parseTabSeparated } from './tab-separated.ts';

export interface BlockEntries {
  readonly entries: readonly CellEntry[];
  /** What of the block found no place; empty when all of it did. */
  readonly leftOut: string;
}

function entryAt(sheet: ShownSheet, place: CellPlace, text: string): CellEntry | null {
  const cell = cellAt(sheet, place);
  if (!cell || !sheet.entryIds.has(cell.columnId)) return null;
  return { scenarioId: cell.row.id, columnId: cell.columnId, text };
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
  const { cells, clipped } = spreadBlock(parseTabSeparated(text), range, sheetSize(sheet));
  const entries = cells.map((cell) => entryAt(sheet, cell, cell.text)).filter(isEntry);
  return { entries, leftOut: leftOutWords(cells.length - entries.length, clipped) };
}

function filled(targets: readonly FillTarget[], sheet: ShownSheet): readonly CellEntry[] {
  return targets
    .map(({ from, to }) => (cellAt(sheet, from) ? entryAt(sheet, to, plainTextAt(sheet, from)) : null))
    .filter(isEntry);
}

/** The entries that repeat the first row (or column) of a range over the rest of it, or the one before it over the range. */
export function fillEntries(range: CellRange, way: 'down' | 'right', sheet: ShownSheet): readonly CellEntry[] {
  return filled(fillTargets(range, way), sheet);
}

/** The entries that repeat a range over the cells it is drawn out to. */
export function drawnEntries(range: CellRange, mouse: CellPlace, sheet: ShownSheet): readonly CellEntry[] {
  return filled(drawnFill(range, mouse), sheet);
}

/** The cells of a range that take entries. */
export function entryCellsIn(range: CellRange, sheet: ShownSheet): readonly CellName[] {
  return placesIn(range)
    .map((place) => entryAt(sheet, place, ''))
    .filter(isEntry);
}

/** The scenarios that a range runs across, in the order shown. */
export function scenariosAcross(range: CellRange, sheet: ShownSheet): readonly string[] {
  return scenariosIn(sheet, placesIn(range));
}
