/** Where the reader of a block of cells stands. */
interface Reading {
  readonly rows: string[][];
  row: string[];
  cell: string;
  quoted: boolean;
}

function endCell(reading: Reading): void {
  reading.row.push(reading.cell);
  reading.cell = '';
}

function endRow(reading: Reading): void {
  endCell(reading);
  reading.rows.push(reading.row);
  reading.row = [];
}

/** Reads one character inside quotes; returns how many characters were used up. */
function readQuoted(reading: Reading, text: string, at: number): number {
  const character = text[at] ?? '';
  if (character !== '"') {
    reading.cell += character;
    return 1;
  }
  const doubled = text[at + 1] === '"';
  if (doubled) reading.cell += '"';
  else reading.quoted = false;
  return doubled ? 2 : 1;
}

/** Reads one character outside quotes. A quote opens a quoted cell only at its very start: 6" stays as it is. */
function readPlain(reading: Reading, character: string): number {
  if (character === '\t') endCell(reading);
  else if (character === '\n') endRow(reading);
  else if (character === '"' && reading.cell === '') reading.quoted = true;
  else reading.cell += character;
  return 1;
}

/**
 * Cells of a block of text as spreadsheets put it on the clipboard: tabs between cells, line ends between rows, cells
 * with tabs, quotes or line ends in double quotes. One line end after the last row is dropped. A quote that is never
 * closed was no quoting, so the text is then split as it stands.
 */
export function parseTabSeparated(text: string): string[][] {
  const unified = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
  const reading: Reading = { rows: [], row: [], cell: '', quoted: false };
  let at = 0;
  while (at < unified.length) {
    at += reading.quoted ? readQuoted(reading, unified, at) : readPlain(reading, unified[at] ?? '');
  }
  if (reading.quoted) return unified.split('\n').map((line) => line.split('\t'));
  endRow(reading);
  return reading.rows;
}

function writeCell(cell: string): string {
  return /[\t\n\r]|^"/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** A block of cells as clipboard text that spreadsheets read. */
export function writeTabSeparated(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.map(writeCell).join('\t')).join('\n');
}
