import type { Simulate } from '../../model/scenario-week.ts';
import type { ChamberUnitSpec, PumpSpec, ShopSpec } from '../../plant/types.ts';
import type { OptionChoice } from './option-types.ts';
import { remembered } from './remembered.ts';

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

/** Chambers of a type that hang together on one pump. */
export interface LoneCase {
  readonly chamber: string;
  readonly pump: string;
  readonly hose: string;
  /** Chambers on the pump, of whatever type. */
  readonly sharing: number;
  /** How many such chambers the shop has. */
  readonly count: number;
}

/** The chambers of an option by type and by how many share their pump: in the order in which they are hung on pumps. */
export function loneCases({ chambers, pumpArrangement, groupSize, pump, hose }: OptionChoice): LoneCase[] {
  const units = chambers.flatMap(({ chamber, count }) => new Array<string>(count).fill(chamber));
  const size = { own: 1, shared: Math.max(1, units.length), groups: groupSize }[pumpArrangement];
  const counts = new Map<string, LoneCase>();
  units.forEach((chamber, k) => {
    const sharing = Math.min(size, units.length - size * Math.floor(k / size));
    const key = `${chamber} ${sharing}`;
    counts.set(key, { chamber, pump, hose, sharing, count: (counts.get(key)?.count ?? 0) + 1 });
  });
  return [...counts.values()];
}

function unitOf(spec: ShopSpec, chamber: string): { readonly unit: ChamberUnitSpec; readonly pump: PumpSpec } {
  for (const { chambers, pump } of spec.groups) {
    const unit = chambers.find((one) => one.chamber.typeId === chamber);
    if (unit) return { unit, pump };
  }
  throw new RangeError(`the shop has no chamber "${chamber}"`);
}

/**
 * What a shop would make if every chamber worked alone with its share of its pump, in a market that takes everything [kg/week]: close
 * to the truth where neither people nor traps are short. A guess for the order of work, not a bound.
 * @param spec the shop, made only where a week has to be run
 * @param crewKey tells the hours and freezers of this shop from those of others
 * @param known weeks kept between calls
 */
export function loneOutput(
  choice: OptionChoice,
  spec: () => ShopSpec,
  crewKey: string,
  known: LoneWeeks,
  simulate: Simulate,
): Output {
  const total = new Map<string, number>();
  for (const { chamber, pump, hose, sharing, count } of loneCases(choice)) {
    const key = [chamber, pump, hose, sharing, crewKey].join(' ');
    const week = remembered(known, key, () => {
      const found = unitOf(spec(), chamber);
      return loneWeek(loneShop(spec(), found.unit, shareOf(found.pump, sharing)), simulate);
    });
    for (const [id, dry] of week) total.set(id, (total.get(id) ?? 0) + count * dry);
  }
  return total;
}
