/** Text that a spreadsheet would take for a formula; also behind spaces, which some spreadsheets drop. */
const FORMULA = /^\s*[=+\-@\t\r|]/;

/** A plain number is harmless even with a sign, and must stay a number. */
const NUMBER = /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/;

/** Text made safe: an apostrophe in front keeps a spreadsheet from running it. */
function harmless(cell: string): string {
  return FORMULA.test(cell) && !NUMBER.test(cell) ? `'${cell}` : cell;
}

function quoted(cell: string): string {
  return /[",\r\n;\t]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** Rows as comma-separated text after RFC 4180, with no cell that a spreadsheet would run as a formula. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map((cell) => quoted(harmless(cell))).join(',')}\r\n`).join('');
}

/** The text a cell stood for before `writeCsv` made it harmless. */
export function withoutGuard(cell: string): string {
  return /^'\s*[=+\-@\t\r|]/.test(cell) ? cell.slice(1) : cell;
}
