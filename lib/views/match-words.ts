function plain(text: string): string {
  return text.trim().replace(/\s+/g, ' ').toLowerCase();
}

/**
 * The item a text means: the one with these very words, or else the only one whose words begin with them, or else the only
 * one that has them anywhere. Case and extra spaces do not matter.
 */
export function matchWords<Item>(
  text: string,
  items: readonly Item[],
  wordsOf: (item: Item) => string,
): Item | undefined {
  const wanted = plain(text);
  if (wanted === '') return undefined;
  const tests = [
    (words: string) => words === wanted,
    (words: string) => words.startsWith(wanted),
    (words: string) => words.includes(wanted),
  ];
  for (const test of tests) {
    const found = items.filter((item) => test(plain(wordsOf(item))));
    if (found.length === 1) return found[0];
  }
  return undefined;
}
