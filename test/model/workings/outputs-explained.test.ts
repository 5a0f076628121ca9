import { describe, expect, it } from 'vitest';
import { countedTerm, inputTerm, sumWorking, worked, workedTerm } from '../../../lib/model/workings/terms.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { demoResult } from '../computed.ts';
import { contextOf, faultsOf } from './explained.ts';
import { workingFaults } from './recomputed.ts';

describe('the working of every output gives the output', () => {
  it.each(DEMO_PLAN.scenarios.map((scenario) => scenario.id))('in the demo: %s', (id) => {
    expect(faultsOf(contextOf(DEMO_PLAN, id, demoResult))).toEqual([]);
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
