import { shopSpec } from '../../model/shop-spec.ts';
import type { Plan } from '../../plan/plan-types.ts';
import type { ChamberUnitSpec, ProductSpec, PumpSpec } from '../../plant/types.ts';
import type { LoggedBatch } from './logged-batches.ts';

/** Chambers and products of a log as the engine knows them, with the pump and hose of today's shop. */
export interface DryingSetting {
  readonly pump: PumpSpec;
  readonly units: ReadonlyMap<string, ChamberUnitSpec>;
  readonly products: ReadonlyMap<string, ProductSpec>;
}

/**
 * The setting in which logged batches were dried: every chamber type of the log alone on today's pump and hose.
 * What several chambers on one pump do to each other is left out.
 */
export function dryingSetting(plan: Plan, batches: readonly LoggedBatch[]): DryingSetting {
  const chambers = [...new Set(batches.map((batch) => batch.chamber))];
  const products = [...new Set(batches.map((batch) => batch.product))];
  const today = plan.scenarios[0];
  if (!today) throw new RangeError('a plan without scenarios has no pump to dry on');
  const spec = shopSpec(plan, {
    ...today,
    chambers: chambers.map((chamber) => ({ chamber, count: 1 })),
    mix: products.map((product) => ({ product, share: 100 / products.length })),
    pumpArrangement: 'shared',
    startPractice: 'isolate',
  });
  const group = spec.groups[0];
  if (!group) throw new RangeError(`a setting needs chambers, got ${batches.length} batches`);
  return {
    pump: group.pump,
    units: new Map(group.chambers.map((unit) => [unit.chamber.typeId, unit])),
    products: new Map(spec.mix.map(({ product }) => [product.id, product])),
  };
}
