import type { SourceText } from './source-text.ts';

const TOP_LEVEL = new Set([
  'app',
  'lib',
  'components',
  'test',
  'public',
  'next.config.js',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'README.md',
  'DEVELOPERS.md',
]);

const FILE_NAME = /^[a-z0-9]+(?:-[a-z0-9]+)*(?:\.(?:test|spec|bench|worker|config|d))?\.tsx?$/;

/** Traces of one machine, and work left for later. Written so that this file does not match itself. */
const LEAKS: readonly (readonly [RegExp, string])[] = [
  [/(?<![\w.~/)*-])\/(?:work|home|root|tmp|Users)\/[\w.]/, 'a path of one machine'],
  [/\bregistry\.[a-z]|\bverdacci[o]|\bnpmmirro[r]/, 'the host of a package registry'],
  [/\b(?:TOD[O]|FIXM[E]|HAC[K])\b/, 'work left for later'],
];

/** Names at the top of the project that do not belong there. Names with a leading dot are settings and always may. */
export function findStrayTopLevel(paths: readonly string[]): string[] {
  const names = new Set(paths.map((path) => path.split('/')[0] ?? ''));
  return [...names].filter((name) => !name.startsWith('.') && !TOP_LEVEL.has(name)).sort();
}

/** Code files that are not named in lower case with hyphens. */
export function findOddFileNames(paths: readonly string[]): string[] {
  return paths.filter((path) => !FILE_NAME.test(path.split('/').at(-1) ?? ''));
}

function findInLine(line: string): string[] {
  return LEAKS.filter(([pattern]) => pattern.test(line)).map(([, what]) => what);
}

/** Lines that tell of one machine or of unfinished work. */
export function findLeaks(files: readonly SourceText[]): string[] {
  return files.flatMap(({ path, text }) =>
    text.split('\n').flatMap((line, index) => findInLine(line).map((what) => `${path}:${index + 1}: ${what}`)),
  );
}
