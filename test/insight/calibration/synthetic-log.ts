import type { Quantity } from '../../../lib/inputs/quantity.ts';
import { dryingSetting } from '../../../lib/insight/calibration/drying-setting.ts';
import { forecastDrying } from '../../../lib/insight/calibration/forecast-drying.ts';
import type { LoggedBatch } from '../../../lib/insight/calibration/logged-batches.ts';
import { seededRandom } from '../../../lib/numeric/seeded-random.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import type { ChamberType, LogEntry, Plan, Product } from '../../../lib/plan/plan-types.ts';

/** What a shop really is, where it differs from its plan; in the units of the demo plan. */
export interface Truth {
  readonly chamber?: Partial<Record<'heatContact' | 'trapVapourConductance' | 'leak', number>>;
  readonly product?: Partial<
    Record<'spread' | 'permeability' | 'driedConductivity' | 'desorptionRate' | 'water', number>
  >;
}

function withValues<Item extends ChamberType | Product>(item: Item, values: Truth[keyof Truth] = {}): Item {
  const changed = Object.entries(values).map(([key, value]) => {
    const held = item[key as keyof Item] as unknown as Quantity;
    return [key, { value, unit: held.unit, origin: 'measured' }];
  });
  return { ...item, ...Object.fromEntries(changed) };
}

/** The demo plan as its shop would be if these were the true values. */
export function truePlan(truth: Truth, plan: Plan = DEMO_PLAN): Plan {
  return {
    ...plan,
    chambers: plan.chambers.map((chamber) => withValues(chamber, truth.chamber)),
    products: plan.products.map((product) => (product.form === 'bound' ? product : withValues(product, truth.product))),
  };
}

export interface Drying {
  readonly product: string;
  /** [kg] */
  readonly wet: number;
  readonly withPressure?: boolean;
}

/** Random numbers of a bell curve with mean 0 and deviation 1, by Box and Muller. */
export function bellCurve(seed: number): () => number {
  const random = seededRandom(seed);
  return () => Math.sqrt(-2 * Math.log(random.uniform())) * Math.cos(2 * Math.PI * random.uniform());
}

interface Noise {
  /** Deviations of log hours and of log dry weight. */
  readonly hours: number;
  readonly dry: number;
  readonly next: () => number;
}

/** The log a shop would write that is truly like `truth`, in chambers of the demo's first type. */
export function syntheticLog(truth: Plan, dryings: readonly Drying[], noise: Noise): LogEntry[] {
  const kinds = dryings.map(({ product, wet }) => ({ chamber: 'mid', product, wet }) as LoggedBatch);
  const setting = dryingSetting(truth, kinds);
  return dryings.map(({ product, wet, withPressure = false }, i) => {
    const unit = setting.units.get('mid');
    const spec = setting.products.get(product);
    const drying = unit && spec && forecastDrying(unit, setting.pump, spec, wet);
    if (!drying || !spec) throw new Error(`${wet} kg of ${product} never get dry`);
    const dry = wet * (1 - spec.composition.water) * (1 + spec.desorption.target);
    return {
      kind: 'batch',
      id: `b${i}`,
      date: `2026-08-${String((i % 28) + 1).padStart(2, '0')}`,
      chamber: 'mid',
      product,
      wet,
      dry: dry * Math.exp(noise.dry * noise.next()),
      hours: (drying.time / 3600) * Math.exp(noise.hours * noise.next()),
      highestPressure: withPressure ? drying.highestPressure : null,
      note: '',
    };
  });
}

/** The demo plan with this log. */
export function planWithLog(batchLog: readonly LogEntry[]): Plan {
  return { ...DEMO_PLAN, batchLog };
}
