import { valueAtPlace } from '../../plan/place.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { withUnit } from '../format-quantity.ts';
import type { EntryPreview } from '../preview-entry.ts';
import type { FieldCell } from './field-grid.ts';

/** What is understood of a text while it is being typed into a field; null when there is nothing to add to it. */
export function previewField(plan: Plan, cell: FieldCell, text: string): EntryPreview | null {
  if (text.trim() === '' || cell.look.options) return null;
  const { look } = cell;
  const reading = look.read(text, valueAtPlace(plan, cell.place));
  if (!reading.ok) return { isGood: false, words: `${reading.error.problem} ${reading.error.remedy}` };
  const { value, understood } = reading.value;
  const shown = look.text(value);
  if (shown === text.trim() || look.plainText(value) === text.trim()) return null;
  return { isGood: true, words: `= ${understood === '' ? withUnit(shown, look.unit) : understood}` };
}
