import { baseValues } from '../inputs/base-values.ts';
import { plainNumber } from '../inputs/plain-number.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { Finding } from '../result.ts';
import { supplyNeed } from './supply-need.ts';

/** Currents closer than this share are the same: rounding, not load. */
const ROUNDING = 1e-9;

const REMEDY = 'Have a licensed electrician look at it before you buy; the local code decides, not this sum.';

function warning(field: string, value: string, problem: string): Finding {
  return { severity: 'warning', field, value, problem, remedy: REMEDY };
}

/** A current that has to be carried, in whole amperes, rounded up as ratings are chosen. */
function atLeast(current: number): string {
  return `${Math.ceil(current * (1 - ROUNDING))} A`;
}

function amperes(current: number): string {
  return `${plainNumber(current)} A`;
}

function exceeds(current: number, rating: number): boolean {
  return current > rating * (1 + ROUNDING);
}

function supplyWarning(plan: Plan, scenario: Scenario): Finding[] {
  const { supplyCurrent, continuousFactor } = baseValues('site', plan.site);
  const { continuous, rating } = supplyNeed(plan, scenario);
  if (!exceeds(rating, supplyCurrent)) return [];
  const factor = `${Math.round(100 * continuousFactor)} %`;
  return [
    warning(
      'site.supplyCurrent',
      amperes(supplyCurrent),
      `All machines together draw about ${Math.round(continuous)} A for hours on end. At ${factor} for continuous load that calls for a supply of ${atLeast(rating)}; yours is rated ${amperes(supplyCurrent)}.`,
    ),
  ];
}

function circuitWarnings(plan: Plan, scenario: Scenario): Finding[] {
  const { continuousFactor } = baseValues('site', plan.site);
  return plan.chambers.flatMap((type, place) => {
    const { ratedCurrent, circuitRating } = baseValues('chamber', type);
    const isUsed = scenario.chambers.some((entry) => entry.chamber === type.id && entry.count > 0);
    const needed = ratedCurrent * continuousFactor;
    if (!isUsed || circuitRating === null || !exceeds(needed, circuitRating)) return [];
    const words = `"${type.name}" draws ${amperes(ratedCurrent)} for hours on end, which calls for a circuit of ${atLeast(needed)}; its breaker is rated ${amperes(circuitRating)}.`;
    return [warning(`chambers.${place}.circuitRating`, amperes(circuitRating), words)];
  });
}

function panelWarning(plan: Plan, scenario: Scenario): Finding[] {
  const { panelCircuits } = baseValues('site', plan.site);
  const { circuits } = supplyNeed(plan, scenario);
  if (panelCircuits === null || circuits <= panelCircuits) return [];
  const words = `With one circuit for each chamber, pump and freezer ${circuits} are needed; the panel has ${panelCircuits} for machines.`;
  return [warning('site.panelCircuits', String(panelCircuits), words)];
}

/** Supply, circuits and panel against what the machines draw. Warnings only: a licensed electrician and the local code decide. */
export function electricalWarnings(plan: Plan, scenario: Scenario): Finding[] {
  return [...supplyWarning(plan, scenario), ...circuitWarnings(plan, scenario), ...panelWarning(plan, scenario)];
}
