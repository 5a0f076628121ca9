import { baseValues } from '../inputs/base-values.ts';
import { plainNumber } from '../inputs/plain-number.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { WEEK } from '../plant/crew.ts';
import type { PlantReport } from '../plant/report-types.ts';
import type { Finding } from '../result.ts';
import { electricalWarnings } from './electrical-warnings.ts';
import { floorNeed } from './floor-need.ts';
import type { ScenarioFinance } from './scenario-result.ts';

/** Traps fuller than this at the end of a batch deserve a look. */
const FULL_TRAP = 0.9;

function warning(field: string, value: string, problem: string, remedy: string): Finding {
  return { severity: 'warning', field, value, problem, remedy };
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

/** Machines that do not fit on the floor there is. */
function floorWarning(plan: Plan, scenario: Scenario): Finding[] {
  const { floorSpace } = baseValues('site', plan.site);
  const needed = floorNeed(plan, scenario);
  if (floorSpace === null || needed <= floorSpace * (1 + 1e-9)) return [];
  return [
    warning(
      'site.floorSpace',
      `${plainNumber(floorSpace)} m²`,
      `The machines take up ${needed.toFixed(1)} m² of floor; there is room for ${plainNumber(floorSpace)} m².`,
      'Fewer or smaller machines, pumps under the chambers, or more room.',
    ),
  ];
}

function coverWarning({ lowestCover, line, meetsLine }: ScenarioFinance): Finding[] {
  if (meetsLine !== false || lowestCover === null) return [];
  const rounded = lowestCover.toFixed(2);
  // Just below the line it is rounded down, so that it never reads as if it reached it.
  const shown = rounded === line.toFixed(2) ? (Math.floor(100 * lowestCover) / 100).toFixed(2) : rounded;
  return [
    warning(
      'financing.dscrLine',
      line.toFixed(2),
      `In its worst twelve months the shop earns ${shown} times its loan payments; the lender's line is ${line.toFixed(2)}.`,
      'Borrow less or for longer, buy later or less at once, or ask the lender for months of interest only.',
    ),
  ];
}

function cashWarning(plan: Plan, { lowestCash, statements }: ScenarioFinance): Finding[] {
  if (lowestCash >= 0) return [];
  const month = statements.balance.cash.findIndex((held) => held < 0);
  const missing = `${Math.ceil(0 - lowestCash)} ${plan.site.currency}`;
  return [
    warning(
      'financing.openingCash',
      `month ${month}`,
      `Money in the bank runs out in month ${month}; at the worst ${missing} are missing.`,
      'Put in more of your own money, borrow for it, or buy later.',
    ),
  ];
}

/** Things to look at that do not stop the computation. */
export function scenarioWarnings(
  plan: Plan,
  scenario: Scenario,
  plant: PlantReport,
  finance: ScenarioFinance,
): Finding[] {
  return [
    ...electricalWarnings(plan, scenario),
    ...floorWarning(plan, scenario),
    ...vapourWarning(plant),
    ...trapWarning(plant),
    ...freezerWarning(plant),
    ...coverWarning(finance),
    ...cashWarning(plan, finance),
  ];
}
