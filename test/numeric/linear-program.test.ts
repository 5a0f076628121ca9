import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLinearProgram } from '../../lib/numeric/linear-program.ts';

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, k) => sum + value * (b[k] ?? 0), 0);

describe('solveLinearProgram', () => {
  it('does nothing when nothing pays', () => {
    const outcome = solveLinearProgram({ gain: [-1, 0], uses: [[1, 1]], limits: [5] });
    expect(outcome).toEqual({ kind: 'optimal', value: 0, amounts: [0, 0], shadowPrices: [0] });
  });

  it('says which activity grows without end', () => {
    expect(solveLinearProgram({ gain: [0, 1], uses: [[1, 0]], limits: [5] })).toEqual({
      kind: 'unbounded',
      activity: 1,
    });
  });

  it('ends on a problem on which the largest-gain rule cycles', () => {
    const outcome = solveLinearProgram({
      gain: [0.75, -150, 0.02, -6],
      uses: [
        [0.25, -60, -0.04, 9],
        [0.5, -90, -0.02, 3],
        [0, 0, 1, 0],
      ],
      limits: [0, 0, 1],
    });
    expect(outcome.kind).toBe('optimal');
    if (outcome.kind === 'optimal') expect(outcome.value).toBeCloseTo(0.05, 12);
  });

  it('keeps to the limits and proves itself best by its shadow prices', () => {
    const size = fc.record({ columns: fc.integer({ min: 1, max: 5 }), rows: fc.integer({ min: 1, max: 5 }) });
    const program = size.chain(({ columns, rows }) =>
      fc.record({
        gain: fc.array(fc.integer({ min: -5, max: 20 }), { minLength: columns, maxLength: columns }),
        uses: fc.array(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: columns, maxLength: columns }), {
          minLength: rows,
          maxLength: rows,
        }),
        limits: fc.array(fc.integer({ min: 0, max: 100 }), { minLength: rows, maxLength: rows }),
      }),
    );
    fc.assert(
      fc.property(program, (terms) => {
        const outcome = solveLinearProgram(terms);
        if (outcome.kind === 'notSolved') throw new Error('the solver went in circles');
        if (outcome.kind === 'unbounded') {
          expect(terms.uses.every((row) => row[outcome.activity] === 0)).toBe(true);
          return;
        }
        expect(outcome.amounts.every((amount) => amount >= -1e-9)).toBe(true);
        terms.uses.forEach((row, k) => {
          expect(dot(row, outcome.amounts)).toBeLessThanOrEqual((terms.limits[k] ?? 0) + 1e-7);
        });
        // Weak duality: prices that cover every activity bound the gain from above, so equality is the optimum.
        expect(outcome.shadowPrices.every((price) => price >= -1e-9)).toBe(true);
        terms.gain.forEach((gain, column) => {
          const price = dot(
            outcome.shadowPrices,
            terms.uses.map((row) => row[column] ?? 0),
          );
          expect(price).toBeGreaterThanOrEqual(gain - 1e-7);
        });
        expect(dot(outcome.shadowPrices, terms.limits)).toBeCloseTo(outcome.value, 6);
        expect(dot(terms.gain, outcome.amounts)).toBeCloseTo(outcome.value, 6);
      }),
      { seed: 31, numRuns: 300 },
    );
  });

  it('has shadow prices that are what a little more of a limit brings', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const list = (length: number, min: number, max: number) =>
      fc.array(number(min, max), { minLength: length, maxLength: length });
    const program = fc.record({
      gain: list(4, 1, 20),
      uses: fc.array(list(4, 0.5, 9), { minLength: 3, maxLength: 3 }),
      limits: list(3, 10, 100),
    });
    const best = (terms: Parameters<typeof solveLinearProgram>[0]) => {
      const outcome = solveLinearProgram(terms);
      if (outcome.kind !== 'optimal') throw new Error(outcome.kind);
      return outcome.value;
    };
    fc.assert(
      fc.property(program, fc.nat(2), (terms, row) => {
        const outcome = solveLinearProgram(terms);
        if (outcome.kind !== 'optimal') throw new Error(outcome.kind);
        const step = 0.01;
        const moved = (by: number) =>
          best({ ...terms, limits: terms.limits.map((limit, k) => (k === row ? limit + by : limit)) });
        const [up, down] = [(moved(step) - outcome.value) / step, (outcome.value - moved(-step)) / step];
        // The value is concave in each limit, so that the price lies between what more brings and what less costs.
        expect(outcome.shadowPrices[row]).toBeGreaterThanOrEqual(up - 1e-6);
        expect(outcome.shadowPrices[row]).toBeLessThanOrEqual(down + 1e-6);
      }),
      { seed: 8, numRuns: 150 },
    );
  });

  it('solves programs in seconds and in cents as in hours and in thousands', () => {
    const solved = (unit: number, money: number) =>
      solveLinearProgram({
        gain: [3 * money, 5 * money],
        uses: [
          [unit, 0],
          [0, 2 * unit],
          [3 * unit, 2 * unit],
        ],
        limits: [4 * unit, 12 * unit, 18 * unit],
      });
    for (const [unit, money] of [
      [3600, 1],
      [1, 1e5],
      [1e-3, 1e-4],
    ] as const) {
      const outcome = solved(unit, money);
      if (outcome.kind !== 'optimal') throw new Error(outcome.kind);
      expect(outcome.amounts[0]).toBeCloseTo(2, 9);
      expect(outcome.amounts[1]).toBeCloseTo(6, 9);
      expect((outcome.shadowPrices[1] ?? 0) * (unit / money)).toBeCloseTo(1.5, 9);
    }
  });

  it('refuses sizes that do not fit and limits below nothing', () => {
    expect(() => solveLinearProgram({ gain: [1], uses: [[1, 2]], limits: [1] })).toThrow(RangeError);
    expect(() => solveLinearProgram({ gain: [1], uses: [[1]], limits: [-1] })).toThrow(RangeError);
    expect(() => solveLinearProgram({ gain: [Number.NaN], uses: [[1]], limits: [1] })).toThrow(RangeError);
  });
});
