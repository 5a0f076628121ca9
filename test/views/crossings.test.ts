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
});
