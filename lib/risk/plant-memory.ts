import type { Simulate } from '../model/scenario-week.ts';
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

/** Pictures of the week are heavy, and no figure of money is taken from them but the power that a tariff by hours needs. */
function withoutPictures({ power }: TypicalWeek): TypicalWeek {
  return { lanes: [], samples: [], crew: [], power };
}

/**
 * Remembers the shops it has run, as a rule without the picture of their week, by all that the week simulation is told of them: plans
 * that differ in money alone share one run. The longest unused is forgotten first.
 * @param kept shops remembered, 1 or more
 * @param pictures whether the picture of the week is remembered too, for callers that show it
 */
export function plantMemory(run: Simulate = simulateShop, kept = KEPT, pictures = false): PlantMemory {
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
    if (pictures) return outcome;
    return outcome.ok ? { ok: true, value: { ...outcome.value, week: withoutPictures(outcome.value.week) } } : outcome;
  }
  return { simulate, runs: () => runs };
}
