import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../lib/numeric/seeded-random.ts';
import type { Loose } from '../../plan/edited-demo.ts';
import { planWith, smallPlan } from '../edited-plan.ts';
import { faultsIn } from './explained.ts';

/** Every amount of the plan that is plain money or a share of it moved by up to a fifth, by a seed. */
function shaken(document: Loose, seed: number): void {
  const dice = seededRandom(seed).uniform;
  const shake = (node: Loose): void => {
    if (typeof node !== 'object' || node === null) return;
    if (!('origin' in node)) for (const child of Object.values(node)) shake(child);
    else if (String(node.unit).startsWith('money')) {
      node.value *= 0.8 + 0.4 * dice();
      delete node.low;
      delete node.high;
    }
  };
  shake(document);
}

/** Two products, two chamber types, prices by the hour, wages for the shift, loans, a spare, goods kept in store. */
function makeRich(document: Loose): void {
  const [fruit, , soup] = document.products;
  const mix = [
    { product: fruit.id, share: 60 },
    { product: soup.id, share: 40 },
  ];
  fruit.unsold = 'keep';
  fruit.mostKept.value = 40;
  document.crew.guaranteed = true;
  document.crew.ownerAtChambers.value = 6;
  document.site.priceBands = [
    {
      id: 'evening',
      name: 'Evening',
      weekdays: [0, 1, 2, 3, 4],
      start: 17,
      end: 21,
      price: { ...document.site.electricityPrice, value: 0.31, low: undefined, high: undefined },
    },
  ];
  const [today, expansion] = document.scenarios;
  document.scenarios = [
    { ...today, mix, chambers: [{ chamber: 'mid', count: 1 }] },
    {
      ...expansion,
      id: 'mixed',
      mix,
      sparePump: 'onShelf',
      chambers: [
        { chamber: 'mid', count: 1 },
        { chamber: 'large', count: 1 },
      ],
    },
  ];
}

describe('the working of every output gives the output', () => {
  it.each([1, 2, 3, 4])('in a small plan with other prices, seed %i', (seed) => {
    const plan = smallPlan((document) => shaken(document, seed));
    expect(faultsIn(plan, 'two')).toEqual([]);
    expect(faultsIn(plan, 'today')).toEqual([]);
  });

  it('with two chamber types, prices by the hour, wages by the shift, a spare and goods kept in store', () => {
    const plan = planWith(makeRich);
    expect(faultsIn(plan, 'mixed')).toEqual([]);
  });

  it('without loans, with old equipment given in, and a purchase in two stages', () => {
    const plan = smallPlan((document) => {
      document.financing.loans = [];
      const [, two] = document.scenarios;
      two.extraCapital.value = -2500;
      document.scenarios.push({
        ...two,
        id: 'three',
        name: 'Then three',
        after: 'two',
        purchaseMonth: 14,
        chambers: [{ chamber: 'mid', count: 3 }],
      });
    });
    expect(faultsIn(plan, 'three')).toEqual([]);
  });
});
