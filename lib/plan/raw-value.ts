/** What JSON text turns into before anything is known of it. */
export type RawObject = { readonly [key: string]: unknown };

/** True for a plain object, not a list and not null. */
export function isRawObject(value: unknown): value is RawObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The value at a path of keys and positions; undefined when the path leads nowhere. */
export function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

const LONGEST_SHOWN = 80;

/** A value as the user would recognise it, shortened. */
export function shownValue(value: unknown): string {
  if (value === undefined) return '(missing)';
  if (value === null) return '(none)';
  if (typeof value === 'string') return shorten(value);
  if (isRawObject(value) && 'value' in value && typeof value.value !== 'object') {
    return shorten(`${String(value.value)} ${typeof value.unit === 'string' ? value.unit : ''}`.trim());
  }
  if (Array.isArray(value)) return `(list of ${value.length})`;
  return typeof value === 'object' ? '(group of fields)' : String(value);
}

function shorten(text: string): string {
  return text.length <= LONGEST_SHOWN ? text : `${text.slice(0, LONGEST_SHOWN - 1)}…`;
}
