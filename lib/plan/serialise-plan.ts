import type { Plan } from './plan-types.ts';

/** Keys that come first wherever they occur, in this order; all others follow in alphabetical order. */
const LEADING = ['format', 'version', 'kind', 'id', 'name', 'value', 'unit', 'origin', 'low', 'high'];

function byKey(left: string, right: string): number {
  const [a, b] = [rank(left), rank(right)];
  if (a !== b) return a - b;
  return left < right ? -1 : 1;
}

function rank(key: string): number {
  const place = LEADING.indexOf(key);
  return place < 0 ? LEADING.length : place;
}

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([left], [right]) => byKey(left, right));
  return Object.fromEntries(entries.map(([key, child]) => [key, ordered(child)]));
}

/** The text of a plan's file. Equal plans give equal text whatever the order of their keys, and `parsePlan` reads it back. */
export function serialisePlan(plan: Plan): string {
  return `${JSON.stringify(ordered(plan), null, 2)}\n`;
}
