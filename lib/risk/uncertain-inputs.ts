import type { Quantity } from '../inputs/quantity.ts';
import { fieldAtPath } from '../plan/field-at-path.ts';
import { mentions } from '../plan/mentions.ts';
import type { Plan } from '../plan/plan-types.ts';
import { isRawObject } from '../plan/raw-value.ts';
import type { ThreePoint } from './three-point.ts';

/** A quantity of the plan that is given with a low or a high value. */
export interface UncertainInput {
  /** Where it stands in this plan, such as `products.2.price`. */
  readonly path: string;
  /** The same with ids for positions, `products.bean-soup.price`: it stays when lists are put in another order. */
  readonly key: string;
  /** Row of the register, `product.price`. */
  readonly fieldId: string;
  /** Of low, likely and high. */
  readonly unit: string;
  readonly points: ThreePoint;
}

/** Parts of the plan from which figures are computed. The batch log is a record and has no say. */
const PARTS = ['site', 'crew', 'freezer', 'financing', 'products', 'chambers', 'pumps', 'hoses', 'scenarios'] as const;

const CATALOGUES: ReadonlySet<string> = new Set(['products', 'chambers', 'pumps', 'hoses']);

/**
 * Every uncertain input of a plan: quantities with a low below or a high above the likely value; the end that is not given
 * is the likely value. Things in the catalogue that no scenario uses are left out. In order of key, so that the same
 * inputs come in the same order however scenarios and catalogue are ordered.
 */
export function uncertainInputs(plan: Plan): readonly UncertainInput[] {
  const used = usedIds(plan);
  return PARTS.flatMap((part) => quantitiesIn(plan[part], part, part))
    .filter(({ key }) => isUsed(key, used))
    .flatMap(uncertain)
    .sort((a, b) => (a.key < b.key ? -1 : 1));
}

interface Found {
  readonly path: string;
  readonly key: string;
  readonly quantity: Quantity;
}

function quantitiesIn(node: unknown, path: string, key: string): Found[] {
  if (Array.isArray(node)) {
    return node.flatMap((item, k) => quantitiesIn(item, `${path}.${k}`, `${key}.${idOf(item) ?? k}`));
  }
  if (!isRawObject(node)) return [];
  if (isQuantity(node)) return [{ path, key, quantity: node }];
  return Object.entries(node).flatMap(([name, child]) => quantitiesIn(child, `${path}.${name}`, `${key}.${name}`));
}

function isQuantity(node: object): node is Quantity {
  return 'value' in node && 'unit' in node && 'origin' in node;
}

function idOf(item: unknown): string | undefined {
  return isRawObject(item) && typeof item.id === 'string' ? item.id : undefined;
}

function uncertain({ path, key, quantity }: Found): UncertainInput[] {
  const { value, unit, low = value, high = value } = quantity;
  const field = fieldAtPath(path);
  if (!field || !(low < high)) return [];
  return [{ path, key, fieldId: field.id, unit, points: { low, likely: value, high } }];
}

function usedIds(plan: Plan): ReadonlySet<string> {
  const inScenarios = mentions(plan).filter(({ field }) => field.startsWith('scenarios.'));
  return new Set(inScenarios.map(({ catalogue, id }) => `${catalogue}.${id}`));
}

function isUsed(key: string, used: ReadonlySet<string>): boolean {
  const [part = '', id = ''] = key.split('.');
  return !CATALOGUES.has(part) || used.has(`${part}.${id}`);
}
