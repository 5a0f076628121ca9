import { guarded, isFormula } from './formula-guard.ts';

/** A plain number is harmless even with a sign, and must stay a number. */
const NUMBER = /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/;

/** Text made safe: an apostrophe in front keeps a spreadsheet from running it. */
function harmless(cell: string): string {
  return isFormula(cell) && !NUMBER.test(cell) ? guarded(cell) : cell;
}

function quoted(cell: string): string {
  return /[",\r\n;\t]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** Rows as comma-separated text after RFC 4180, with no cell that a spreadsheet would run as a formula. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map((cell) => quoted(harmless(cell))).join(',')}\r\n`).join('');
}
