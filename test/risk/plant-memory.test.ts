import { describe, expect, it } from 'vitest';
import { shopSpec } from '../../lib/model/shop-spec.ts';
import type { Scenario } from '../../lib/plan/plan-types.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import { type PlantRun, plantMemory } from '../../lib/risk/plant-memory.ts';
import { smallPlan } from '../model/edited-plan.ts';
import type { Loose } from '../plan/edited-demo.ts';

const specOf = (edit: (document: Loose) => void = () => {}) => {
  const plan = smallPlan(edit);
  return shopSpec(plan, plan.scenarios[0] as Scenario);
};

/** A shop that differs by its load. */
const loaded = (load: number) =>
  specOf((document) => {
    document.products[0].load.value = load;
  });

const never = () => ({ ok: false, error: { kind: 'nothingToMake' } }) as const;

describe('plantMemory', () => {
  it('says what the simulation says, but for the picture of the week', () => {
    const real = simulateShop(specOf());
    const kept = plantMemory().simulate(specOf());
    if (!real.ok || !kept.ok) throw new Error('cannot run');
    expect(kept.value.week.lanes).toEqual([]);
    expect({ ...kept.value, week: real.value.week }).toEqual(real.value);
  });

  it('runs a shop once, and anew when anything it is told differs', () => {
    const { simulate, runs } = plantMemory(never);
    simulate(loaded(7));
    simulate(loaded(7));
    expect(runs()).toBe(1);
    simulate(
      specOf((document) => {
        document.products[0].price.value = 99;
        document.site.rentAndFixed.value = 1;
        document.chambers[0].price.value = 20_500;
      }),
    );
    expect(runs()).toBe(1);
    simulate(loaded(7.001));
    expect(runs()).toBe(2);
  });

  it('forgets what has not been used for longest', () => {
    const { simulate, runs } = plantMemory(never, 2);
    for (const load of [5, 6, 5, 7]) simulate(loaded(load));
    expect(runs()).toBe(3);
    simulate(loaded(5));
    expect(runs()).toBe(3);
    simulate(loaded(6));
    expect(runs()).toBe(4);
  });

  it('takes over what another memory has run', () => {
    const told: PlantRun[] = [];
    const other = plantMemory(never, 64, false, (run) => told.push(run));
    other.simulate(loaded(7));
    other.simulate(loaded(7));
    expect(told).toHaveLength(1);
    const { simulate, runs, learn } = plantMemory(never);
    for (const run of told) learn(run);
    simulate(loaded(7));
    expect(runs()).toBe(0);
  });

  it('remembers a shop that cannot run, too', () => {
    const { simulate } = plantMemory(never);
    expect(simulate(specOf())).toEqual(simulate(specOf()));
    expect(simulate(specOf()).ok).toBe(false);
  });
});
