import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioChain } from '../plan/scenario-chain.ts';

/** The part of a scenario that its figures hang on: everything but what it is called, what is noted and which one it comes after. */
function substance({ id: _id, name: _name, note: _note, notes: _notes, after: _after, ...rest }: Scenario): unknown {
  return rest;
}

/** The part of a key that all scenarios of a plan have in common: the catalogue, the place, and today. */
function sharedKey(plan: Plan): string {
  const { name: _name, scenarios, batchLog: _log, site, ...catalogue } = plan;
  const { shopName: _shop, place: _place, currency: _currency, unitSystem: _units, ...place } = site;
  const today = scenarios[0];
  return JSON.stringify({ catalogue, place, today: today ? substance(today) : null });
}

/**
 * Text that is equal for equal inputs, for studies of all the plan holds: how far inputs may go is part of it, and so is the whole catalogue.
 * The sheet's figures hang on less (`FigureKeys`).
 * Every return is judged against today, so today is part of every key, and so is each scenario that is bought on the way.
 */
export function scenarioKey(plan: Plan, scenario: Scenario): string {
  const own = {
    isToday: scenario.id === plan.scenarios[0]?.id,
    scenario: substance(scenario),
    before: scenarioChain(plan, scenario).slice(0, -1).map(substance),
  };
  return `${sharedKey(plan)} ${JSON.stringify(own)}`;
}
