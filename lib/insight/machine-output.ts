import { shopSpec } from '../model/shop-spec.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import type { ShopSpec } from '../plant/types.ts';

/**
 * The same shop with people always there and a market that takes everything: the knee is a matter of the machines, and an
 * idle Sunday must not look like a strained pump.
 */
export function machinesOnly(spec: ShopSpec): ShopSpec {
  const people = spec.groups.reduce((sum, group) => sum + group.chambers.length, 0);
  const shifts = [0, 1, 2, 3, 4, 5, 6].map((weekday) => ({ weekday, start: 0, end: 86_400, people }));
  return {
    ...spec,
    crew: { ...spec.crew, shifts },
    freezer: spec.freezer && { ...spec.freezer, capacity: Number.MAX_VALUE },
    mix: spec.mix.map((entry) => ({ ...entry, weeklyCap: null })),
    startPattern: 'asReady',
  };
}

/** Dried product a week of a shop held back by its machines alone [kg/week]; null when it cannot run. */
export function machineOutput(plan: Plan, scenario: Scenario): number | null {
  const outcome = simulateShop(machinesOnly(shopSpec(plan, scenario)));
  return outcome.ok ? outcome.value.dryOut : null;
}
