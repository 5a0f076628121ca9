import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findOptions } from '../../../lib/insight/options/find-options.ts';
import { listCandidates } from '../../../lib/insight/options/list-candidates.ts';
import { workedOut } from '../../../lib/insight/options/option-search.ts';
import type { OptionSpace } from '../../../lib/insight/options/option-types.ts';
import type { Loose } from '../../plan/edited-demo.ts';
import { bruteFrontier, everyOption } from './brute-force.ts';
import { contextOf, NO_LIMITS, quickMemory, TINY_SPACE, tinyPlan } from './tiny-search.ts';

const SPACE: OptionSpace = {
  ...TINY_SPACE,
  chambers: [{ chamber: 'mid', least: 1, most: 2 }],
  mostChambers: 2,
  arrangements: ['own', 'shared'],
  patterns: ['days', 'two-shifts'],
  spares: ['none', 'onShelf'],
};

/** Money and market of all sorts, tight and leaky chambers, short and long horizons; all within what the register allows. */
const anyShape = fc.record({
  price: fc.integer({ min: 40, max: 160 }),
  fruit: fc.integer({ min: 2, max: 12 }),
  demand: fc.option(fc.integer({ min: 1, max: 40 })),
  keeps: fc.boolean(),
  wage: fc.integer({ min: 5, max: 40 }),
  guaranteed: fc.boolean(),
  owner: fc.integer({ min: 0, max: 30 }),
  maintenance: fc.integer({ min: 0, max: 6000 }),
  chamberPrice: fc.integer({ min: 2000, max: 40_000 }),
  tax: fc.constantFrom(0, 21, 35),
  horizon: fc.integer({ min: 24, max: 50 }),
  leak: fc.constantFrom(0.004, 0.012),
  budget: fc.option(fc.integer({ min: 5000, max: 90_000 })),
  dscr: fc.option(fc.constantFrom(1.1, 2.5)),
});

type Shape = typeof anyShape extends fc.Arbitrary<infer Drawn> ? Drawn : never;

/** A value for sure: the demo's low and high would contradict it. */
function setSure(owner: Loose, key: string, value: number): void {
  owner[key] = { value, unit: owner[key].unit, origin: 'guess' };
}

function planOf(shape: Shape) {
  return tinyPlan((document) => {
    const [fruit] = document.products;
    setSure(fruit, 'price', shape.price);
    setSure(fruit, 'wetCost', shape.fruit);
    if (shape.demand !== null) fruit.weeklyDemand = { value: shape.demand, unit: 'kg/week', origin: 'guess' };
    if (shape.keeps) {
      fruit.unsold = 'keep';
      fruit.mostKept = { value: 10, unit: 'kg', origin: 'guess' };
    }
    setSure(document.crew, 'wage', shape.wage);
    document.crew.guaranteed = shape.guaranteed;
    setSure(document.crew, 'ownerAtChambers', shape.owner);
    document.chambers[0].maintenance = { value: shape.maintenance, unit: 'money/year', origin: 'quoted' };
    setSure(document.chambers[0], 'price', shape.chamberPrice);
    document.chambers[0].leak = { value: shape.leak, unit: 'Pa·m³/s', origin: 'guess' };
    setSure(document.financing, 'taxRate', shape.tax);
    setSure(document.financing, 'horizon', shape.horizon);
  });
}

describe('a search in a shop of any kind', () => {
  it('finds what comparing everything finds, and no option brings more than its ceiling', () => {
    const { simulate } = quickMemory();
    let pruned = 0;
    let looked = 0;
    fc.assert(
      fc.property(anyShape, (shape) => {
        const context = contextOf(planOf(shape), simulate);
        const all = everyOption(context, SPACE, simulate);
        const limits = { ...NO_LIMITS, budget: shape.budget, dscrLine: shape.dscr };
        const ceilings = new Map(
          listCandidates(context, SPACE, NO_LIMITS, simulate).candidates.map(({ place, ceiling }) => [place, ceiling]),
        );
        for (const { place, figures } of all) {
          looked += 1;
          expect(figures.yearlyCash).toBeLessThanOrEqual(ceilings.get(place) ?? Number.NaN);
        }
        const search = findOptions(context, SPACE, limits, simulate);
        const found = search.frontier.map(({ place, figures: { money, yearlyCash } }) => [place, money, yearlyCash]);
        const right = bruteFrontier(all, limits).map(({ place, figures }) => [
          place,
          figures.money,
          figures.yearlyCash,
        ]);
        expect(found).toEqual(right);
        const before = Object.values(search.ruledOut).reduce((sum, count) => sum + count, 0);
        expect(before + search.outclassed + workedOut(search)).toBe(search.all);
        pruned += search.outclassed;
      }),
      { numRuns: 8, seed: 1611 },
    );
    // The test says something only if options were looked at, and some of them left out by their ceiling.
    expect(looked).toBeGreaterThan(60);
    expect(pruned).toBeGreaterThan(0);
  });
});
