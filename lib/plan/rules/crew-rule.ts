import { inBase } from '../../inputs/quantity.ts';
import type { Finding } from '../../result.ts';
import type { Plan } from '../plan-types.ts';
import { planError } from './plan-error.ts';

/** The owner is at the chambers for no more hours than the owner works. */
export function crewRule(plan: Plan): readonly Finding[] {
  const { ownerHours, ownerAtChambers } = plan.crew;
  if (inBase(ownerAtChambers, 'timePerWeek') <= inBase(ownerHours, 'timePerWeek')) return [];
  const problem = 'The owner is at the chambers for more hours than the owner works.';
  const remedy = 'Lower the hours at the chambers, or raise the owner hours.';
  return [planError('crew.ownerAtChambers', `${ownerAtChambers.value} ${ownerAtChambers.unit}`, problem, remedy)];
}
