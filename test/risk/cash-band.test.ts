import { beforeAll, describe, expect, it } from 'vitest';
import type { ScenarioReturn } from '../../lib/model/scenario-result.ts';
import { type CashBand, cashBand } from '../../lib/risk/cash-band.ts';
import { drawRequest } from '../../lib/risk/draw-request.ts';
import { type DrawOutcome, evaluateDraws } from '../../lib/risk/evaluate-draws.ts';
import { pertQuantile } from '../../lib/risk/pert.ts';
import { computed, returnOf } from '../model/computed.ts';
import { certainPlan } from './uncertain-plan.ts';

const PRICE = { low: 92, likely: 112, high: 132 };
const COUNT = 64;

const atPrice = (value: number) =>
  certainPlan((document) => {
    document.products[0].price.value = value;
  });

let outcomes: readonly DrawOutcome[];
let likely: ScenarioReturn;
let band: CashBand;

beforeAll(() => {
  const plan = certainPlan((document) => {
    Object.assign(document.products[0].price, { value: PRICE.likely, low: PRICE.low, high: PRICE.high });
  });
  outcomes = evaluateDraws(drawRequest(plan, ['two'], { count: COUNT, seed: 11 })).flat();
  likely = returnOf(computed(plan, 'two'));
  const found = cashBand(outcomes);
  if (!found) throw new Error('no band');
  band = found;
});

function made(cumulative: readonly number[], equipment: readonly number[] = []): DrawOutcome {
  return {
    kind: 'computed',
    versusToday: { payback: null, netPresentValue: 0, cumulative, equipment },
    lowestCover: null,
    missesLine: false,
    dryOut: 1,
    contribution: 1,
  };
}

describe('cashBand of one price that may as well be higher as lower', () => {
  it('holds the likely line in every month, with the middle of all draws close to it', () => {
    const { low, middle, high } = band.after;
    expect(low).toHaveLength(likely.cumulative.length);
    likely.cumulative.forEach((cash, month) => {
      const [from = Number.NaN, half = Number.NaN, to = Number.NaN] = [low[month], middle[month], high[month]];
      expect(from).toBeLessThanOrEqual(cash + 1e-6);
      expect(to).toBeGreaterThanOrEqual(cash - 1e-6);
      expect(Math.abs(half - cash)).toBeLessThanOrEqual(0.05 * (to - from) + 0.02);
    });
  });

  it('never has its lower edge above its upper one, and is open at the end', () => {
    for (const { low, middle, high } of [band.before, band.after]) {
      low.forEach((from, month) => {
        expect(from).toBeLessThanOrEqual(middle[month] ?? Number.NaN);
        expect(middle[month]).toBeLessThanOrEqual(high[month] ?? Number.NaN);
      });
    }
    expect((band.after.high.at(-1) ?? 0) - (band.after.low.at(-1) ?? 0)).toBeGreaterThan(1000);
  });

  it('has its edges where the price has its own tenths, as cash is a straight line in it', () => {
    const width = (band.after.high.at(-1) ?? 0) - (band.after.low.at(-1) ?? 0);
    const pairs = [
      [band.after.low, 0.1],
      [band.after.high, 0.9],
    ] as const;
    for (const [edge, share] of pairs) {
      const exact = returnOf(computed(atPrice(pertQuantile(share, PRICE)), 'two')).cumulative.at(-1) ?? Number.NaN;
      expect(Math.abs((edge.at(-1) ?? Number.NaN) - exact)).toBeLessThan(0.03 * width);
    }
  });

  it('takes the purchase in one step, alike in all draws', () => {
    const month = likely.lines.equipment.findIndex((flow) => flow < 0);
    const paid = likely.lines.equipment[month] ?? Number.NaN;
    expect(month).toBeGreaterThanOrEqual(0);
    expect((band.after.low[month] ?? 0) - (band.before.low[month] ?? 0)).toBeCloseTo(paid, 6);
  });
});

describe('cashBand', () => {
  it('takes each month by itself, between the draws where it must', () => {
    const found = cashBand([made([0, 0, 30]), made([0, 10, 20]), made([0, 20, 10]), made([0, 30, 0])]);
    // Of four draws the tenth lies 0.3 of the way from the first to the second.
    expect(found?.after.low.map((cash) => Number(cash.toFixed(9)))).toEqual([0, 3, 3]);
    expect(found?.after.high.map((cash) => Number(cash.toFixed(9)))).toEqual([0, 27, 27]);
    expect(found?.after.middle).toEqual([0, 15, 15]);
  });

  it('leaves out draws that cannot run, and ends with the shortest horizon', () => {
    const found = cashBand([{ kind: 'refused', problem: 'no' }, made([-5, 1, 2], [-5]), made([-5, 1], [-5])]);
    expect(found?.after.low).toEqual([-5, 1]);
    expect(found?.before.high).toEqual([0, 1]);
  });

  it('has nothing to say of today against itself, or when nothing can run', () => {
    expect(cashBand([{ kind: 'refused', problem: 'no' }])).toBeNull();
    expect(cashBand([{ ...(made([]) as object), versusToday: null } as DrawOutcome])).toBeNull();
  });
});
