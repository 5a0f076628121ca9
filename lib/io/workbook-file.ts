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
  cents: '#,##0.00;-#,##0.00',
  money: '#,##0;-#,##0',
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
  label: { font: { color: INK } },
  note: { font: { color: SOFT }, alignment: { indent: 1 } },
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

function sheetOf(sheet: WorkbookSheet, { paper }: WorkbookSetting): WriteSheet {
  const { rows, columns } = sheet.fixed;
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
      // Months run on over several pages; other sheets fit the width of one.
      fitToWidth: columns > 1 ? 0 : 1,
      fitToHeight: columns > 1 ? 1 : 0,
      printTitlesRow: `$1:$${rows}`,
      ...(columns > 1 ? { printTitlesColumn: '$A:$B' } : {}),
    },
    headerFooter: { oddFooter: '&L&A&RPage &P of &N' },
  };
}

/** A workbook as the bytes of an .xlsx file. */
export function workbookBytes(file: WorkbookFile, setting: WorkbookSetting): Promise<Uint8Array> {
  return writeXlsx({
    sheets: file.sheets.map((sheet) => sheetOf(sheet, setting)),
    namedRanges: file.names.map(({ name, range }) => ({ name, range })),
    properties: { title: file.title, created: setting.made, modified: setting.made },
  });
}
