import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioEquipment } from './scenario-equipment.ts';

/** What a scenario asks of the electric supply. */
export interface SupplyNeed {
  /** Current that flows for hours on end when everything runs [A]. */
  readonly continuous: number;
  /** Rating that calls for: continuous current with its allowance, and what runs only for minutes as it is [A]. */
  readonly rating: number;
  /** Circuits: one for each chamber, pump at work and freezer. */
  readonly circuits: number;
}

/** Pumps at work all day, by id; a spare on the shelf and a roughing pump are not. */
function runningPumps(scenario: Scenario): readonly (readonly [string, number])[] {
  return [[scenario.pump, scenarioEquipment(scenario).pumpCount]];
}

function pumpPower(plan: Plan, id: string): number {
  return baseValues('pump', findById(plan.pumps, id, 'pump')).power;
}

function chamberCurrent(plan: Plan, scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => {
    const { ratedCurrent } = baseValues('chamber', findById(plan.chambers, entry.chamber, 'chamber type'));
    return sum + entry.count * ratedCurrent;
  }, 0);
}

/**
 * Current and circuits a scenario needs. Chambers count with their name plates, motors with watts ÷ (volts × power factor). Each
 * ampere that flows for three hours or more takes up 1.25 A of rating by default; the factor is an input.
 * Source: nec-210-20.
 */
export function supplyNeed(plan: Plan, scenario: Scenario): SupplyNeed {
  const { supplyVoltage, powerFactor, continuousFactor } = baseValues('site', plan.site);
  const current = (power: number) => power / (supplyVoltage * powerFactor);
  const pumping = runningPumps(scenario).reduce((sum, [id, count]) => sum + count * pumpPower(plan, id), 0);
  const freezers = plan.freezer ? scenario.freezers : 0;
  const freezing = plan.freezer ? freezers * baseValues('freezer', plan.freezer).power : 0;
  const continuous = chamberCurrent(plan, scenario) + current(pumping + freezing);
  const roughing = scenario.startPractice === 'roughing' ? scenario.roughingPump : null;
  const brief = roughing === null ? 0 : current(pumpPower(plan, roughing));
  const { chamberCount, pumpCount } = scenarioEquipment(scenario);
  return {
    continuous,
    rating: continuous * continuousFactor + brief,
    circuits: chamberCount + pumpCount + freezers + (roughing === null ? 0 : 1),
  };
}
