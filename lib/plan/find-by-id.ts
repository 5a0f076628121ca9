/**
 * The entry with this id in one of the plan's lists.
 * @throws RangeError when there is none; in a checked plan every id that is mentioned exists.
 */
export function findById<Item extends { readonly id: string }>(items: readonly Item[], id: string, noun: string): Item {
  const item = items.find((candidate) => candidate.id === id);
  if (!item) throw new RangeError(`no ${noun} "${id}" among ${items.map((candidate) => candidate.id).join(', ')}`);
  return item;
}
