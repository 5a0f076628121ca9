import { pow } from '../numeric/portable-math.ts';
import { machineRepair, type RepairTerms } from './machine-repair.ts';

/**
 * Chance that at least k of n like, independent units work [–]: Σ_{i=k..n} C(n,i)·Rⁱ·(1−R)^(n−i).
 * Also the share of time at least k are up when each is repaired at once on its own; where crews are shared it says too
 * much, see `kOfNAvailability`.
 * Source: mil-hdbk-338b.
 * Throws RangeError when k is not a whole number of 0 to n or R is outside 0–1.
 * @param reliability chance that one works, R [–]
 */
export function kOfNReliability(k: number, n: number, reliability: number): number {
  requireCounts(k, n);
  if (!(reliability >= 0 && reliability <= 1)) throw new RangeError(`reliability ${reliability}, expected 0 to 1`);
  let chance = 0;
  let choose = 1;
  for (let working = 0; working <= n; working += 1) {
    if (working >= k) chance += choose * pow(reliability, working) * pow(1 - reliability, n - working);
    choose = (choose * (n - working)) / (working + 1);
  }
  return Math.min(1, chance);
}

/**
 * Mean time until fewer than k of n like units work, without repair [unit of time given]: MTBF·Σ_{i=k..n} 1/i.
 * Source: mil-hdbk-338b.
 * Throws RangeError when k is not a whole number of 1 to n or the time is not above 0.
 * @param timeToFailure mean time to failure of one
 */
export function kOfNTimeToFailure(k: number, n: number, timeToFailure: number): number {
  requireCounts(k, n);
  if (k < 1 || !(timeToFailure > 0)) throw new RangeError(`${k} of ${n} units with ${timeToFailure} to failure`);
  let sum = 0;
  for (let working = k; working <= n; working += 1) sum += 1 / working;
  return timeToFailure * sum;
}

/**
 * Share of time that at least k units are up [–], failed ones waiting for a repair crew when there are fewer crews than
 * failures. Units go on failing while the system is down.
 * Source: derived, a birth–death chain; see `machineRepair`.
 * Throws RangeError as `machineRepair` does, and when k is not a whole number of 0 to n.
 */
export function kOfNAvailability(k: number, terms: RepairTerms): number {
  requireCounts(k, terms.units);
  const { failed } = machineRepair(terms);
  return failed.slice(0, terms.units - k + 1).reduce((sum, share) => sum + share, 0);
}

function requireCounts(k: number, n: number): void {
  if (!Number.isInteger(k) || !Number.isInteger(n) || k < 0 || n < 1 || k > n) {
    throw new RangeError(`${k} of ${n} units: expected whole numbers, 0 to the number of units`);
  }
}
