import type { Simulate } from '../model/scenario-week.ts';
import { shopSpec } from '../model/shop-spec.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { DryingLimit, LimitHours } from '../plant/report-types.ts';
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

/** A shop's week held back by its machines alone. */
export interface MachineWeek {
  /** [kg/week] */
  readonly dryOut: number;
  /** What holds the drying of ice back for the longest time; last drying where there is no ice. */
  readonly binds: DryingLimit;
}

function longest(limits: LimitHours): DryingLimit {
  const { desorption, ...ice } = limits;
  const names = Object.keys(ice) as (keyof typeof ice)[];
  const most = names.reduce((first, name) => (ice[name] > ice[first] ? name : first));
  return ice[most] > 0 || desorption === 0 ? most : 'desorption';
}

/** What the machines of a scenario make in a week and what holds them back; null when it cannot run. */
export function machineWeek(plan: Plan, scenario: Scenario, simulate: Simulate = simulateShop): MachineWeek | null {
  const outcome = simulate(machinesOnly(shopSpec(plan, scenario)));
  return outcome.ok ? { dryOut: outcome.value.dryOut, binds: longest(outcome.value.limits) } : null;
}

/** Dried product a week of a shop held back by its machines alone [kg/week]; null when it cannot run. */
export function machineOutput(plan: Plan, scenario: Scenario, simulate: Simulate = simulateShop): number | null {
  return machineWeek(plan, scenario, simulate)?.dryOut ?? null;
}
