import type { Plan } from './plan-types.ts';
import { valueAt } from './raw-value.ts';

/**
 * A field of a plan, named so that it stays the same field when others come and go: like a path, but entries that have an
 * id are named by it, as in `products.@berries.load`.
 */
export type Place = string;

function stepInto(node: unknown, segment: string): string | null {
  if (typeof node !== 'object' || node === null) return null;
  if (!segment.startsWith('@')) return Object.hasOwn(node, segment) ? segment : null;
  if (!Array.isArray(node)) return null;
  const position = node.findIndex((item: { readonly id?: unknown }) => item.id === segment.slice(1));
  return position < 0 ? null : String(position);
}

/** The path of a place in this plan, such as `products.2.load`; null when the plan has no such field. */
export function pathOfPlace(plan: Plan, place: Place): string | null {
  const path: string[] = [];
  let node: unknown = plan;
  for (const segment of place.split('.')) {
    const key = stepInto(node, segment);
    if (key === null) return null;
    path.push(key);
    node = valueAt(node, [key]);
  }
  return path.join('.');
}

/** The value at a place; undefined when the plan has no such field. */
export function valueAtPlace(plan: Plan, place: Place): unknown {
  const path = pathOfPlace(plan, place);
  return path === null ? undefined : valueAt(plan, path.split('.'));
}
