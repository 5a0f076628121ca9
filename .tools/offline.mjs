// Writes the service worker of a finished build: a list of its files with their hashes, and what serves them without a network.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesIn } from './files-in.mjs';

/** Address of the worker; at the top, so that it may answer for the whole site. */
const WORKER = '/service-worker.js';

/** Files that no page asks for: pictures of the README, and what is hidden. */
const LEFT_OUT = /^\/readme\/|\/\./;

/** The address under which the server sends a file: a page goes by its folder. */
function addressOf(file) {
  return `/${file}`.replace(/\/index\.html$/, '/');
}

function sha256(bytes) {
  return createHash('sha256').update(bytes).digest('hex');
}

/** The hash of every file that a page may ask for, by its address. */
export function fileHashes(folder) {
  const listed = filesIn(folder).filter((file) => `/${file}` !== WORKER && !LEFT_OUT.test(`/${file}`));
  return Object.fromEntries(listed.map((file) => [addressOf(file), sha256(readFileSync(join(folder, file)))]));
}

/** The whole service worker for these files. Another byte in any of them makes it another worker. */
export function workerText(hashes) {
  const code = readFileSync(new URL('./offline-worker.js', import.meta.url), 'utf8');
  const version = sha256(JSON.stringify(hashes) + code).slice(0, 16);
  return `const VERSION = '${version}';\nconst FILES = ${JSON.stringify(hashes, null, 1)};\n${code}`;
}

export function writeOfflineWorker(folder) {
  writeFileSync(join(folder, WORKER), workerText(fileHashes(folder)));
}
