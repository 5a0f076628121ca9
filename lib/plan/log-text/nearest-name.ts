interface Named {
  readonly id: string;
  readonly name: string;
}

/** Small letters without accents or signs, so that spellings compare. */
function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** Changes of one letter that lead from one text to another (Levenshtein). */
function changesBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}

/** The entry that goes by this name or id, however it is capitalised. */
export function findNamed<Item extends Named>(items: readonly Item[], text: string): Item | undefined {
  const wanted = plain(text);
  if (wanted === '') return undefined;
  return items.find((item) => plain(item.name) === wanted) ?? items.find((item) => plain(item.id) === wanted);
}

/** The entry whose name is least unlike, to ask whether it was meant; undefined when none is like it. */
export function nearestNamed<Item extends Named>(items: readonly Item[], text: string): Item | undefined {
  const wanted = plain(text).slice(0, 80);
  const rated = items.map((item) => {
    const name = plain(item.name);
    const isPart = wanted.length >= 3 && (name.includes(wanted) || wanted.includes(name));
    return { item, changes: isPart ? 0 : changesBetween(name, wanted) / Math.max(name.length, wanted.length, 1) };
  });
  const best = rated.sort((a, b) => a.changes - b.changes)[0];
  return best && best.changes <= 0.4 ? best.item : undefined;
}
