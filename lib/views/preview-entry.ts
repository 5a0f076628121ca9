import type { EntryColumn } from './entry-column.ts';
import { withUnit } from './format-quantity.ts';
import type { SheetState } from './sheet-state.ts';

/** What a text would come to if it were entered now. */
export interface EntryPreview {
  readonly isGood: boolean;
  readonly words: string;
}

/** What is understood of a text while it is being typed; null when there is nothing to add to it. */
export function previewEntry(
  state: SheetState,
  columns: readonly EntryColumn[],
  cell: { readonly scenarioId: string; readonly columnId: string; readonly text: string },
): EntryPreview | null {
  const scenario = state.plan.scenarios.find((candidate) => candidate.id === cell.scenarioId);
  const column = columns.find((candidate) => candidate.id === cell.columnId);
  if (!scenario || !column || cell.text.trim() === '') return null;
  const edited = column.edit(scenario, cell.text);
  if (!edited.ok) return { isGood: false, words: `${edited.error.problem} ${edited.error.remedy}` };
  const text = column.text(edited.value);
  if (text === cell.text.trim()) return null;
  return { isGood: true, words: `= ${withUnit(text, column.unit)}` };
}
