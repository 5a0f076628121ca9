import type { SheetCell, WorkbookFile } from '../../../lib/views/workbook/workbook-types.ts';

function isText({ column, content }: SheetCell, text: string): boolean {
  return column === 0 && content.kind === 'text' && content.text === text;
}

/**
 * Numbers of the row that begins with a label, by column.
 * @param after a heading in front of it, where the label stands in several parts of the sheet
 */
export function rowOf(
  book: WorkbookFile,
  sheetName: string,
  label: string,
  after = '',
): ReadonlyMap<number, number | string> {
  const cells = book.sheets.find((sheet) => sheet.name === sheetName)?.cells ?? [];
  const from = after === '' ? 0 : (cells.find((cell) => isText(cell, after))?.row ?? Number.POSITIVE_INFINITY);
  const named = cells.find((cell) => cell.row >= from && isText(cell, label));
  if (!named) throw new Error(`no row "${label}" in "${sheetName}"`);
  return new Map(
    cells
      .filter(({ row }) => row === named.row)
      .flatMap(({ column, content }) => (content.kind === 'text' ? [] : [[column, content.value] as const])),
  );
}

/** Whole cents of a row of months, the moment before the first month among them where the row has one. */
export function centsOf(book: WorkbookFile, sheet: string, label: string, after = ''): number[] {
  return [...rowOf(book, sheet, label, after)]
    .filter(([column]) => column >= 2)
    .sort(([a], [b]) => a - b)
    .map(([, value]) => Math.round(Number(value) * 100));
}
