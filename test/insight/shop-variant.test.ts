import { describe, expect, it } from 'vitest';
import { chamberCount, scenarioOf, withChambers } from '../../lib/insight/shop-variant.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';

const MIXED = {
  ...scenarioOf(DEMO_PLAN, 'six-shared'),
  chambers: [
    { chamber: 'mid', count: 2 },
    { chamber: 'large', count: 1 },
  ],
};

describe('withChambers', () => {
  it.each([
    [1, [['mid', 1]]],
    [2, [['mid', 2]]],
    [
      3,
      [
        ['mid', 2],
        ['large', 1],
      ],
    ],
    [
      5,
      [
        ['mid', 2],
        ['large', 3],
      ],
    ],
  ] as const)('%d chambers: the mix as far as it goes, then more of the last type', (count, expected) => {
    const variant = withChambers(MIXED, count, 'own');
    expect(variant.chambers.map(({ chamber, count: some }) => [chamber, some])).toEqual(expected);
    expect(chamberCount(variant)).toBe(count);
    expect(variant.pumpArrangement).toBe('own');
  });

  it('throws where there is no chamber type to add', () => {
    expect(() => withChambers({ ...MIXED, chambers: [] }, 2, 'own')).toThrow(RangeError);
  });
});

describe('scenarioOf', () => {
  it('throws on a scenario that is not there', () => {
    expect(() => scenarioOf(DEMO_PLAN, 'gone')).toThrow(RangeError);
  });
});
