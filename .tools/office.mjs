import { ensureProgram, findProgram } from './program.mjs';

/** Where LibreOffice is found, the wished one first. */
const PLACES = [
  process.env.SOFFICE_PATH,
  '/usr/bin/soffice',
  '/usr/local/bin/soffice',
  '/Applications/LibreOffice.app/Contents/MacOS/soffice',
];

/** Path of the spreadsheet program that works workbooks out again, or undefined when none is installed. */
export function findOffice() {
  return findProgram(PLACES);
}

/** Installs LibreOffice's spreadsheet when there is none; resolves to its path, if it is there then. */
export function ensureOffice() {
  return ensureProgram({
    places: PLACES,
    packageName: 'libreoffice-calc',
    label: 'LibreOffice',
    missing: 'The tests of workbooks need LibreOffice: install it, or set SOFFICE_PATH to the program.',
  });
}
