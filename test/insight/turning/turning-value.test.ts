import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { turningValue } from '../../../lib/insight/turning/turning-value.ts';

const FACTORS = [0, 0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3];

function turning(above: (factor: number) => number | null) {
  return turningValue(
    FACTORS.map((factor) => ({ factor, above: above(factor) })),
    above,
    1e-9,
  );
}

describe('where a figure passes its line', () => {
  it('is found wherever a straight line has its root', () => {
    const root = fc.double({ min: 0.01, max: 2.99, noNaN: true }).filter((x) => Math.abs(x - 1) > 1e-6);
    fc.assert(
      fc.property(root, fc.boolean(), (at, rises) => {
        const found = turning((factor) => (rises ? factor - at : at - factor));
        const isBelow = rises ? at > 1 : at < 1;
        expect(found.kind).toBe(isBelow ? 'alreadyBelow' : 'turns');
        expect('factor' in found && found.factor).toBeCloseTo(at, 7);
      }),
    );
  });

  it('is the passing nearest to today where there are several, and the others are told', () => {
    // Above the line between 0.6 and 1.4 and again beyond 2.2.
    const found = turning((factor) => (factor - 0.6) * (factor - 1.4) * (factor - 2.2));
    expect(found).toMatchObject({ kind: 'turns', again: [0.625, 2.25] });
    expect('factor' in found && found.factor).toBeCloseTo(1.4, 7);
  });

  it('is never where the figure stays on its side', () => {
    expect(turning(() => 1)).toEqual({ kind: 'never' });
    expect(turning((factor) => (factor - 5) ** 2)).toEqual({ kind: 'never' });
  });

  it('is nowhere for what is below all along', () => {
    expect(turning(() => -1)).toEqual({ kind: 'alreadyBelow', factor: null, again: [] });
  });

  it('does not exist where today has no figure', () => {
    expect(turning(() => null)).toEqual({ kind: 'none' });
  });

  it('is looked for only where the shop can run', () => {
    // The line would be passed at 0.1, but below 0.4 nothing runs.
    expect(turning((factor) => (factor < 0.4 ? null : factor - 0.1))).toEqual({ kind: 'never' });
  });

  it('ends at a gap that opens between two factors that can run', () => {
    const found = turning((factor) => (factor > 1.6 && factor < 1.9 ? null : 1.7 - factor));
    expect(found.kind).toBe('turns');
    expect('factor' in found && found.factor).toBeGreaterThan(1.5);
    expect('factor' in found && found.factor).toBeLessThan(2);
  });

  it('is found at a jump too', () => {
    const found = turning((factor) => (factor < 1.8 ? 1 : -1));
    expect('factor' in found && found.factor).toBeCloseTo(1.8, 6);
  });
});
