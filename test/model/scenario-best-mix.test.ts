import { describe, expect, it } from 'vitest';
import { scenarioBestMix } from '../../lib/model/scenario-best-mix.ts';
import { scenarioCost } from '../../lib/model/scenario-cost.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { PlantReport } from '../../lib/plant/report-types.ts';
import { demoResult } from './computed.ts';

const IDS = DEMO_PLAN.scenarios.map((scenario) => scenario.id);

function mixOf(id: string, change: (plant: PlantReport) => PlantReport, plan: Plan = DEMO_PLAN) {
  const { plant, account } = demoResult(id);
  const scenario = plan.scenarios.find((candidate) => candidate.id === id) as Scenario;
  const mix = scenarioBestMix(plan, {
    plant: change(plant),
    account: { ...scenarioCost(plan, scenario, plant), ...account },
  });
  if (!mix) throw new Error('something is made');
  return mix;
}

/** The same week with a little more or less time of people on shift, or of chambers by less waiting to be loaded. */
const moreHours =
  (hours: number, of: 'chambers' | 'crew') =>
  (plant: PlantReport): PlantReport => {
    if (of === 'crew') return { ...plant, crew: { ...plant.crew, onShift: plant.crew.onShift + 3600 * hours } };
    const phases = { ...plant.phases, waitingToLoad: plant.phases.waitingToLoad - 3600 * hours };
    return { ...plant, phases };
  };

describe('the best mix of a week', () => {
  it.each(IDS)('%s: is no worse than the planned one, within the hours there are and what sells', (id) => {
    const { plant, bestMix } = demoResult(id);
    if (!bestMix) throw new Error('something is made');
    expect(bestMix.gain).toBeGreaterThanOrEqual(-1e-6);
    const hours = bestMix.batches.reduce((sum, { productId, perWeek }) => {
      const made = plant.products.find((product) => product.productId === productId);
      return sum + perWeek * (made?.cycleTime ?? 0);
    }, 0);
    expect(hours).toBeLessThanOrEqual(plant.chambers * 604_800 - plant.phases.waitingToLoad + 1e-3);
    for (const { productId, perWeek } of bestMix.batches) {
      const made = plant.products.find((product) => product.productId === productId);
      const { weeklyDemand, saleableYield } = DEMO_PLAN.products.find((product) => product.id === productId) ?? {};
      const most = (weeklyDemand?.value ?? 0) / ((saleableYield?.value ?? 100) / 100);
      expect(perWeek * ((made?.dryOut ?? 0) / (made?.batches ?? 1))).toBeLessThanOrEqual(most + 1e-6);
    }
  });

  it.each(['three-shared', 'six-groups'])('%s: an hour is worth what one more brings', (id) => {
    for (const of of ['chambers', 'crew'] as const) {
      const base = mixOf(id, (plant) => plant);
      const more = mixOf(id, moreHours(0.1, of)).contribution - base.contribution;
      const less = base.contribution - mixOf(id, moreHours(-0.1, of)).contribution;
      expect(base.worthOfHour[of]).toBeGreaterThanOrEqual(10 * more - 1e-5);
      expect(base.worthOfHour[of]).toBeLessThanOrEqual(10 * less + 1e-5);
    }
  });

  it('is none where nothing is made', () => {
    const { plant, account } = demoResult('today');
    const idle = { ...plant, products: plant.products.map((product) => ({ ...product, batches: 0 })) };
    const [today] = DEMO_PLAN.scenarios as [Scenario];
    const week = { plant: idle, account: { ...scenarioCost(DEMO_PLAN, today, plant), ...account } };
    expect(scenarioBestMix(DEMO_PLAN, week)).toBeNull();
  });
});
