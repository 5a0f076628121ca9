import type { Plan, Scenario } from '../plan/plan-types.ts';

/** The part of a scenario that its figures hang on: everything but what it is called. */
function substance({ id: _id, name: _name, note: _note, ...rest }: Scenario): unknown {
  return rest;
}

/**
 * Text that is equal for equal inputs: two scenarios with the same key have the same figures, whatever their names.
 * Every return is judged against today, so today is part of every key.
 */
export function scenarioKey(plan: Plan, scenario: Scenario): string {
  const { name: _name, scenarios, batchLog: _log, site, ...catalogue } = plan;
  const { shopName: _shop, place: _place, currency: _currency, unitSystem: _units, ...place } = site;
  const today = scenarios[0];
  return JSON.stringify({
    catalogue,
    place,
    isToday: scenario.id === today?.id,
    today: today ? substance(today) : null,
    scenario: substance(scenario),
  });
}
