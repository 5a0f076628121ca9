import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { workbookBytes } from '../../lib/io/workbook-file.ts';
import type { WorkbookFile } from '../../lib/views/workbook/workbook-types.ts';
import { planWith } from '../model/edited-plan.ts';
import { fakeSimulation } from '../model/fake-plant.ts';
import { workbookOf } from '../views/workbook/workbook-of.ts';

const MADE = new Date('2026-01-01T00:00:00Z');
const SETTING = { paper: 'a4', made: MADE } as const;

/** Texts that a careless writer would hand to a spreadsheet as formulas, or that would break the file. */
const NASTY = ['=1+1', '+SUM(A1)', '-2+3', '@now', '=HYPERLINK("x";"y")', '<b>&"quoted"</b>', "'it's", '\t=1'];

async function readBack(file: WorkbookFile): Promise<ExcelJS.Workbook> {
  const workbook = new ExcelJS.Workbook();
  const bytes = await workbookBytes(file, SETTING);
  await workbook.xlsx.load(bytes.buffer as ArrayBuffer);
  return workbook;
}

/** A workbook in which eight things have these names. */
function bookNamed(names: readonly string[]): WorkbookFile {
  const plan = planWith((document) => {
    const things = [
      ...document.products.slice(0, 4),
      document.chambers[0],
      document.pumps[0],
      document.financing.loans[0],
    ];
    things.forEach((thing, k) => {
      thing.name = names[k] ?? thing.name;
    });
    document.site.shopName = names[7] ?? document.site.shopName;
  });
  const made = workbookOf(plan, plan.scenarios[1]?.id ?? '', fakeSimulation());
  if (!made) throw new Error('the scenario cannot be worked out');
  return made.book;
}

describe('the file of a workbook', () => {
  it('is the same bytes for the same workbook and moment', async () => {
    const book = bookNamed([]);
    expect(await workbookBytes(book, SETTING)).toEqual(await workbookBytes(book, SETTING));
  });

  it('has formulas, figures, names and texts where they belong', async () => {
    const book = bookNamed([]);
    const workbook = await readBack(book);
    expect(workbook.worksheets.map(({ name }) => name)).toEqual(book.sheets.map(({ name }) => name));
    for (const sheet of book.sheets) {
      for (const { row, column, content } of sheet.cells) {
        const cell = workbook.getWorksheet(sheet.name)?.getCell(row + 1, column + 1);
        if (content.kind === 'text') expect(cell?.value).toBe(content.text);
        else if (content.kind === 'number') expect(cell?.value).toBe(content.value);
        else expect([cell?.formula, cell?.result ?? '']).toEqual([content.formula, content.value]);
      }
    }
    const price = book.names.find(({ name }) => name === 'price_strawberries');
    expect(workbook.definedNames.getRanges('price_strawberries').ranges[0]).toContain(
      price?.range.replaceAll("'", '').split('!')[1],
    );
  });

  it('repeats its titles in print on every sheet, whatever its name', async () => {
    const book = bookNamed([]);
    const workbook = await readBack(book);
    for (const { name, fixed } of book.sheets) {
      const { printTitlesRow, printTitlesColumn } = workbook.getWorksheet(name)?.pageSetup ?? {};
      expect([name, printTitlesRow]).toEqual([name, `1:${fixed.rows}`]);
      expect([name, printTitlesColumn]).toEqual([name, fixed.columns > 1 ? 'A:B' : undefined]);
    }
  });

  it('never takes a text for a formula', async () => {
    const book = bookNamed(NASTY);
    const workbook = await readBack(book);
    for (const name of NASTY.map((text) => text.trim())) {
      const texts = book.sheets.flatMap((sheet) =>
        sheet.cells.flatMap(({ row, column, content }) =>
          content.kind === 'text' && content.text.includes(name)
            ? [workbook.getWorksheet(sheet.name)?.getCell(row + 1, column + 1)]
            : [],
        ),
      );
      expect(texts.length, name).toBeGreaterThan(0);
      expect(texts.filter((cell) => cell?.type !== ExcelJS.ValueType.String || cell.formula)).toEqual([]);
    }
    const formulas = book.sheets.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => (content.kind === 'formula' ? [content.formula] : [])),
    );
    expect(formulas.filter((formula) => NASTY.some((name) => formula.includes(name.trim())))).toEqual([]);
  });
});
