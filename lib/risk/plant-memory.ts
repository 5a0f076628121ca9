import type { Simulate } from '../model/evaluate-scenario.ts';
import type { TypicalWeek } from '../plant/report-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';

/** A simulation that does not run the same shop twice. */
export interface PlantMemory {
  readonly simulate: Simulate;
  /** How many shops have really been run. */
  readonly runs: () => number;
}

/** Weeks kept: a draw that differs from an earlier one in money alone comes soon after it. */
const KEPT = 64;

/** Pictures of the week are heavy, and no figure of money is taken from them. */
const NO_WEEK: TypicalWeek = { lanes: [], samples: [], crew: [], power: [] };

/**
 * Remembers the shops it has run, without the picture of their week, by all that the week simulation is told of them: plans
 * that differ in money alone share one run. The longest unused is forgotten first.
 * @param kept shops remembered, 1 or more
 */
export function plantMemory(run: Simulate = simulateShop, kept = KEPT): PlantMemory {
  const known = new Map<string, ReturnType<Simulate>>();
  let runs = 0;
  function simulate(...[spec]: Parameters<Simulate>): ReturnType<Simulate> {
    const key = JSON.stringify(spec);
    const outcome = known.get(key) ?? runAnew(spec);
    known.delete(key);
    known.set(key, outcome);
    const oldest = known.keys().next().value;
    if (known.size > kept && oldest !== undefined) known.delete(oldest);
    return outcome;
  }
  function runAnew(spec: Parameters<Simulate>[0]): ReturnType<Simulate> {
    runs += 1;
    const outcome = run(spec);
    return outcome.ok ? { ok: true, value: { ...outcome.value, week: NO_WEEK } } : outcome;
  }
  return { simulate, runs: () => runs };
}
