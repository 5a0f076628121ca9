/** The first word that begins with a typed letter; undefined when the key was no letter or none does. */
export function firstWith(key: string | null, words: readonly string[]): string | undefined {
  if (key === null || key.length !== 1 || key.trim() === '') return undefined;
  return words.find((word) => word.toLowerCase().startsWith(key.toLowerCase()));
}
