import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { OUT, ROOT } from './paths.mjs';

/** Everything a build depends on. */
const INPUTS = [
  'app',
  'components',
  'lib',
  'public',
  '.tools/build.mjs',
  '.tools/content-policy.mjs',
  '.tools/files-in.mjs',
  '.tools/finish.mjs',
  '.tools/offline.mjs',
  '.tools/offline-worker.js',
  'next.config.js',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
];

const STAMP = join(OUT, '.stamp');

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/** A hash over the names and contents of all files that a build reads. Times do not count: a clone resets them. */
export function sourceStamp(root = ROOT, inputs = INPUTS) {
  const hash = createHash('sha256');
  for (const file of inputs.flatMap((input) => filesUnder(join(root, input)))) {
    hash
      .update(`${file.slice(root.length)}\0`)
      .update(readFileSync(file))
      .update('\0');
  }
  return hash.digest('hex');
}

/** Whether out/ holds a finished build of the present sources. */
export function isBuilt() {
  return existsSync(STAMP) && readFileSync(STAMP, 'utf8') === sourceStamp();
}

/** Marks out/ as the build of the sources that had this stamp when the build began. */
export function writeStamp(stamp) {
  writeFileSync(STAMP, stamp);
}
