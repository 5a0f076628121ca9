import type { Simulate } from '../model/scenario-week.ts';
import type { PlantReport, TypicalWeek } from '../plant/report-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import type { ShopSpec } from '../plant/types.ts';

/** A simulation that does not run the same shop twice. */
export interface PlantMemory {
  readonly simulate: Simulate;
  /** What came of a shop, as far as it is remembered. */
  readonly recall: (spec: ShopSpec) => Outcome | undefined;
  /** How many shops have really been run. */
  readonly runs: () => number;
  /** Takes a week that was run elsewhere as if this memory had run it. */
  readonly keep: (spec: ShopSpec, outcome: Outcome) => Outcome;
  /** Takes over what another memory has run. */
  readonly learn: (run: PlantRun) => void;
}

type Outcome = ReturnType<Simulate>;

/** A shop that has been run, as text, and what came of it. */
export interface PlantRun {
  readonly shop: string;
  readonly outcome: Outcome;
}

/** Weeks kept: a draw that differs from an earlier one in money alone comes soon after it. */
const KEPT = 64;

/** Pictures of the week are heavy, and no figure of money is taken from them but the power that a tariff by hours needs. */
function withoutPictures({ power }: TypicalWeek): TypicalWeek {
  return { lanes: [], samples: [], crew: [], power };
}

function withoutPicturesIn(value: PlantReport): Outcome {
  return { ok: true, value: { ...value, week: withoutPictures(value.week) } };
}

/**
 * Remembers the shops it has run, as a rule without the picture of their week, by all that the week simulation is told of them: plans
 * that differ in money alone share one run. The longest unused is forgotten first.
 * @param kept shops remembered, 1 or more
 * @param pictures whether the picture of the week is remembered too, for callers that show it
 * @param onRun told of every shop that had to be run
 */
export function plantMemory(
  run: Simulate = simulateShop,
  kept = KEPT,
  pictures = false,
  onRun: (run: PlantRun) => void = () => {},
): PlantMemory {
  const known = new Map<string, Outcome>();
  let runs = 0;
  function learn({ shop, outcome }: PlantRun): void {
    known.delete(shop);
    known.set(shop, outcome);
    const oldest = known.keys().next().value;
    if (known.size > kept && oldest !== undefined) known.delete(oldest);
  }
  function recall(spec: ShopSpec): Outcome | undefined {
    const shop = JSON.stringify(spec);
    const outcome = known.get(shop);
    if (outcome) learn({ shop, outcome });
    return outcome;
  }
  function keep(spec: ShopSpec, outcome: Outcome): Outcome {
    runs += 1;
    const shown = pictures || !outcome.ok ? outcome : withoutPicturesIn(outcome.value);
    const told = { shop: JSON.stringify(spec), outcome: shown };
    onRun(told);
    learn(told);
    return shown;
  }
  const simulate: Simulate = (spec) => recall(spec) ?? keep(spec, run(spec));
  return { simulate, recall, keep, runs: () => runs, learn };
}
