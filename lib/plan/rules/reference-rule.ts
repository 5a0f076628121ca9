import type { Finding } from '../../result.ts';
import { CATALOGUE_NOUN, CATALOGUES, catalogueOf, mentions } from '../mentions.ts';
import type { Plan } from '../plan-types.ts';
import { planError } from './plan-error.ts';

/** Whatever scenarios and batch log mention is in the catalogues. */
export function referenceRule(plan: Plan): readonly Finding[] {
  const known = new Map(CATALOGUES.map((name) => [name, new Set(catalogueOf(plan, name).map((item) => item.id))]));
  return mentions(plan)
    .filter(({ id, catalogue }) => !known.get(catalogue)?.has(id))
    .map(({ field, id, catalogue }) => {
      const noun = CATALOGUE_NOUN[catalogue];
      const problem = `There is no ${noun} with the id "${id}".`;
      return planError(field, id, problem, `Choose a ${noun} that is in the plan, or add this one.`);
    });
}
