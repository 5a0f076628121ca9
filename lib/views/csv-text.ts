/** A cell of a table of figures: numbers as they are, none as null. */
export type CsvCell = string | number | null;

/**
 * Spreadsheets take a text that begins like a formula for one, so it is given an apostrophe, which they show as text.
 * Numbers are written by us and stay numbers.
 */
function harmless(text: string): string {
  return /^[\s]*[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}

function textCell(text: string): string {
  const safe = harmless(text);
  return /[",\n\r;\t]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function numberCell(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(12))) : '';
}

function csvCell(cell: CsvCell): string {
  if (cell === null) return '';
  return typeof cell === 'number' ? numberCell(cell) : textCell(cell);
}

/** Comma-separated text that every spreadsheet reads: RFC 4180 line ends and quotes, no cell that runs as a formula. */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}
