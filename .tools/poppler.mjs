import { ensureProgram, findProgram } from './program.mjs';

const PLACES = [
  process.env.PDFTOTEXT_PATH,
  '/usr/bin/pdftotext',
  '/usr/local/bin/pdftotext',
  '/opt/homebrew/bin/pdftotext',
];

/** Path of the program that reads the text of printed pages, or undefined when it is not installed. */
export function findPdfReader() {
  return findProgram(PLACES);
}

/** Installs the reader of printed pages when there is none; resolves to its path, if it is there then. */
export function ensurePdfReader() {
  return ensureProgram({
    places: PLACES,
    packageName: 'poppler-utils',
    label: 'pdftotext',
    missing: 'The test of the printed document needs pdftotext: install poppler, or set PDFTOTEXT_PATH to it.',
  });
}
