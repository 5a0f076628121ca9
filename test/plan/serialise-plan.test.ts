import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { QuantityField } from '../../lib/inputs/input-field.ts';
import { fieldsOf, keyOf } from '../../lib/inputs/register.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import { fromBase, toBase, unitSymbols } from '../../lib/units/convert.ts';
import { editedDemo } from './edited-demo.ts';

function shuffled(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(shuffled);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, child]) => [key, shuffled(child)]),
  );
}

describe('serialisePlan', () => {
  it('gives the same text whatever the order of keys', () => {
    expect(serialisePlan(shuffled(DEMO_PLAN) as typeof DEMO_PLAN)).toBe(serialisePlan(DEMO_PLAN));
  });

  it('starts with what tells the file apart and ends with a line end', () => {
    const text = serialisePlan(DEMO_PLAN);
    expect(text.startsWith('{\n  "format": "rimeplan-plan",\n  "version": 1,\n')).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('leaves out what is not given', () => {
    const plan = editedDemo((document) => (document.hoses[0].length.note = undefined));
    expect(serialisePlan(plan)).not.toContain('undefined');
  });

  it('reads back every chamber that the register allows, in any unit', () => {
    const rows = fieldsOf('chamber').filter(
      (row) => row.kind === 'quantity' && !row.id.includes('Temperature'),
    ) as QuantityField[];
    const change = fc.record({
      row: fc.nat(rows.length - 1),
      unit: fc.nat(),
      place: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 6 }), fc.string({ maxLength: 40 }), (changes, note) => {
        const plan = editedDemo((document) => {
          for (const { row, unit, place } of changes) {
            const field = rows[row] as QuantityField;
            const symbols = unitSymbols(field.dimension);
            const symbol = symbols[unit % symbols.length] as string;
            const value = fromBase(
              toBase(field.min + place * (field.max - field.min), field.dimension, field.unit),
              field.dimension,
              symbol,
            );
            document.chambers[0][keyOf(field)] = { value, unit: symbol, origin: 'measured', note };
          }
        });
        expect(parsePlan(serialisePlan(plan))).toEqual({ ok: true, value: plan });
      }),
      { numRuns: 60 },
    );
  });
});
