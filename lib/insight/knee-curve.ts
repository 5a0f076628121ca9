import type { Simulate } from '../model/scenario-week.ts';
import type { Plan } from '../plan/plan-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import type { KneeCurve, KneePoint } from './insight-types.ts';
import { KNEE_THRESHOLD } from './knee-threshold.ts';
import { machineWeek } from './machine-output.ts';
import { scenarioOf, withChambers } from './shop-variant.ts';

function addedShare(shared: number | null, sharedBefore: number | null, own: number | null): number | null {
  if (shared === null || sharedBefore === null || own === null || own <= 0) return null;
  return (shared - sharedBefore) / own;
}

/**
 * Output as chambers are added one by one, on one shared pump and with a pump each of the same type [dry kg/week], people and
 * market left out of it. Chambers with pumps of their own do not feel each other, so theirs is the lone chamber's times their
 * number. The knee is the first number at which one chamber more adds less than the threshold of what its own pump would give.
 * @param mostChambers how far to go, ≥ 1
 * @param simulate how a week is run, for callers that keep weeks to use again
 */
export function kneeCurve(
  plan: Plan,
  scenarioId: string,
  mostChambers: number,
  simulate: Simulate = simulateShop,
): KneeCurve {
  const scenario = scenarioOf(plan, scenarioId);
  const alone = machineWeek(plan, withChambers(scenario, 1, 'own'), simulate);
  const lone = alone?.dryOut ?? null;
  const points: KneePoint[] = [];
  let before: number | null = 0;
  for (let chambers = 1; chambers <= mostChambers; chambers += 1) {
    const week = chambers === 1 ? alone : machineWeek(plan, withChambers(scenario, chambers, 'shared'), simulate);
    const shared: number | null = week?.dryOut ?? null;
    const added = chambers === 1 ? null : addedShare(shared, before, lone);
    points.push({ chambers, shared, own: lone === null ? null : lone * chambers, added, binds: week?.binds ?? null });
    before = shared;
  }
  const knee = points.find(
    (point) => point.chambers > 1 && (point.shared === null || (point.added ?? 1) < KNEE_THRESHOLD),
  );
  return { points, knee: knee?.chambers ?? null, threshold: KNEE_THRESHOLD };
}
