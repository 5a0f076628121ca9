import { describe, expect, it } from 'vitest';
import type { OutputField } from '../../../lib/model/outputs/output-field.ts';
import { OUTPUTS } from '../../../lib/model/outputs.ts';
import { countedTerm, inputTerm, sumWorking, worked, workedTerm } from '../../../lib/model/workings/terms.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { demoResult } from '../computed.ts';
import { contextOf, faultsOf } from './explained.ts';
import { workingFaults } from './recomputed.ts';

describe('the working of every output gives the output', () => {
  it.each(DEMO_PLAN.scenarios.map((scenario) => scenario.id))('in the demo: %s', (id) => {
    expect(faultsOf(contextOf(DEMO_PLAN, id, demoResult))).toEqual([]);
  });

  it('leaves none out: each has a figure, and with it a working that was held to it, somewhere in the demo', () => {
    const contexts = DEMO_PLAN.scenarios.map(({ id }) => contextOf(DEMO_PLAN, id, demoResult));
    const unseen = OUTPUTS.filter((output) =>
      contexts.every((context) => output.read(context.result) === null || output.working(context).kind !== 'worked'),
    );
    expect(unseen.map(({ id }) => id)).toEqual([]);
    expect(new Set(OUTPUTS.map(({ id }) => id)).size).toBe(OUTPUTS.length);
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

  const some = OUTPUTS.find(({ id }) => id === 'cost.total') as OutputField;

  it.each([
    [
      'a figure without a working',
      { ...some, working: () => ({ kind: 'none', why: 'none' }) as const },
      'not explained',
    ],
    ['a working without a figure', { ...some, read: () => null }, 'no figure'],
    ['a working of something else', { ...some, working: () => three }, 'gives 3'],
  ])('finds %s', (_, output, words) => {
    expect(faultsOf(context, [output]).join()).toContain(words);
    expect(faultsOf(context, [some])).toEqual([]);
  });
});
