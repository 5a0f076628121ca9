import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PumpChainTerms, pumpChain } from '../../lib/model/pump-chain.ts';
import { machineRepair } from '../../lib/risk/machine-repair.ts';

const BASE = { pumps: 4, failureRate: 3, repairTime: 0.05, crews: 2, swapTime: null } as const;

const anyTerms = fc.record({
  pumps: fc.integer({ min: 1, max: 6 }),
  failureRate: fc.double({ min: 0.01, max: 20, noNaN: true }),
  repairTime: fc.double({ min: 0.001, max: 1, noNaN: true }),
  crews: fc.integer({ min: 1, max: 7 }),
});

describe('pumpChain without a spare', () => {
  it('is the machine-repair model', () => {
    fc.assert(
      fc.property(anyTerms, (terms) => {
        const chain = pumpChain({ ...terms, swapTime: null });
        const { failed, meanFailed, failureRate } = machineRepair({
          units: terms.pumps,
          timeToFailure: 1 / terms.failureRate,
          timeToRepair: terms.repairTime,
          crews: terms.crews,
        });
        failed.forEach((share, down) => {
          expect(chain.stopped[down]).toBeCloseTo(share, 11);
        });
        expect(chain.meanStopped).toBeCloseTo(meanFailed, 10);
        expect(chain.failureRate / failureRate).toBeCloseTo(1, 10);
      }),
    );
  });
});

describe('pumpChain with a spare', () => {
  it('is a chain of three states for one pump that is swapped in no time', () => {
    // r pumps away: weights 1, λR, (λR)²/2 when both are mended at once, (λR)² when one crew mends them in turn.
    const x = 3 * 0.2;
    for (const [crews, last] of [
      [2, x ** 2 / 2],
      [1, x ** 2],
    ] as const) {
      const { stopped } = pumpChain({ pumps: 1, failureRate: 3, repairTime: 0.2, crews, swapTime: 1e-9 });
      expect(stopped[1]).toBeCloseTo(last / (1 + x + last), 7);
    }
  });

  it('is down for the swap alone when mending takes no time', () => {
    const { stopped } = pumpChain({ pumps: 1, failureRate: 3, repairTime: 1e-9, crews: 2, swapTime: 0.1 });
    expect(stopped[1]).toBeCloseTo(0.3 / 1.3, 7);
  });

  it('stops pumps for a shorter time than none, the shorter the quicker it is put in', () => {
    // Where the crews can keep up; where they cannot, they alone say how many pumps run.
    const sound = anyTerms.map((terms) => ({ ...terms, repairTime: 0.1 / terms.failureRate / terms.pumps }));
    fc.assert(
      fc.property(sound, fc.double({ min: 0.01, max: 0.4, noNaN: true }), (terms, share) => {
        const swapped = (part: number) => pumpChain({ ...terms, swapTime: terms.repairTime * part }).meanStopped;
        expect(swapped(share)).toBeLessThan(pumpChain({ ...terms, swapTime: null }).meanStopped);
        expect(swapped(share)).toBeLessThan(swapped(2 * share));
      }),
    );
  });
});

describe('pumpChain', () => {
  it('has shares that sum to one and a rate that follows from them', () => {
    for (const swapTime of [null, 0.01]) {
      const { stopped, meanStopped, failureRate } = pumpChain({ ...BASE, swapTime });
      expect(stopped.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      expect(failureRate).toBeCloseTo((4 - meanStopped) * 3, 12);
    }
  });

  it('stands for two dozen pumps, and for pumps that never fail', () => {
    expect(pumpChain({ ...BASE, pumps: 24, swapTime: 0.01 }).stopped).toHaveLength(25);
    expect(pumpChain({ ...BASE, failureRate: 0, swapTime: 0.01 }).stopped).toEqual([1, 0, 0, 0, 0]);
  });

  it('refuses counts and times out of range', () => {
    const bad: Partial<PumpChainTerms>[] = [
      { pumps: 0 },
      { crews: 1.5 },
      { failureRate: -1 },
      { repairTime: 0 },
      { swapTime: 0 },
    ];
    for (const part of bad) expect(() => pumpChain({ ...BASE, ...part })).toThrow(RangeError);
  });
});
