import type { SourceText } from './source-text.ts';

/** A key with a year at its end, which nothing else in the code looks like. */
const DATED_KEY = /(?<![\w./-])[a-z]+(?:-[a-z0-9]+)*-(?:18|19|20)\d\d(?![\w-])/g;

/** What follows the word Source in a comment: one key, or the word for a law that was worked out on the spot. */
const CITED = /\bSources?: ([a-z][\w-]*)/g;

const NO_KEY = new Set(['derived', 'own', 'none']);

function isCited(key: string, files: readonly SourceText[]): boolean {
  const word = new RegExp(`(?<![\\w-])${key}(?![\\w-])`);
  return files.some((file) => word.test(file.text));
}

function citations(line: string): string[] {
  const dated = [...line.matchAll(DATED_KEY)].map((match) => match[0]);
  const named = [...line.matchAll(CITED)].map((match) => match[1] ?? '');
  return [...new Set([...dated, ...named])].filter((key) => !NO_KEY.has(key));
}

/** Keys of the bibliography that no file cites. */
export function findUnusedKeys(keys: readonly string[], files: readonly SourceText[]): string[] {
  return keys.filter((key) => !isCited(key, files)).map((key) => `source ${key} is cited nowhere`);
}

/** Citations, in code or comment, of a key that the bibliography does not have. */
export function findUnknownKeys(keys: readonly string[], files: readonly SourceText[]): string[] {
  const known = new Set(keys);
  return files.flatMap(({ path, text }) =>
    text
      .split('\n')
      .flatMap((line, index) =>
        citations(line).flatMap((key) => (known.has(key) ? [] : [`${path}:${index + 1}: unknown source ${key}`])),
      ),
  );
}
