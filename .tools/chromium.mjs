import { ensureProgram, findProgram } from './program.mjs';

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
  return findProgram(places);
}

/** Installs Chromium with the system's package manager when there is none; resolves to its path, if it is there then. */
export function ensureChromium() {
  return ensureProgram({
    places: PLACES,
    packageName: 'chromium',
    label: 'Chromium',
    missing: 'The browser tests need Chromium: install it, or set CHROMIUM_PATH to the program.',
  });
}
