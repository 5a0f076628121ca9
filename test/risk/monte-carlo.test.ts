import { beforeAll, describe, expect, it } from 'vitest';
import { type StageWeeks, stageWeeks, todayWeek } from '../../lib/model/evaluate-scenario.ts';
import type { ScenarioResult } from '../../lib/model/scenario-result.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { measuresOf } from '../../lib/risk/draw-measure.ts';
import { drawRequest } from '../../lib/risk/draw-request.ts';
import { drawSummary } from '../../lib/risk/draw-summary.ts';
import { type DrawOutcome, evaluateDraws } from '../../lib/risk/evaluate-draws.ts';
import { type MonteCarlo, monteCarlo } from '../../lib/risk/monte-carlo.ts';
import { pairedDifference } from '../../lib/risk/paired-difference.ts';
import { pertQuantile } from '../../lib/risk/pert.ts';
import { plantMemory } from '../../lib/risk/plant-memory.ts';
import { reverseStress } from '../../lib/risk/reverse-stress.ts';
import { stressedFinance } from '../../lib/risk/stressed-finance.ts';
import { NO_STRESS } from '../../lib/risk/stressed-plan.ts';
import { computed, returnOf } from '../model/computed.ts';
import { certainPlan, uncertainFruit, uncertainPrice } from './uncertain-plan.ts';

const PRICE = { low: 70, likely: 112, high: 130 };
const COUNT = 128;
const IDS = ['today', 'two'];

/** The figures of the plan with one price for sure. */
const atPrice = (price: number) =>
  computed(
    certainPlan((document) => {
      document.products[0].price.value = price;
    }),
    'two',
  );

let plan: Plan;
let run: MonteCarlo;
let two: readonly DrawOutcome[];

beforeAll(() => {
  plan = certainPlan(uncertainPrice);
  run = monteCarlo(plan, IDS, { count: COUNT, seed: 11 });
  two = run.outcomes.two ?? [];
});

function weeksOf(): StageWeeks {
  const weeks = stageWeeks(plan, plan.scenarios[1] as Scenario, todayWeek(plan));
  if (!weeks.ok) throw new Error(JSON.stringify(weeks.error));
  return weeks.value;
}

const valuesOf = (outcomes: readonly DrawOutcome[] | undefined) => measuresOf(outcomes ?? [], 'netPresentValue');

describe('monteCarlo with one uncertain price, in which value is a straight line', () => {
  it('has the mean of the value at the mean price, and the exact variance', () => {
    const values = valuesOf(two);
    const mean = values.reduce((sum, value) => sum + value, 0) / COUNT;
    // PERT: mean (low + 4 likely + high)/6, variance (mean − low)(high − mean)/7.
    const price = (PRICE.low + 4 * PRICE.likely + PRICE.high) / 6;
    const [atLow, atMean, atHigh] = [PRICE.low, price, PRICE.high].map(
      (of) => returnOf(atPrice(of)).netPresentValue,
    ) as [number, number, number];
    const slope = (atHigh - atLow) / (PRICE.high - PRICE.low);
    const deviation = Math.abs(slope) * Math.sqrt(((price - PRICE.low) * (PRICE.high - price)) / 7);
    // Independent draws would scatter by deviation/√128 = 9 %; evenly spread ones do fifty times better.
    expect(Math.abs(mean - atMean)).toBeLessThan(0.005 * deviation);
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / COUNT;
    expect(Math.sqrt(variance) / deviation).toBeCloseTo(1, 1);
  });

  it('has the percentiles of the value at the percentiles of the price', () => {
    const { p10, p50, p90 } = drawSummary(two).spreads.netPresentValue ?? {};
    const scale = (p90 ?? 0) - (p10 ?? 0);
    const pairs = [
      [p10, 0.1],
      [p50, 0.5],
      [p90, 0.9],
    ] as const;
    for (const [value, share] of pairs) {
      const exact = returnOf(atPrice(pertQuantile(share, PRICE))).netPresentValue;
      expect(Math.abs((value ?? Number.NaN) - exact)).toBeLessThan(0.02 * scale);
    }
  });

  it('misses the line as often as the price is below that of the reverse stress', () => {
    const weeks = weeksOf();
    const line = 1.25;
    // The price at which the cover is at the line, found from a price at which there is room to fall.
    const dear = certainPlan((document) => {
      document.products[0].price.value = PRICE.high;
    });
    const found = reverseStress(dear, 'two', weeks, line);
    if (found.kind !== 'falls') throw new Error(found.kind);
    const price = PRICE.high * (1 - found.revenueFall);
    const expected = run.draws.filter(([drawn = 0]) => drawn < price).length / COUNT;
    expect(drawSummary(two).missesLine).toBe(expected);
    expect(expected).toBeGreaterThan(0.1);
    // And by the distribution itself: the share below which the price lies.
    const exact = Array.from({ length: 20_000 }, (_, k) => (k + 0.5) / 20_000).filter(
      (share) => pertQuantile(share, PRICE) < price,
    );
    expect(Math.abs(exact.length / 20_000 - expected)).toBeLessThan(1 / COUNT);
  });

  it('pays back later than the horizon where the price is below the one at which it just does', () => {
    const { laterThanHorizon, spreads } = drawSummary(two);
    const dear = certainPlan((document) => {
      document.products[0].price.value = PRICE.high;
    });
    const weeks = weeksOf();
    const paysAt = (price: number) => {
      const stress = { ...NO_STRESS, revenueFall: 1 - price / PRICE.high };
      return stressedFinance(dear, 'two', weeks, stress).versusToday?.payback.kind === 'crossed';
    };
    let [low, high] = [PRICE.low, PRICE.high];
    for (let k = 0; k < 20; k += 1) {
      const middle = (low + high) / 2;
      if (paysAt(middle)) high = middle;
      else low = middle;
    }
    expect(laterThanHorizon).toBe(run.draws.filter(([price = 0]) => price < high).length / COUNT);
    // Paybacks beyond the horizon sort last: the percentiles they reach are not known.
    expect(laterThanHorizon).toBeGreaterThan(0.1);
    expect(spreads.payback?.p95).toBeNull();
    expect(spreads.payback?.mean).toBeNull();
    expect(spreads.payback?.p5).toBeLessThan(60);
  });

  it('simulates each shop once, since no machine knows of prices', () => {
    const memory = plantMemory();
    const request = drawRequest(plan, IDS, { count: 8, seed: 3 });
    evaluateDraws(request, () => {}, memory);
    expect(memory.runs()).toBe(2);
  });

  it('gives the same for today as for itself: no return, but output and cover', () => {
    const { spreads, laterThanHorizon, draws, refused } = drawSummary(run.outcomes.today ?? []);
    expect([draws, refused]).toEqual([COUNT, 0]);
    expect([spreads.netPresentValue, spreads.payback, laterThanHorizon]).toEqual([null, null, null]);
    const plant = computed(plan, 'today').plant.dryOut;
    expect(spreads.dryOut).toMatchObject({ count: COUNT, p5: plant, p95: plant });
    expect(spreads.dryOut?.mean).toBeCloseTo(plant, 9);
  });
});

describe('monteCarlo', () => {
  const several = (count = 8) =>
    certainPlan((document) => {
      uncertainPrice(document);
      uncertainFruit(document);
      document.scenarios.push({ ...document.scenarios[1], id: 'later', name: 'Later', purchaseMonth: 6 });
      document.products[0].otherPerBatch.value = count;
    });

  it('gives the same for the same seed, and something else for another', () => {
    const draw = (seed: number) => monteCarlo(several(), ['two'], { count: 8, seed });
    expect(draw(5)).toEqual(draw(5));
    expect(draw(5).draws).not.toEqual(draw(6).draws);
  });

  it('meets all scenarios with the same draws, whatever their order', () => {
    const forward = monteCarlo(several(), ['today', 'two', 'later'], { count: 8, seed: 5 });
    const swapped = several();
    const [first, second, third] = swapped.scenarios as [
      Plan['scenarios'][0],
      Plan['scenarios'][0],
      Plan['scenarios'][0],
    ];
    const backward = monteCarlo({ ...swapped, scenarios: [first, third, second] }, ['later', 'two'], {
      count: 8,
      seed: 5,
    });
    expect(backward.draws).toEqual(forward.draws);
    expect(backward.outcomes.two).toEqual(forward.outcomes.two);
    expect(backward.outcomes.later).toEqual(forward.outcomes.later);
  });

  it('draws a triangle where that is asked for', () => {
    const [pert, triangular] = (['pert', 'triangular'] as const).map((shape) => {
      const { draws } = drawRequest(plan, ['two'], { count: 256, seed: 2, shape });
      return draws.reduce((sum, [price = 0]) => sum + price, 0) / 256;
    });
    expect(pert).toBeCloseTo((70 + 4 * 112 + 130) / 6, 1);
    expect(triangular).toBeCloseTo((70 + 112 + 130) / 3, 1);
  });

  it('is the plan itself where nothing is uncertain', () => {
    const sure = certainPlan();
    const { outcomes, inputs } = monteCarlo(sure, ['two'], { count: 2, seed: 1 });
    expect(inputs).toEqual([]);
    const result = computed(sure, 'two');
    expect(outcomes.two?.[1]).toEqual({
      kind: 'computed',
      versusToday: {
        netPresentValue: returnOf(result).netPresentValue,
        payback: monthsOf(result),
        cumulative: returnOf(result).cumulative,
        equipment: returnOf(result).lines.equipment,
      },
      lowestCover: result.finance.lowestCover,
      missesLine: (result.finance.lowestCover ?? 0) < 1.25,
      dryOut: result.plant.dryOut,
      contribution: result.cost.contributionPerWeek,
    });
  });

  it('runs the plant again where a draw changes it, and tells how far it is', () => {
    const physical = certainPlan((document) => {
      Object.assign(document.products[0].permeability, { value: 2e-8, low: 1e-8, high: 4e-8 });
    });
    const memory = plantMemory();
    const told: number[] = [];
    const request = drawRequest(physical, ['two'], { count: 3, seed: 1 });
    const rows = evaluateDraws(request, (done) => told.push(done), memory);
    expect(memory.runs()).toBe(6);
    expect(told).toEqual([1, 2, 3]);
    expect(new Set(rows.map(([outcome]) => measuresOf(outcome ? [outcome] : [], 'contribution')[0])).size).toBe(3);
  });

  it('counts the draws that cannot run, with the reason', () => {
    const tight = certainPlan((document) => {
      // A load gives 9.4 kg of ice: some of these traps are too small for it.
      Object.assign(document.chambers[0].trapCapacity, { value: 9.5, low: 8, high: 12 });
    });
    const { outcomes } = monteCarlo(tight, ['two'], { count: 8, seed: 1 });
    const summary = drawSummary(outcomes.two ?? []);
    expect(summary.refused).toBeGreaterThan(0);
    expect(summary.refused).toBeLessThan(8);
    expect(summary.spreads.netPresentValue?.count).toBe(8 - summary.refused);
    const refused = outcomes.two?.find((outcome) => outcome.kind === 'refused');
    expect(refused?.kind === 'refused' && refused.problem).toMatch(/ice|trap/i);
  });

  it('refuses draws whose values contradict each other', () => {
    const damp = certainPlan((document) => {
      Object.assign(document.products[0].targetMoisture, { value: 0.04, low: 0.002, high: 0.05, unit: 'kg/kg' });
      Object.assign(document.products[0].equilibriumMoisture, { value: 0.03, unit: 'kg/kg' });
    });
    const request = drawRequest(damp, ['today', 'two'], { count: 2, seed: 1 });
    const [row] = evaluateDraws({ ...request, draws: [[0.002]] });
    expect(row?.map((outcome) => outcome.kind)).toEqual(['refused', 'refused']);
  });
});

function monthsOf(result: ScenarioResult): number | null {
  const { payback } = returnOf(result);
  return payback.kind === 'crossed' ? payback.months : null;
}

describe('pairedDifference', () => {
  const plain = (netPresentValue: number): DrawOutcome => ({
    kind: 'computed',
    versusToday: { payback: 10, netPresentValue, cumulative: [], equipment: [] },
    lowestCover: null,
    missesLine: false,
    dryOut: 1,
    contribution: 1,
  });

  it('takes out what both have in common', () => {
    const luck = [500, -300, 120, 40, -90, 700, -20, 10];
    const first = luck.map((value) => plain(value + 5));
    const second = luck.map((value, k) => plain(value + (k % 2)));
    const { spread, standardError, firstIsMore } = pairedDifference(first, second, 'netPresentValue');
    expect(spread?.mean).toBeCloseTo(4.5, 12);
    expect(firstIsMore).toBe(1);
    // Halves of 4 and 5: deviation √(8/7)/2, over √8.
    expect(standardError).toBeCloseTo(Math.sqrt(8 / 7) / 2 / Math.sqrt(8), 12);
  });

  it('leaves out draws that one of the two lacks', () => {
    const refused: DrawOutcome = { kind: 'refused', problem: 'cannot run' };
    const { spread } = pairedDifference(
      [plain(3), refused, plain(9)],
      [plain(1), plain(1), refused],
      'netPresentValue',
    );
    expect(spread).toMatchObject({ count: 1, mean: 2 });
    const none = pairedDifference([plain(3)], [plain(1)], 'lowestCover');
    expect([none.spread, none.firstIsMore, none.standardError]).toEqual([null, null, 0]);
    expect(() => pairedDifference([plain(1)], [], 'dryOut')).toThrow(RangeError);
  });
});
