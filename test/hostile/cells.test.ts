import fc from 'fast-check';
import { expect, it } from 'vitest';
import { numberProblem } from '../../lib/inputs/field-check.ts';
import type { InputField, NumberField, QuantityField } from '../../lib/inputs/input-field.ts';
import { fieldsOf, REGISTER, type Section } from '../../lib/inputs/register.ts';
import { readFieldCell } from '../../lib/plan/read-cell.ts';
import { unitSymbols } from '../../lib/units/convert.ts';
import { hostileText } from './hostile-text.ts';
import { expectUntouched } from './untouched.ts';

function isNumeric(field: InputField): field is QuantityField | NumberField {
  return field.kind === 'quantity' || field.kind === 'number';
}

const FIELDS = (Object.keys(REGISTER) as Section[]).flatMap((section) => fieldsOf(section).filter(isNumeric));

const UNITS = ['', ' kg', ' lb', ' °F', '%', ' h', ' €', '$', ' m²', ' cfm', ' furlong', 'e5', ' years'];

/** Something like an entry: numbers, signs and units in any order, among odd texts. */
const typed = fc.oneof(
  hostileText,
  fc.tuple(fc.double({ noNaN: true }), fc.constantFrom(...UNITS)).map(([number, unit]) => `${number}${unit}`),
  fc.tuple(fc.integer({ min: 0, max: 5000 }), fc.constantFrom(...UNITS)).map(([number, unit]) => `${number}${unit}`),
  fc
    .array(fc.constantFrom('1', '0', '.', ',', '-', '+', '*', '/', '(', ')', '%', ' ', 'e', '°C', 'kg', '$'), {
      maxLength: 14,
    })
    .map((parts) => parts.join('')),
);

it('whatever is typed into whatever cell is a value within its range, or told in words', () => {
  const seen = { taken: 0, refused: 0 };
  fc.assert(
    fc.property(typed, fc.nat(FIELDS.length - 1), fc.nat(), (text, at, unit) => {
      const field = FIELDS[at] as QuantityField | NumberField;
      const units = unitSymbols(field.dimension);
      const shown = units[unit % units.length] ?? '';
      const reading = readFieldCell(text, { field, path: 'plan.field', shown, currency: 'USD' });
      seen[reading.ok ? 'taken' : 'refused'] += 1;
      if (!reading.ok) {
        expect(reading.error).toMatchObject({ severity: 'error', field: 'plan.field' });
        expect(reading.error.problem).toMatch(/\.$/);
        expect(reading.error.remedy).toMatch(/\.$/);
        expect(reading.error.value.length).toBeLessThanOrEqual(80);
        return;
      }
      if (reading.value === null) return;
      expect(Number.isFinite(reading.value.value)).toBe(true);
      expect(numberProblem(field, reading.value.value, reading.value.unit)).toBeUndefined();
    }),
    { numRuns: 10_000, endOnFailure: true },
  );
  expectUntouched();
  expect(seen.taken).toBeGreaterThan(300);
  expect(seen.refused).toBeGreaterThan(3000);
});
