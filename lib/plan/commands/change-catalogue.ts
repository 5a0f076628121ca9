import { fail, succeed } from '../../result.ts';
import { CATALOGUE_NOUN, type CatalogueName, catalogueOf, mentions } from '../mentions.ts';
import type { Plan } from '../plan-types.ts';
import { planError } from '../rules/plan-error.ts';
import type { PlanChange } from './plan-change.ts';

function pathOf(list: CatalogueName): string {
  return list === 'patterns' ? 'crew.patterns' : list;
}

function withCatalogue(plan: Plan, list: CatalogueName, items: readonly object[]): PlanChange {
  const changed =
    list === 'patterns' ? { ...plan, crew: { ...plan.crew, patterns: items } } : { ...plan, [list]: items };
  return succeed(changed as Plan);
}

function unknownItem(list: CatalogueName, id: string): PlanChange {
  const noun = CATALOGUE_NOUN[list];
  return fail([planError(pathOf(list), id, `There is no ${noun} "${id}".`, `Choose a ${noun} that is in the plan.`)]);
}

/** The plan with a copy of a catalogue entry under a new id and name, at the end. */
export function addItem(plan: Plan, list: CatalogueName, from: string, id: string, name: string): PlanChange {
  const items = catalogueOf(plan, list);
  const original = items.find((item) => item.id === from);
  if (!original) return unknownItem(list, from);
  return withCatalogue(plan, list, [...items, { ...original, id, name }]);
}

/** The plan without a catalogue entry, which must not be in use. */
export function removeItem(plan: Plan, list: CatalogueName, id: string): PlanChange {
  const items = catalogueOf(plan, list);
  const position = items.findIndex((item) => item.id === id);
  if (position < 0) return unknownItem(list, id);
  const users = mentions(plan).filter((mention) => mention.catalogue === list && mention.id === id);
  if (users.length > 0) {
    const where = [...new Set(users.map((mention) => mention.where))].join(', ');
    const problem = `This ${CATALOGUE_NOUN[list]} is in use: ${where}.`;
    return fail([planError(`${pathOf(list)}.${position}`, id, problem, 'Choose another one there first.')]);
  }
  return withCatalogue(plan, list, items.toSpliced(position, 1));
}
