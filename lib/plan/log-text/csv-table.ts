import Papa from 'papaparse';
import { fail, type Result, succeed } from '../../result.ts';
import type { CellProblem } from '../cell/amount.ts';
import { cellProblem } from '../cell/amount.ts';

/** One row of a table as it stands in the text. */
export interface CsvRow {
  /** Line of the text on which the row begins, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export interface CsvTable {
  readonly separator: string;
  readonly rows: readonly CsvRow[];
}

/** Longest text that is read [characters]. */
export const LONGEST_CSV = 2_000_000;

/** Some spreadsheets say on the first line which separator follows. */
const ANNOUNCED = /^\uFEFF?"?sep=(.)"?\r?\n/i;

/** The separator of a table by its first line: a tab, else a semicolon, else a comma; quoted parts do not count. */
function separatorOf(text: string): string {
  const first = /^\s*([^\r\n]*)/.exec(text)?.[1] ?? '';
  const bare = first.replace(/"[^"]*"/g, '');
  return ['\t', ';'].find((sign) => bare.includes(sign)) ?? ',';
}

/** How many lines the part of a text between two places runs over. */
function linesIn(text: string, from: number, to: number): number {
  return (text.slice(from, to).match(/\r\n|\r|\n/g) ?? []).length;
}

function isBlank(cells: readonly string[]): boolean {
  return cells.every((cell) => cell.trim() === '');
}

function rowsOf(text: string, separator: string, firstLine: number): Result<readonly CsvRow[], CellProblem> {
  const rows: CsvRow[] = [];
  let line = firstLine;
  let place = 0;
  let openQuote: number | null = null;
  Papa.parse<string[]>(text, {
    delimiter: separator,
    quoteChar: '"',
    step: ({ data, errors, meta }) => {
      if (errors.some((error) => error.code === 'MissingQuotes')) openQuote ??= line;
      if (!isBlank(data)) rows.push({ line, cells: data.map((cell) => cell.trim()) });
      line += linesIn(text, place, meta.cursor);
      place = meta.cursor;
    },
  });
  if (openQuote === null) return succeed(rows);
  return cellProblem(
    `A quotation mark opens on line ${openQuote} and is never closed.`,
    'Close it, or take it away: a mark that is part of the text is written twice.',
  );
}

/**
 * The rows of comma-, semicolon- or tab-separated text, quoted as RFC 4180 has it; blank rows are left out. Cells are text and
 * nothing more: nothing in them is looked up, followed or run. Never throws.
 */
export function readCsv(text: string): Result<CsvTable, CellProblem> {
  if (text.length > LONGEST_CSV) {
    const most = `${LONGEST_CSV / 1_000_000} million characters`;
    return fail({ problem: `The text is longer than ${most}.`, remedy: 'Bring it in in parts.' });
  }
  const announced = ANNOUNCED.exec(text);
  const body = (announced ? text.slice(announced[0].length) : text).replace(/^\uFEFF/, '');
  const separator = announced?.[1] ?? separatorOf(body);
  // A quotation mark or a line end cannot separate anything.
  if (/["\r\n]/.test(separator))
    return cellProblem('The separator on the first line is no separator.', 'Delete that line.');
  const rows = rowsOf(body, separator, announced ? 2 : 1);
  return rows.ok ? succeed({ separator, rows: rows.value }) : rows;
}
