import { describe, expect, it } from 'vitest';
import { cashCrossings } from '../../lib/views/crossings.ts';

describe('cashCrossings', () => {
  it('finds every passage through zero after cash first went below it', () => {
    expect(cashCrossings([0, -100, -50, 50, -50, 10])).toEqual([
      { month: 2.5, direction: 'above' },
      { month: 3.5, direction: 'below' },
      { month: 4 + 50 / 60, direction: 'above' },
    ]);
  });

  it('finds none where it never went below, or never came back', () => {
    expect(cashCrossings([0, 10, 20])).toEqual([]);
    expect(cashCrossings([-10, -20, -5])).toEqual([]);
    expect(cashCrossings([])).toEqual([]);
  });

  it('passes zero at once where something is bought, and evenly before it', () => {
    // From −40 the month brings 60, then 50 are spent: above after 2/3 of the month, below at its end.
    expect(cashCrossings([-100, -40, -30, 5, -5], [-100, 0, -50, 0, -20])).toEqual([
      { month: 1 + 40 / 60, direction: 'above' },
      { month: 2, direction: 'below' },
      { month: 2 + 30 / 35, direction: 'above' },
      { month: 4, direction: 'below' },
    ]);
  });
});
