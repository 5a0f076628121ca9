import type { OptionChoice } from '../../insight/options/option-types.ts';
import { freshId } from '../../plan/commands/fresh-id.ts';
import type { Plan } from '../../plan/plan-types.ts';
import type { RowGesture } from '../row-gestures.ts';
import { scenarioKey } from '../scenario-key.ts';
import { optionName } from './option-words.ts';

/** Puts an option into the sheet as a new last row, everything the search did not choose as in the scenario it began from; null when that is gone. */
export function sendOption(plan: Plan, baseId: string, choice: OptionChoice): RowGesture | null {
  const base = plan.scenarios.find(({ id }) => id === baseId);
  if (!base) return null;
  const name = optionName(plan, choice);
  const id = freshId(plan.scenarios, name);
  const scenario = { ...base, ...choice, id, name, note: `Found by the search, from ${base.name}.`, notes: {} };
  return {
    command: { kind: 'insertScenario', scenario },
    said: `${name} is in the sheet, as its last row. Undo takes it out again.`,
    goTo: id,
  };
}

/** True when the plan has changed since a search began, so that its figures are of an earlier state. */
export function isOvertaken(plan: Plan, searched: Plan, baseId: string): boolean {
  if (plan === searched) return false;
  const base = plan.scenarios.find(({ id }) => id === baseId);
  const before = searched.scenarios.find(({ id }) => id === baseId);
  return !base || !before || scenarioKey(plan, base) !== scenarioKey(searched, before);
}
