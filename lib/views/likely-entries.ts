import type { CellEntry, CellName } from './apply-entries.ts';
import type { EntryColumn } from './entry-column.ts';
import type { ScenarioRow } from './scenario-rows.ts';

/** A small count, as of chambers. */
const COUNT = /^\d{1,2}$/;

/**
 * What is likely to be entered next in a cell, likeliest first: one more or one less of what is counted. Nothing for other cells, whose next value
 * cannot be guessed.
 */
export function likelyEntries(
  rows: readonly ScenarioRow[],
  columns: readonly EntryColumn[],
  { scenarioId, columnId }: CellName,
): readonly CellEntry[] {
  const column = columns.find(({ id }) => id === columnId);
  const text = rows.find(({ id }) => id === scenarioId)?.entries[columnId]?.plainText ?? '';
  if (!column?.isFigure || column.unit !== '' || !COUNT.test(text)) return [];
  const near = [Number(text) + 1, Number(text) - 1].filter((count) => count >= 0);
  return near.map((count) => ({ scenarioId, columnId, text: String(count) }));
}
