import { existsSync } from 'node:fs';
import { run } from './run.mjs';

/** The first of some places where there is a file; undefined when there is none. */
export function findProgram(places) {
  return places.find((place) => place && existsSync(place));
}

async function installWithApt(name) {
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const updated = await run('apt-get', ['update'], env);
  if (updated === 0) await run('apt-get', ['install', '-y', '--no-install-recommends', name], env);
}

/**
 * Installs a program with the system's package manager when it is in none of its places; resolves to its path, if it is
 * there then.
 * @param program its places, the package it comes in, what it is called and what to say when it cannot be had
 */
export async function ensureProgram({ places, packageName, label, missing }) {
  if (findProgram(places)) return findProgram(places);
  console.log(`No ${label} found; installing it…`);
  await installWithApt(packageName);
  if (!findProgram(places)) console.error(missing);
  return findProgram(places);
}
