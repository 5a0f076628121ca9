import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { SourceText } from './source-text.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Every file of the project that git knows or would take in, as paths from the project's folder. */
export function listProjectFiles(): string[] {
  // The clone may belong to somebody else than whoever runs the tests, which git refuses unless told.
  const args = ['-c', 'safe.directory=*', 'ls-files', '-z', '--cached', '--others', '--exclude-standard'];
  const output = execFileSync('git', args, { cwd: ROOT, encoding: 'utf8', maxBuffer: 1e8 });
  const paths = new Set(output.split('\0').filter((path) => path !== ''));
  return [...paths].filter((path) => existsSync(ROOT + path)).sort();
}

/** The content of files whose path passes the filter. */
export function readProjectFiles(paths: readonly string[], filter: (path: string) => boolean): SourceText[] {
  return paths.filter(filter).map((path) => ({ path, text: readFileSync(ROOT + path, 'utf8') }));
}
