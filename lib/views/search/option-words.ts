import { fieldOf } from '../../inputs/register.ts';
import type { Binding, OptionChoice, Unfit } from '../../insight/options/option-types.ts';
import { LIMITS } from '../../plan/limits.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { countOf } from '../format-number.ts';

interface Named {
  readonly id: string;
  readonly name: string;
}

function nameIn(list: readonly Named[], id: string): string {
  return list.find((entry) => entry.id === id)?.name ?? id;
}

/** "3 × Mid-size chamber and 1 × Large chamber". */
export function chambersWords(plan: Plan, { chambers }: OptionChoice): string {
  return chambers.map(({ chamber, count }) => `${count} × ${nameIn(plan.chambers, chamber)}`).join(' and ');
}

/** How chambers and pumps are tied together: "a Small pump each", "one Good pump", "2 to a Good pump". */
export function pumpsWords(plan: Plan, { pump, pumpArrangement, groupSize, sparePump }: OptionChoice): string {
  const name = nameIn(plan.pumps, pump);
  const spare = sparePump === 'onShelf' ? ', a spare on the shelf' : '';
  if (pumpArrangement === 'own') return `${name} for each${spare}`;
  return pumpArrangement === 'shared' ? `one ${name} for all${spare}` : `${name} for every ${groupSize}${spare}`;
}

function optionLabel(field: string, value: string): string {
  const found = fieldOf(field);
  return found.kind === 'choice' ? (found.options.find((option) => option.value === value)?.label ?? value) : value;
}

/** Hours, and what else of a set-up is not chambers and pumps. @param space lists of which more than one entry is told */
export function restWords(plan: Plan, choice: OptionChoice, told: RestTold): string {
  const { pattern, startPractice, roughingPump, hose, freezers } = choice;
  const roughing = roughingPump ? `: ${nameIn(plan.pumps, roughingPump)}` : '';
  return [
    nameIn(plan.crew.patterns, pattern),
    ...(told.practice ? [`${optionLabel('scenario.startPractice', startPractice)}${roughing}`] : []),
    ...(told.hose ? [nameIn(plan.hoses, hose)] : []),
    ...(told.freezers ? [countOf(freezers, 'freezer')] : []),
  ].join(', ');
}

/** What differs between the options of a space, beside chambers, pumps and hours. */
export interface RestTold {
  readonly practice: boolean;
  readonly hose: boolean;
  readonly freezers: boolean;
}

/** A name for the sheet that no other row has. */
export function optionName(plan: Plan, choice: OptionChoice): string {
  const full = `Found: ${chambersWords(plan, choice)}, ${pumpsWords(plan, choice)}`;
  const room = LIMITS.name - 4;
  const stem = full.length > room ? `${full.slice(0, room - 1)}…` : full;
  const names = new Set(plan.scenarios.map(({ name }) => name));
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? stem : `${stem} ${number}`;
    if (!names.has(name)) return name;
  }
}

const BINDING_WORDS: Readonly<Record<Binding, string>> = {
  budget: 'budget',
  supplyCurrent: 'power supply',
  circuits: 'circuits',
  floorSpace: 'floor space',
  mostChambers: 'chambers allowed',
  market: 'market',
};

/** What keeps an option from growing, in words. */
export function bindingWords(binds: readonly Binding[]): string {
  return binds.length === 0 ? 'nothing you set' : binds.map((bind) => BINDING_WORDS[bind]).join(', ');
}

/** Why options are ruled out, as a clause after their number. */
export const UNFIT_WORDS: Readonly<Record<Unfit, string>> = {
  budget: 'cost more than the budget',
  supplyCurrent: 'need more power than the supply gives',
  circuits: 'need more circuits than there are',
  floorSpace: 'do not fit on the floor',
  workingCapital: 'cost more than the budget once goods and unpaid bills are counted in',
  cover: 'fall below the lender’s line',
  cannotRun: 'cannot run: the pump does not get there, or a load does not fit',
};
