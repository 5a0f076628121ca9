import type { Plan } from '../../plan/plan-types.ts';

type List = 'products' | 'chambers' | 'pumps' | 'hoses' | 'scenarios';

/** Path of the entry with this id in a list of the plan. Throws RangeError when there is none. */
export function pathOf(plan: Plan, list: List, id: string): string {
  const place = plan[list].findIndex((entry) => entry.id === id);
  if (place < 0) throw new RangeError(`no ${id} among the ${list}`);
  return `${list}.${place}`;
}

/** Path of a loan of the plan. */
export function loanPath(plan: Plan, id: string): string {
  const place = plan.financing.loans.findIndex((loan) => loan.id === id);
  if (place < 0) throw new RangeError(`no loan ${id}`);
  return `financing.loans.${place}`;
}

export function nameOf(plan: Plan, list: List, id: string): string {
  return plan[list].find((entry) => entry.id === id)?.name ?? id;
}
