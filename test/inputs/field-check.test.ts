import { describe, expect, it } from 'vitest';
import { numberProblem, quantityProblems } from '../../lib/inputs/field-check.ts';
import type { QuantityField } from '../../lib/inputs/input-field.ts';
import { fieldOf } from '../../lib/inputs/register.ts';

/** 20 to 4000 mTorr. */
const CEILING = fieldOf('chamber.pressureCeiling') as QuantityField;
const PEOPLE = fieldOf('shift.people');

describe('numberProblem', () => {
  it('takes both ends of the range', () => {
    expect(numberProblem(CEILING, 20, 'mTorr')).toBeUndefined();
    expect(numberProblem(CEILING, 4000, 'mTorr')).toBeUndefined();
  });

  it('takes the ends in another unit, rounding included', () => {
    expect(numberProblem(CEILING, (4000 * 101325) / 760000, 'Pa')).toBeUndefined();
    expect(numberProblem(CEILING, 534, 'Pa')?.problem).toBe('Pressure ceiling is 534 Pa, which is too high.');
  });

  it('says the range in the unit of the entry', () => {
    expect(numberProblem(CEILING, 1, 'Pa')).toEqual({
      problem: 'Pressure ceiling is 1 Pa, which is too low.',
      remedy: 'Give a value from 2.666 Pa to 533.3 Pa.',
    });
  });

  it('refuses what is no finite number', () => {
    expect(numberProblem(CEILING, Number.NaN, 'Pa')?.problem).toContain('not a finite number');
    expect(numberProblem(CEILING, Number.POSITIVE_INFINITY, 'Pa')?.problem).toContain('not a finite number');
  });

  it('asks for whole numbers where only they make sense', () => {
    if (PEOPLE.kind !== 'number') throw new Error('people should be a bare number');
    expect(numberProblem(PEOPLE, 2, '')).toBeUndefined();
    expect(numberProblem(PEOPLE, 1.5, '')?.remedy).toBe('Give a whole number, such as 2.');
  });
});

describe('quantityProblems', () => {
  const base = { value: 600, unit: 'mTorr', origin: 'measured' } as const;

  it('takes low, likely and high in rising order', () => {
    expect(quantityProblems(CEILING, { ...base, low: 500, high: 700 })).toEqual([]);
    expect(quantityProblems(CEILING, { ...base, low: 600, high: 600 })).toEqual([]);
  });

  it('marks the bound that is out of order or out of range', () => {
    expect(quantityProblems(CEILING, { ...base, low: 601 })[0]?.key).toBe('low');
    expect(quantityProblems(CEILING, { ...base, high: 599 })[0]?.key).toBe('high');
    expect(quantityProblems(CEILING, { ...base, low: 1, high: 9000 }).map((found) => found.key)).toEqual([
      'low',
      'high',
    ]);
  });
});
