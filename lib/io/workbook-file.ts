import { type CellStyle, type CellValue, type WriteSheet, writeXlsx } from 'hucre/xlsx';
import type { CellFormat, CellLook, SheetCell, WorkbookFile, WorkbookSheet } from '../views/workbook/workbook-types.ts';

/** What a file is made for. */
export interface WorkbookSetting {
  readonly paper: 'a4' | 'letter';
  /** When it was made; the same moment and workbook give the same bytes. */
  readonly made: Date;
}

export const WORKBOOK_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

const FORMATS: Readonly<Record<CellFormat, string | undefined>> = {
  text: undefined,
  cents: '#,##0.00;-#,##0.00;"–"',
  money: '#,##0;-#,##0;"–"',
  figure: '#,##0.00##;-#,##0.00##',
  share: '0.0%',
  count: '0',
  ratio: '0.00',
};

const INK = { rgb: '15252D' };
const SOFT = { rgb: '435864' };
const LINE = { style: 'thin', color: { rgb: '8AA0AC' } } as const;

function filled(rgb: string, ink: string): CellStyle {
  return { fill: { type: 'pattern', pattern: 'solid', fgColor: { rgb } }, font: { color: { rgb: ink } } };
}

const LOOKS: Readonly<Record<CellLook, CellStyle>> = {
  title: { font: { bold: true, size: 15, color: INK } },
  heading: { font: { bold: true, size: 12, color: { rgb: '14627A' } } },
  head: { font: { bold: true, color: SOFT }, border: { bottom: LINE }, alignment: { vertical: 'bottom' } },
  figureHead: {
    font: { bold: true, color: SOFT },
    border: { bottom: LINE },
    alignment: { horizontal: 'right', vertical: 'bottom', wrapText: true },
  },
  label: { font: { color: INK }, alignment: { vertical: 'top' } },
  note: { font: { color: SOFT }, alignment: { horizontal: 'left', indent: 1 } },
  wrapped: { font: { color: SOFT, size: 9 }, alignment: { wrapText: true, vertical: 'top' } },
  input: filled('E3F1F6', '0D4A5E'),
  handbook: filled('FBEED2', '6B4600'),
  guess: filled('EFE8F8', '5A3786'),
  counted: { font: { color: { rgb: '1D6A49' } } },
  worked: { font: { color: INK } },
  total: { font: { bold: true, color: INK }, border: { top: LINE } },
  check: { font: { italic: true, color: { rgb: '1D6A49' } } },
};

function styleOf({ look, format }: SheetCell): CellStyle {
  const numFmt = FORMATS[format];
  const style = LOOKS[look];
  return numFmt ? { ...style, numFmt } : style;
}

/** Columns as a list of rows; hucre takes plain values from there and formulas and looks from `cells`. */
function rowsOf({ cells }: WorkbookSheet): CellValue[][] {
  const rows: CellValue[][] = [];
  for (const { row, column, content } of cells) {
    while (rows.length <= row) rows.push([]);
    const line = rows[row] ?? [];
    while (line.length <= column) line.push(null);
    line[column] = content.kind === 'text' ? content.text : content.value;
  }
  return rows;
}

function cellsOf({ cells }: WorkbookSheet): WriteSheet['cells'] {
  return new Map(
    cells.map((cell) => {
      const { row, column, content } = cell;
      const style = styleOf(cell);
      const key = `${row},${column}`;
      if (content.kind !== 'formula') return [key, { style }];
      return [key, { formula: content.formula, formulaResult: content.value, style }];
    }),
  );
}

function widthsOf({ cells, widths }: WorkbookSheet): { width: number }[] {
  const last = cells.reduce((most, { column }) => Math.max(most, column), 0);
  return Array.from({ length: last + 1 }, (_, column) => ({ width: widths[column] ?? widths.at(-1) ?? 12 }));
}

/** Height of a line of small text [pt], and how many of its letters take the room of one of the usual size. */
const LINE_HEIGHT = 12.5;
const SMALL_LETTERS = 1.25;

/** Rows of joined cells do not find their height themselves. */
function heightsOf(sheet: WorkbookSheet): Map<number, { height: number }> {
  const widths = widthsOf(sheet).map(({ width }) => width);
  return new Map(
    sheet.spans.map(({ row, from, to }) => {
      const cell = sheet.cells.find((candidate) => candidate.row === row && candidate.column === from);
      const letters = cell?.content.kind === 'text' ? cell.content.text.length : 0;
      const room = widths.slice(from, to + 1).reduce((sum, width) => sum + width, 0) * SMALL_LETTERS;
      return [row, { height: 3 + LINE_HEIGHT * Math.max(1, Math.ceil(letters / room)) }];
    }),
  );
}

/** What is repeated on every printed page. Names of sheets with blanks in them need their quotes, which hucre leaves out. */
function printTitles({ name, fixed: { rows, columns } }: WorkbookSheet) {
  const sheet = `'${name}'!`;
  const atLeft = columns > 1 ? `${sheet}$A:$B,` : '';
  return { name: '_xlnm.Print_Titles', range: `${atLeft}${sheet}$1:$${rows}`, scope: name };
}

function sheetOf(sheet: WorkbookSheet, { paper }: WorkbookSetting): WriteSheet {
  const { rows, columns } = sheet.fixed;
  const { pagesWide } = sheet;
  return {
    name: sheet.name,
    columns: widthsOf(sheet),
    rows: rowsOf(sheet),
    cells: cellsOf(sheet),
    freezePane: { rows, columns },
    view: { showGridLines: false },
    pageSetup: {
      paperSize: paper,
      orientation: 'landscape',
      fitToPage: true,
      // Months run on over a page for each year; other sheets fit the width of one page and run on downwards.
      fitToWidth: pagesWide,
      fitToHeight: pagesWide > 1 ? 1 : 0,
    },
    merges: sheet.spans.map(({ row, from, to }) => ({ startRow: row, startCol: from, endRow: row, endCol: to })),
    rowDefs: heightsOf(sheet),
    headerFooter: { oddFooter: '&L&A&RPage &P of &N' },
  };
}

/** A workbook as the bytes of an .xlsx file. */
export function workbookBytes(file: WorkbookFile, setting: WorkbookSetting): Promise<Uint8Array> {
  return writeXlsx({
    sheets: file.sheets.map((sheet) => sheetOf(sheet, setting)),
    namedRanges: [...file.names.map(({ name, range }) => ({ name, range })), ...file.sheets.map(printTitles)],
    properties: { title: file.title, created: setting.made, modified: setting.made },
  });
}
