import type { Finding } from '../../result.ts';
import type { Plan } from '../plan-types.ts';
import { planError } from './plan-error.ts';

interface Named {
  readonly id: string;
}

function repeated(path: string, items: readonly Named[]): readonly Finding[] {
  const seen = new Set<string>();
  return items.flatMap((item, position) => {
    if (!seen.has(item.id)) {
      seen.add(item.id);
      return [];
    }
    const problem = `Two entries have the id "${item.id}".`;
    return [planError(`${path}.${position}.id`, item.id, problem, 'Give one of them another id.')];
  });
}

/** Within each list every id stands for one thing only. */
export function idRule(plan: Plan): readonly Finding[] {
  return [
    ...repeated('products', plan.products),
    ...repeated('chambers', plan.chambers),
    ...repeated('pumps', plan.pumps),
    ...repeated('hoses', plan.hoses),
    ...repeated('scenarios', plan.scenarios),
    ...repeated('crew.patterns', plan.crew.patterns),
    ...repeated('site.priceBands', plan.site.priceBands),
    ...repeated('financing.loans', plan.financing.loans),
    ...repeated('batchLog', plan.batchLog),
  ];
}
