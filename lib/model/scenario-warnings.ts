import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { WEEK } from '../plant/crew.ts';
import type { PlantReport } from '../plant/report-types.ts';
import type { Finding } from '../result.ts';
import { scenarioEquipment } from './scenario-equipment.ts';

/** Traps fuller than this at the end of a batch deserve a look. */
const FULL_TRAP = 0.9;

function warning(field: string, value: string, problem: string, remedy: string): Finding {
  return { severity: 'warning', field, value, problem, remedy };
}

/** Current that can flow for hours on end when everything runs [A]. */
export function continuousCurrent(plan: Plan, scenario: Scenario): number {
  const { supplyVoltage } = baseValues('site', plan.site);
  const { pumps } = scenarioEquipment(scenario);
  const chambers = scenario.chambers.reduce((sum, entry) => {
    const { ratedCurrent } = baseValues('chamber', findById(plan.chambers, entry.chamber, 'chamber type'));
    return sum + entry.count * ratedCurrent;
  }, 0);
  const pumping = [...pumps].reduce(
    (sum, [id, count]) => sum + count * baseValues('pump', findById(plan.pumps, id, 'pump')).power,
    0,
  );
  const freezing = plan.freezer ? baseValues('freezer', plan.freezer).power : 0;
  return chambers + (pumping + freezing) / supplyVoltage;
}

/** Currents closer than this share are the same: rounding, not load. */
const ROUNDING = 1e-9;

/** Two currents in amperes, with as many decimals as it takes to tell them apart. */
function apart(a: number, b: number): readonly [string, string] {
  const decimals = [0, 1, 2].find((digits) => a.toFixed(digits) !== b.toFixed(digits)) ?? 3;
  return [`${a.toFixed(decimals)} A`, `${b.toFixed(decimals)} A`];
}

/**
 * Continuous load against the supply: each ampere that flows for three hours or more takes up 1.25 A of rating by default.
 * Source: nec-210-20; the factor is an input. A warning only: it is for a licensed electrician to judge.
 */
function electricalWarning(plan: Plan, scenario: Scenario): Finding[] {
  const { continuousFactor, supplyCurrent } = baseValues('site', plan.site);
  const needed = continuousCurrent(plan, scenario) * continuousFactor;
  if (needed <= supplyCurrent * (1 + ROUNDING)) return [];
  const [load, rating] = apart(needed, supplyCurrent);
  return [
    warning(
      'site.supplyCurrent',
      `${supplyCurrent.toFixed(0)} A`,
      `With everything running, ${load} of supply are needed (continuous load × ${(continuousFactor * 100).toFixed(0)} %), and there are ${rating}.`,
      'Have a licensed electrician look at the supply before buying; the local code decides.',
    ),
  ];
}

function vapourWarning(plant: PlantReport): Finding[] {
  const worst = plant.groups.find((group) => group.vapourTolerance > 0 && group.vapourLoadMean > group.vapourTolerance);
  if (!worst) return [];
  return [
    warning(
      'pumps.vapourTolerance',
      `${(worst.vapourTolerance * 3600).toPrecision(2)} kg/h`,
      `The pump swallows ${(worst.vapourLoadMean * 3600).toPrecision(2)} kg of water an hour, more than it passes with gas ballast open.`,
      'Water will gather in the oil: change it more often, colder traps, or a pump that tolerates more vapour.',
    ),
  ];
}

function trapWarning(plant: PlantReport): Finding[] {
  if (plant.trapFill <= FULL_TRAP) return [];
  return [
    warning(
      'chambers.trapCapacity',
      `${(plant.trapFill * 100).toFixed(0)} %`,
      `The fullest trap ends its batch ${(plant.trapFill * 100).toFixed(0)} % full of ice.`,
      'Load a little less, or check the capacity of the trap.',
    ),
  ];
}

/** Chamber hours a week spent waiting for the freezer above which it deserves a word, as a share of all chamber hours. */
const FREEZER_WAIT = 0.05;

function freezerWarning(plant: PlantReport): Finding[] {
  const waiting = plant.phases.waitingForFreezer;
  if (waiting <= FREEZER_WAIT * plant.chambers * WEEK) return [];
  const hours = `${(waiting / 3600).toFixed(0)} h`;
  return [
    warning(
      'freezer.capacity',
      hours,
      `The chambers wait ${hours} a week for loads to freeze.`,
      'A larger or colder freezer, food bought frozen, or starts that are not all at once would help.',
    ),
  ];
}

/** Things to look at that do not stop the computation. */
export function scenarioWarnings(plan: Plan, scenario: Scenario, plant: PlantReport): Finding[] {
  return [
    ...electricalWarning(plan, scenario),
    ...vapourWarning(plant),
    ...trapWarning(plant),
    ...freezerWarning(plant),
  ];
}
