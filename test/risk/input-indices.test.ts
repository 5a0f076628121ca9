import { beforeAll, describe, expect, it } from 'vitest';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { type DrawOutcome, evaluateDraws } from '../../lib/risk/evaluate-draws.ts';
import { type InputIndices, indexRequest, inputIndices } from '../../lib/risk/input-indices.ts';
import { plantMemory } from '../../lib/risk/plant-memory.ts';
import { tornado, tornadoRequest } from '../../lib/risk/tornado.ts';
import { uncertainInputs } from '../../lib/risk/uncertain-inputs.ts';
import { computed, returnOf } from '../model/computed.ts';
import { certainPlan, uncertainFruit, uncertainPrice } from './uncertain-plan.ts';

/** Price and fruit decide the value, both in a straight line; what a log is worth decides nothing. */
function threeInputs(): Plan {
  return certainPlan((document) => {
    uncertainPrice(document);
    uncertainFruit(document);
    Object.assign(document.crew.ownerRate, { low: 1, high: 90 });
  });
}

/** Exact variance of a PERT input. */
function variance(low: number, likely: number, high: number): number {
  const mean = (low + 4 * likely + high) / 6;
  return ((mean - low) * (high - mean)) / 7;
}

const valueWith = (price: number, fruit: number) =>
  returnOf(
    computed(
      certainPlan((document) => {
        document.products[0].price.value = price;
        document.products[0].wetCost.value = fruit;
      }),
      'two',
    ),
  ).netPresentValue;

let slopes: { readonly price: number; readonly fruit: number };

beforeAll(() => {
  const base = valueWith(112, 4.2);
  // Over a wide step: monthly figures are whole cents.
  slopes = { price: (valueWith(132, 4.2) - base) / 20, fruit: (valueWith(112, 8.2) - base) / 4 };
});

const flat = (rows: readonly (readonly DrawOutcome[])[]) => rows.flatMap((row) => row[0] ?? []);

describe('inputIndices', () => {
  it('shares the variance of the value by slope and spread of each price', () => {
    const plan = threeInputs();
    const inputs = uncertainInputs(plan);
    expect(inputs.map((input) => input.key)).toEqual([
      'crew.ownerRate',
      'products.strawberries.price',
      'products.strawberries.wetCost',
    ]);
    const memory = plantMemory();
    const outcomes = flat(evaluateDraws(indexRequest(plan, ['two'], { count: 64, seed: 4 }), () => {}, memory));
    expect(outcomes).toHaveLength(64 * 5);
    expect(memory.runs()).toBe(2);
    const found = inputIndices(outcomes, inputs.length, 'netPresentValue');
    if (found.kind !== 'computed') throw new Error(found.kind);
    const price = slopes.price ** 2 * variance(70, 112, 130);
    const fruit = slopes.fruit ** 2 * variance(3, 4.2, 8);
    const shares = [0, price / (price + fruit), fruit / (price + fruit)];
    shares.forEach((share, k) => {
      // A straight line has no interplay: first-order and total are alike. Sixty-four rows scatter by a few hundredths.
      expect(Math.abs((found.indices.first?.[k] ?? Number.NaN) - share)).toBeLessThan(0.06);
      expect(Math.abs((found.indices.total?.[k] ?? Number.NaN) - share)).toBeLessThan(0.06);
    });
    expect(found.indices.total?.[0]).toBe(0);
    expect(Math.sqrt(found.indices.variance / (price + fruit))).toBeCloseTo(1, 1);
    expect(found.dropped).toBe(0);
  });

  const outcome = (netPresentValue: number | null): DrawOutcome =>
    netPresentValue === null
      ? { kind: 'refused', problem: 'cannot run' }
      : {
          kind: 'computed',
          versusToday: { payback: null, netPresentValue, cumulative: [], equipment: [] },
          lowestCover: null,
          missesLine: false,
          dryOut: 1,
          contribution: 1,
        };

  it('leaves out rows that lack the figure, and says so', () => {
    const rows = [
      [1, 2, 3],
      [4, null, 6],
      [7, 5, 2],
    ];
    const found: InputIndices = inputIndices(rows.flat().map(outcome), 1, 'netPresentValue');
    expect(found).toMatchObject({ kind: 'computed', dropped: 1 });
    expect(inputIndices(rows.flat().map(outcome), 1, 'payback')).toEqual({ kind: 'tooFew', dropped: 3 });
    expect(inputIndices(rows.flat().map(outcome), 1, 'lowestCover')).toEqual({ kind: 'tooFew', dropped: 3 });
    expect(() => inputIndices([outcome(1), outcome(2)], 1, 'dryOut')).toThrow(RangeError);
  });
});

describe('indexRequest', () => {
  it('goes row by row, so that draws which differ in money alone share a simulation', () => {
    const plan = certainPlan((document) => {
      uncertainPrice(document);
      Object.assign(document.products[0].permeability, { value: 2e-8, low: 1e-8, high: 4e-8 });
    });
    const request = indexRequest(plan, ['today'], { count: 2, seed: 1 });
    const [a = [], b = [], permeable, dear] = request.draws;
    expect(request.inputs.map((input) => input.fieldId)).toEqual(['product.permeability', 'product.price']);
    expect(permeable).toEqual([b[0], a[1]]);
    expect(dear).toEqual([a[0], b[1]]);
    const memory = plantMemory(undefined, 2);
    evaluateDraws(request, () => {}, memory);
    // Eight draws, but in each of the two rows only two kinds of fruit.
    expect([request.draws.length, memory.runs()]).toEqual([8, 4]);
  });
});

describe('tornado', () => {
  it('has bars as wide as slope times range, the widest first', () => {
    const plan = threeInputs();
    const inputs = uncertainInputs(plan);
    const outcomes = flat(evaluateDraws(tornadoRequest(plan, ['two'])));
    const { likely, bars } = tornado(inputs, outcomes, 'netPresentValue');
    expect(likely).toBeCloseTo(valueWith(112, 4.2), 6);
    expect(bars.map((bar) => bar.input.fieldId)).toEqual(['product.price', 'product.wetCost', 'crew.ownerRate']);
    const [price, fruit, owner] = bars;
    expect((price?.swing ?? 0) / (slopes.price * 60)).toBeCloseTo(1, 3);
    expect((fruit?.swing ?? 0) / (-slopes.fruit * 5)).toBeCloseTo(1, 3);
    expect(owner?.swing).toBe(0);
    expect(price?.atLow).toBeLessThan(likely ?? 0);
    expect(fruit?.atLow).toBeGreaterThan(likely ?? 0);
  });

  it('counts a bar that lies on one side from the likely value', () => {
    const [input] = uncertainInputs(certainPlan(uncertainPrice));
    if (!input) throw new Error('no input');
    const at = (dryOut: number): DrawOutcome => ({
      kind: 'computed',
      versusToday: null,
      lowestCover: null,
      missesLine: false,
      dryOut,
      contribution: 0,
    });
    const { bars } = tornado([input], [at(5), at(7), at(9)], 'dryOut');
    expect(bars[0]).toMatchObject({ atLow: 7, atHigh: 9, swing: 4 });
    const broken = tornado([input], [at(5), { kind: 'refused', problem: 'no' }, at(9)], 'dryOut');
    expect(broken.bars[0]).toMatchObject({ atLow: null, atHigh: 9, swing: 4 });
    expect(tornado([input], [at(5), at(7), at(9)], 'payback').likely).toBeNull();
    expect(() => tornado([input], [at(5)], 'dryOut')).toThrow(RangeError);
  });
});
