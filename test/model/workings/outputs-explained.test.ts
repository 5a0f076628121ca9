import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../../lib/model/outputs.ts';
import { countedTerm, inputTerm, sumWorking, worked, workedTerm } from '../../../lib/model/workings/terms.ts';
import type { WorkContext } from '../../../lib/model/workings/working.ts';
import { seededRandom } from '../../../lib/numeric/seeded-random.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { findById } from '../../../lib/plan/find-by-id.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import type { Loose } from '../../plan/edited-demo.ts';
import { computed, demoResult } from '../computed.ts';
import { planWith, smallPlan } from '../edited-plan.ts';
import { type Seen, workingFaults } from './recomputed.ts';

function contextOf(plan: Plan, id: string, result: (id: string) => WorkContext['result']): WorkContext {
  const first = plan.scenarios[0]?.id ?? '';
  return { plan, scenario: findById(plan.scenarios, id, 'scenario'), result: result(id), today: result(first) };
}

/** All that is wrong with the explanations of one scenario. */
function faultsOf(context: WorkContext): string[] {
  const seen: Seen = new Set();
  return OUTPUTS.flatMap((output) => {
    const value = output.read(context.result);
    const explanation = output.working(context);
    if (explanation.kind === 'none') return value === null ? [] : [`${output.id}: ${value} is not explained`];
    if (value === null) return [`${output.id}: there is no figure, but a working`];
    return workingFaults(context, explanation, value, output.id, seen);
  });
}

function faultsIn(plan: Plan, id: string): string[] {
  return faultsOf(contextOf(plan, id, (wanted) => computed(plan, wanted)));
}

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
  it.each(DEMO_PLAN.scenarios.map((scenario) => scenario.id))('in the demo: %s', (id) => {
    expect(faultsOf(contextOf(DEMO_PLAN, id, demoResult))).toEqual([]);
  });

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

describe('the check itself', () => {
  const context = contextOf(DEMO_PLAN, 'today', demoResult);
  const price = inputTerm(DEMO_PLAN, 'site.electricityPrice', 'p');
  const count = countedTerm({ label: 'Counted', symbol: 'n', value: 3, dimension: 'count' }, { what: 'three' });
  const three = sumWorking('as counted', [count]);

  it.each([
    ['a sum that does not come to the figure', 4, three, 'gives 3'],
    [
      'a part that is off',
      3,
      sumWorking('', [workedTerm({ ...count, value: 3 }, () => sumWorking('', [count, count]))]),
      'gives 6',
    ],
    [
      'a value that is not the plan’s',
      1,
      sumWorking('', [{ ...price, value: 1 }]),
      'not what site.electricityPrice says',
    ],
    ['a figure off by a millionth', 3.000003, three, 'gives 3'],
    [
      'an input that is not there',
      3,
      sumWorking('', [countedTerm(count, { what: '', inputs: ['site.nothing'] })]),
      'no input',
    ],
    ['a number that is none', 3, worked('', '', [{ ...count, value: Number.NaN }], () => 3), 'NaN'],
  ])('finds %s', (_, value, working, words) => {
    expect(workingFaults(context, working, value, 'figure', new Set()).join()).toContain(words);
  });
});
