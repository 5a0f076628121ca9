import { existsSync } from 'node:fs';
import { run } from './run.mjs';

/** Where a Chromium or a browser built on it is found, the wished one first. */
const PLACES = [
  process.env.CHROMIUM_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** Path of a browser for the browser tests, or undefined when none is installed. */
export function findChromium(places = PLACES) {
  return places.find((place) => place && existsSync(place));
}

/** Installs Chromium with the system's package manager when there is none; resolves to its path, if it is there then. */
export async function ensureChromium() {
  if (findChromium()) return findChromium();
  console.log('No Chromium found; installing it…');
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const updated = await run('apt-get', ['update'], env);
  if (updated === 0) await run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], env);
  if (!findChromium()) {
    console.error('The browser tests need Chromium: install it, or set CHROMIUM_PATH to the program.');
  }
  return findChromium();
}
