interface Named {
  readonly id: string;
  readonly name: string;
}

const LONGEST_STEM = 48;

/** An id made from a name that no entry has yet: `Good pump` gives `good-pump`, then `good-pump-2`. */
export function freshId(taken: readonly { readonly id: string }[], name: string): string {
  const ids = new Set(taken.map((item) => item.id));
  const letters = name.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  const stem = letters.replace(/^-+/, '').slice(0, LONGEST_STEM).replace(/-+$/, '') || 'item';
  if (!ids.has(stem) && !(stem in Object.prototype)) return stem;
  for (let number = 2; ; number += 1) {
    if (!ids.has(`${stem}-${number}`)) return `${stem}-${number}`;
  }
}

/** Id and name for a copy of an entry: `Today` gives `Today 2`, then `Today 3`. */
export function copyIdentity(taken: readonly Named[], original: Named): Named {
  const names = new Set(taken.map((item) => item.name));
  const stem = original.name.replace(/ \d+$/, '');
  for (let number = 2; ; number += 1) {
    const name = `${stem} ${number}`;
    if (!names.has(name)) return { id: freshId(taken, name), name };
  }
}
