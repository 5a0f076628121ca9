import { existsSync, readFileSync } from 'node:fs';
import { ROOT } from './paths.mjs';
import { run } from './run.mjs';

/** The packages of a lock file as `folder version` lines; those left out on this platform are not counted. */
function lockedPackages(path) {
  const { packages } = JSON.parse(readFileSync(path, 'utf8'));
  return Object.entries(packages)
    .filter(([folder, entry]) => folder && !entry.optional)
    .map(([folder, entry]) => `${folder} ${entry.version}`);
}

/** Whether node_modules holds what the lock file asks for. */
export function isInstalled(root = ROOT) {
  const installed = `${root}node_modules/.package-lock.json`;
  if (!existsSync(installed)) return false;
  const present = new Set(lockedPackages(installed));
  return lockedPackages(`${root}package-lock.json`).every((entry) => present.has(entry));
}

/** Installs the locked packages when any is missing; resolves to npm's exit code, 0 when there was nothing to do. */
export function installPackages() {
  if (isInstalled()) return Promise.resolve(0);
  console.log('Installing packages (a minute or so the first time)…');
  return run('npm', ['ci', '--include=dev']);
}
