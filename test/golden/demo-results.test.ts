import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { demoResult } from '../model/computed.ts';
import { COMPARED, differences, type GoldenOutputs } from './golden-outputs.ts';

const GOLDEN: Readonly<Record<string, GoldenOutputs>> = JSON.parse(
  readFileSync(new URL('demo-results.json', import.meta.url), 'utf8'),
);

describe('the demo gives what it gave before', () => {
  it('in the same scenarios', () => {
    expect(Object.keys(GOLDEN)).toEqual(DEMO_PLAN.scenarios.map((scenario) => scenario.id));
  });

  it('in every quantity of the register', () => {
    expect(COMPARED).toEqual(OUTPUTS.map((output) => output.id));
    for (const outputs of Object.values(GOLDEN)) expect(Object.keys(outputs)).toEqual(COMPARED);
  });

  it.each(Object.entries(GOLDEN))('%s', (id, expected) => {
    const actual = Object.fromEntries(OUTPUTS.map((output) => [output.id, output.read(demoResult(id))]));
    expect(differences(expected, actual)).toEqual([]);
  });
});

describe('differences', () => {
  it('are told with both values beyond a part in a thousand million, and when one is missing', () => {
    const expected = { same: 3, near: 1, far: 1, gone: 2, none: null };
    const actual = { same: 3, near: 1 + 5e-10, far: 1 + 5e-9, none: 0, fresh: 1 };
    expect(differences(expected, actual)).toEqual([
      'far: 1 was expected, now 1.000000005, off by 5.0e-9',
      'gone: 2 was expected, now undefined',
      'none: null was expected, now 0',
      'fresh: undefined was expected, now 1',
    ]);
  });
});
