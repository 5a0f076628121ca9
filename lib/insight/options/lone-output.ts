import type { Simulate } from '../../model/scenario-week.ts';
import type { ChamberUnitSpec, PumpSpec, ShopSpec } from '../../plant/types.ts';

/** Dried product of each kind in a week [kg/week], by product. */
export type Output = ReadonlyMap<string, number>;

/** Weeks of lone chambers run already, by what tells them apart. */
export type LoneWeeks = Map<string, Output>;

/** A rough answer is enough here: these weeks only decide what is looked at first. */
const WARM_UP_WEEKS = 1;
const MEASURED_WEEKS = 2;

/** What one of several chambers has of a pump when all ask for it at once. */
function shareOf(pump: PumpSpec, chambers: number): PumpSpec {
  return {
    ...pump,
    speed: pump.speed / chambers,
    vapourTolerance: pump.vapourTolerance / chambers,
    table: pump.table.map((point) => ({ ...point, speed: point.speed / chambers })),
  };
}

function loneShop(spec: ShopSpec, unit: ChamberUnitSpec, pump: PumpSpec): ShopSpec {
  return {
    ...spec,
    groups: [{ pump, chambers: [unit] }],
    startPractice: 'isolate',
    startPattern: 'asReady',
    roughingPump: null,
    mix: spec.mix.map((entry) => ({ ...entry, weeklyCap: null })),
    warmUpWeeks: WARM_UP_WEEKS,
    measuredWeeks: MEASURED_WEEKS,
  };
}

function loneWeek(spec: ShopSpec, simulate: Simulate): Output {
  const outcome = simulate(spec);
  if (!outcome.ok) return new Map();
  return new Map(outcome.value.products.map(({ productId, dryOut }) => [productId, dryOut]));
}

/**
 * What a shop would make if every chamber worked alone with its share of its pump, in a market that takes everything [kg/week]: close
 * to the truth where neither people nor traps are short. A guess for the order of work, not a bound.
 * @param crewKey tells the shifts of this shop from those of others
 * @param known weeks kept between calls
 */
export function loneOutput(spec: ShopSpec, crewKey: string, known: LoneWeeks, simulate: Simulate): Output {
  const total = new Map<string, number>();
  for (const { pump, chambers } of spec.groups) {
    for (const unit of chambers) {
      const { diameter, length } = unit.hose;
      const key = [unit.chamber.typeId, pump.typeId, chambers.length, diameter, length, crewKey].join(' ');
      const week = known.get(key) ?? loneWeek(loneShop(spec, unit, shareOf(pump, chambers.length)), simulate);
      known.set(key, week);
      for (const [id, dry] of week) total.set(id, (total.get(id) ?? 0) + dry);
    }
  }
  return total;
}
