import type { InputField } from '../inputs/input-field.ts';
import { fieldsOf, keyOf, type Section } from '../inputs/register.ts';

/** Where the rows of each section live in a plan; # stands for a position in a list. */
const SECTION_AT: Readonly<Record<string, readonly Section[]>> = {
  site: ['site'],
  'site.priceBands.#': ['priceBand'],
  crew: ['crew'],
  'crew.patterns.#.shifts.#': ['shift'],
  freezer: ['freezer'],
  financing: ['financing'],
  'financing.loans.#': ['loan'],
  'products.#': ['product'],
  'chambers.#': ['chamber'],
  'pumps.#': ['pump'],
  'pumps.#.speedTable.#': ['speedPoint'],
  'hoses.#': ['hose'],
  'scenarios.#': ['scenario'],
  'scenarios.#.chambers.#': ['scenarioChamber'],
  'scenarios.#.mix.#': ['mixShare'],
  'batchLog.#': ['loggedBatch', 'pressureRise'],
};

/** The register's row for a path in a plan, such as `products.2.load`; undefined when no row stands there. */
export function fieldAtPath(path: string): InputField | undefined {
  const segments = path.split('.');
  const key = segments.pop();
  const parent = segments.map((segment) => (/^\d+$/.test(segment) ? '#' : segment)).join('.');
  if (!Object.hasOwn(SECTION_AT, parent)) return undefined;
  return SECTION_AT[parent]?.flatMap(fieldsOf).find((field) => keyOf(field) === key);
}

/** A list inside a part of the plan, such as the speed curve of a pump. */
export interface SubList {
  /** Key under which the part keeps the list. */
  readonly key: string;
  /** Where its entries live, positions as #: `pumps.#.speedTable.#`. */
  readonly at: string;
  readonly section: Section;
}

/** The lists that stand directly in a part of the plan, such as `pumps.#`. */
export function subListsAt(parent: string): readonly SubList[] {
  return Object.entries(SECTION_AT).flatMap(([at, [section, ...others]]) => {
    const [key, position, ...deeper] = at.startsWith(`${parent}.`) ? at.slice(parent.length + 1).split('.') : [];
    const isList = position === '#' && deeper.length === 0 && others.length === 0;
    return isList && key && section ? [{ key, at, section }] : [];
  });
}
