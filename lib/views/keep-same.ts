/**
 * The next list with every item that is as before replaced by the one before, so that whoever draws it can tell by identity
 * what has changed. The list before itself when nothing has.
 */
export function keepSame<Item>(
  before: readonly Item[],
  next: readonly Item[],
  isSame: (a: Item, b: Item) => boolean,
): readonly Item[] {
  const kept = next.map((item, at) => {
    const was = before[at];
    return was !== undefined && isSame(was, item) ? was : item;
  });
  const isUnchanged = kept.length === before.length && kept.every((item, at) => item === before[at]);
  return isUnchanged ? before : kept;
}

/** Equal as plain data, key by key in the same order. */
export function isSameData(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
