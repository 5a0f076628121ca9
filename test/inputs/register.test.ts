import { describe, expect, it } from 'vitest';
import { defaultQuantity, defaultValues } from '../../lib/inputs/default-values.ts';
import { quantityProblems } from '../../lib/inputs/field-check.ts';
import type { InputField } from '../../lib/inputs/input-field.ts';
import { fieldOf, fieldsOf, findField, keyOf, REGISTER, type Section } from '../../lib/inputs/register.ts';
import { findUnit, toBase } from '../../lib/units/convert.ts';

const SECTIONS = Object.keys(REGISTER) as Section[];
const ROWS: readonly InputField[] = SECTIONS.flatMap((section) => [...fieldsOf(section)]);

describe('the register of inputs', () => {
  it('gives every row an id of its own, made of its section and a key', () => {
    expect(new Set(ROWS.map((row) => row.id)).size).toBe(ROWS.length);
    for (const section of SECTIONS) {
      for (const row of fieldsOf(section)) expect(row.id).toBe(`${section}.${keyOf(row)}`);
    }
  });

  it.each(ROWS.map((row) => [row.id, row] as const))('%s says what it is in one plain sentence', (_id, row) => {
    expect(row.label).toMatch(/^[A-Z].*[^.]$/);
    expect(row.meaning).toMatch(/^[A-Z].*\.$/);
    expect(row.meaning.length).toBeLessThan(140);
    expect(row.group).not.toBe('');
  });

  it.each(ROWS.filter((row) => 'dimension' in row).map((row) => [row.id, row] as const))(
    '%s has a unit of its dimension and a range that makes sense',
    (_id, row) => {
      if (!('dimension' in row)) return;
      expect(findUnit(row.dimension, row.unit)).toBeDefined();
      expect(row.min).toBeLessThan(row.max);
      expect(Number.isFinite(toBase(row.max, row.dimension, row.unit))).toBe(true);
      if (row.value === null) expect(row.nullable).toBe(true);
      else expect(row.value >= row.min && row.value <= row.max).toBe(true);
    },
  );

  it('has defaults that pass its own checks', () => {
    for (const row of ROWS) {
      if (row.kind !== 'quantity') continue;
      const quantity = defaultQuantity(row);
      if (quantity) expect(quantityProblems(row, quantity)).toEqual([]);
    }
  });

  it('names a source exactly where a default comes from a handbook', () => {
    for (const row of ROWS) {
      if (row.kind === 'quantity')
        expect([row.id, row.source !== undefined]).toEqual([row.id, row.origin === 'handbook']);
    }
  });

  it('offers choices among which the default is', () => {
    for (const row of ROWS) {
      if (row.kind === 'choice') expect(row.options.map((option) => option.value)).toContain(row.value);
    }
  });

  it('sends the reader to a professional for what lenders, tax offices and codes decide', () => {
    const ids = ['loan.rate', 'loan.term', 'loan.fee', 'financing.dscrLine', 'financing.taxRate'];
    for (const id of [
      ...ids,
      'financing.depreciationLife',
      'site.continuousFactor',
      'site.supplyCurrent',
      'crew.onCost',
    ]) {
      expect(fieldOf(id)).toHaveProperty('ask');
    }
  });

  it('finds rows by id and refuses ids it does not have', () => {
    expect(findField('chamber.shelfArea')?.label).toBe('Shelf area');
    expect(findField('chamber.nothing')).toBeUndefined();
    expect(() => fieldOf('chamber.nothing')).toThrow(RangeError);
  });

  it('makes a section of defaults that carry unit, origin and source', () => {
    const crew = defaultValues('crew');
    expect(crew.wage).toEqual({
      value: 18.33,
      unit: 'money/h',
      origin: 'handbook',
      source: 'bls-food-processing-2023',
    });
    expect(crew.guaranteed).toBe(false);
    expect(defaultValues('product').weeklyDemand).toBeNull();
  });
});
