import { guarded, isFormula } from '../plan/log-text/formula-guard.ts';

/** A cell of a table of figures: numbers as they are, none as null. */
export type CsvCell = string | number | null;

function textCell(text: string): string {
  // Figures are written by us as numbers, so a text that looks like a formula is never meant as one.
  const safe = isFormula(text) ? guarded(text) : text;
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
