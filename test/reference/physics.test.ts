import { describe, expect, it } from 'vitest';
import { accuracyTable, describeMeasurement, measure } from './measure.ts';
import { PHYSICS_LAWS } from './physics-laws.ts';
import { PHYSICS_ROWS } from './physics-rows.ts';

describe('published values of the physics laws', () => {
  const exercised = new Set<string>();

  for (const row of PHYSICS_ROWS) {
    it(`${row.id}: ${row.law}, ${row.where}`, () => {
      const measured = measure(row);
      exercised.add(row.id);
      expect(measured.error, describeMeasurement(measured)).toBeLessThanOrEqual(row.tolerance);
    });
  }

  it('leaves no row out', () => {
    expect(exercised.size).toBe(PHYSICS_ROWS.length);
    expect(PHYSICS_ROWS.length).toBe(277);
  });

  it('measures every law of the table with at least one row', () => {
    const measured = new Set(PHYSICS_ROWS.map((row) => row.law));
    expect(Object.keys(PHYSICS_LAWS).filter((law) => !measured.has(law))).toEqual([]);
  });
});

describe('the measure itself', () => {
  const [first] = PHYSICS_ROWS;
  if (!first) throw new Error('no rows');

  it('reports a wrong law as an error above tolerance', () => {
    const wrong = { ...PHYSICS_LAWS, [first.law]: () => first.expected * 1.001 };
    expect(measure(first, wrong).error).toBeCloseTo(1e-3, 12);
    expect(measure(first, wrong).error).toBeGreaterThan(first.tolerance);
  });

  it('refuses a law that does not exist and an input that is missing', () => {
    expect(() => measure({ ...first, law: 'phlogiston' })).toThrow(RangeError);
    expect(() => measure({ ...first, inputs: {} })).toThrow(/lacks the input T/);
  });

  it('makes one table line per law, with its number of rows', () => {
    const lines = accuracyTable(PHYSICS_ROWS);
    expect(lines).toHaveLength(2 + new Set(PHYSICS_ROWS.map((row) => row.law)).size);
    expect(lines[2]).toMatch(/^\| ice pressure \| 33 \| 0 \| /);
  });
});
