import { type Finding, fail, type Result, succeed } from '../../result.ts';
import { shownValue } from '../raw-value.ts';
import { planError } from '../rules/plan-error.ts';

function setIn(node: unknown, keys: readonly string[], value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  const child = setIn((node as Record<string, unknown>)[key], rest, value);
  if (Array.isArray(node)) return node.with(Number(key), child);
  return { ...(node as object), [key]: child };
}

function leadsSomewhere(root: unknown, keys: readonly string[]): boolean {
  let node = root;
  for (const key of keys) {
    if (typeof node !== 'object' || node === null || !Object.hasOwn(node, key)) return false;
    if (Array.isArray(node) && !/^\d+$/.test(key)) return false;
    node = (node as Record<string, unknown>)[key];
  }
  return keys.length > 0;
}

/** A copy of `root` with the value at an existing path replaced; all that is not on the path is shared with `root`. */
export function setAtPath<Root>(root: Root, path: string, value: unknown): Result<Root, readonly Finding[]> {
  const keys = path.split('.');
  if (!leadsSomewhere(root, keys)) {
    return fail([
      planError(path, shownValue(value), 'There is no such field in the plan.', 'Choose a field that is shown.'),
    ]);
  }
  return succeed(setIn(root, keys, value) as Root);
}
