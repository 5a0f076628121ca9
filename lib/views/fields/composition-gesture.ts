import { compositionValues } from '../../inputs/presets/composition-values.ts';
import { FOOD_COMPOSITIONS } from '../../inputs/presets/food-compositions.ts';
import { applyCommand } from '../../plan/commands/apply-command.ts';
import { type Place, pathOfPlace, valueAtPlace } from '../../plan/place.ts';
import type { Product } from '../../plan/plan-types.ts';
import { type Gesture, performState, presentState, type SheetHistory } from '../sheet-history.ts';

/** What can be chosen from, in the order of the list. */
export const FOOD_CHOICES: readonly { readonly key: string; readonly label: string }[] = FOOD_COMPOSITIONS;

function refusal(sheet: SheetHistory, said: string): Gesture {
  return { sheet, said, done: false };
}

/** The composition of a usual food taken over by a product, as one step of the history. @param place of the product */
export function takeComposition(place: Place, key: string): (sheet: SheetHistory) => Gesture {
  return (sheet) => {
    const before = presentState(sheet);
    const [path, food] = [pathOfPlace(before.plan, place), FOOD_COMPOSITIONS.find((row) => row.key === key)];
    if (path === null || !food) return refusal(sheet, 'There is no such product or food any more.');
    const parts = compositionValues(food);
    const changes = Object.entries(parts).map(([part, value]) => ({ path: `${path}.${part}`, value }));
    const outcome = applyCommand(before.plan, { kind: 'setValues', changes });
    if (!outcome.ok) return refusal(sheet, outcome.error[0]?.problem ?? 'That could not be done.');
    const misread = before.misread.filter(
      (entry) => !Object.keys(parts).some((part) => entry.place === `${place}.${part}`),
    );
    const { name } = valueAtPlace(before.plan, place) as Product;
    const said = `${name} has the composition of ${food.label.toLowerCase()}.`;
    return performState(sheet, { ...before, plan: outcome.value, misread }, 'take a composition', said);
  };
}
