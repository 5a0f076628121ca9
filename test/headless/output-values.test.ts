import { describe, expect, it } from 'vitest';
import { internalFault } from '../../lib/headless/internal-fault.ts';
import { outputValues } from '../../lib/headless/output-values.ts';
import type { OutputField } from '../../lib/model/outputs/output-field.ts';
import { demoResult } from '../model/computed.ts';

const FIELD: OutputField = {
  id: 'test',
  label: 'Test',
  group: 'vacuum',
  dimension: 'pressure',
  meaning: '',
  formula: '',
  needs: [],
  working: () => ({ kind: 'none', why: 'Made up for this test.' }),
  read: () => 3,
};

describe('outputValues', () => {
  it('gives each value in the unit of the engine', () => {
    expect(outputValues(demoResult('today'), [FIELD])).toEqual({ test: { value: 3, unit: 'Pa' } });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, null])('has nothing for %d', (value) => {
    const field = { ...FIELD, read: () => value };
    expect(outputValues(demoResult('today'), [field])).toEqual({ test: { value: null, unit: 'Pa' } });
  });
});

describe('internalFault', () => {
  it('tells the message and never where in the program it arose', () => {
    const found = internalFault(new RangeError('pressure -1\n    at somewhere.ts:3'));
    expect(found.problem).toBe('The planner failed: pressure -1.');
    expect(internalFault('').problem).toBe('The planner failed: no reason is known.');
  });
});
