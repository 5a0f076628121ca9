import type { Plan } from '../plan/plan-types.ts';
import { valueAt } from '../plan/raw-value.ts';

/** Path of an uncertain input in a plan from its key, in which ids stand for positions; null when the plan has it no more. */
export function findPath(plan: Plan, key: string): string | null {
  const path: string[] = [];
  for (const segment of key.split('.')) {
    const node = valueAt(plan, path);
    const place = Array.isArray(node)
      ? node.findIndex((item: { readonly id?: unknown }, k) => (item.id ?? String(k)) === segment)
      : -1;
    const step = Array.isArray(node) ? (place < 0 ? null : String(place)) : segment;
    if (step === null || valueAt(plan, [...path, step]) === undefined) return null;
    path.push(step);
  }
  return path.join('.');
}
