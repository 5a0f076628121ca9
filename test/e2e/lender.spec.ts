import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Locator, Page, TestInfo } from '@playwright/test';
import ExcelJS from 'exceljs';
import { findPdfReader } from '../../.tools/poppler.mjs';
import { cellAt, openSheet } from './sheet.ts';
import { expect, test } from './strict-page.ts';

const SCENARIO = 'Six on one pump';
const ROW = 3;

/** Columns of the sheet that the papers repeat. */
const REPEATED = ['npv', 'payback', 'dscr', 'capital'] as const;

type Figures = Readonly<Record<(typeof REPEATED)[number], string>>;

/** Columns far to the right are drawn when the sheet is moved there. */
async function bringIntoView(page: Page, cell: Locator): Promise<void> {
  const sheet = page.locator('.ag-center-cols-viewport');
  for (let left = 0; (await cell.count()) === 0 && left < 10_000; left += 300) {
    await sheet.evaluate((element, x) => {
      element.scrollLeft = x;
    }, left);
    await page.waitForTimeout(50);
  }
}

async function figuresOfSheet(page: Page): Promise<Figures> {
  const figures: Record<string, string> = {};
  for (const column of REPEATED) {
    const cell = cellAt(page, ROW, column);
    await bringIntoView(page, cell);
    await expect(cell).not.toHaveText('', { timeout: 120_000 });
    figures[column] = (await cell.textContent()) ?? '';
  }
  return figures as Figures;
}

async function openPapers(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Lender pack' }).click();
  await page.getByLabel('Scenario the papers are for').selectOption({ label: SCENARIO });
  await expect(page.getByRole('article', { name: `Lender pack: ${SCENARIO}` })).toBeVisible({ timeout: 240_000 });
}

/** Text of each printed page, and the words that do not lie on it. */
function readPdf(
  reader: string,
  path: string,
): { readonly pages: string[]; readonly outside: string[]; readonly size: string } {
  const run = (program: string, args: readonly string[]) =>
    execFileSync(join(dirname(reader), program), [...args, path, ...(program === 'pdfinfo' ? [] : ['-'])], {
      encoding: 'utf8',
    });
  const pages = run('pdftotext', ['-layout']).split('\f').slice(0, -1);
  const outside: string[] = [];
  let [width, height] = [0, 0];
  for (const line of run('pdftotext', ['-bbox']).split('\n')) {
    const at = (name: string) => Number(new RegExp(`${name}="([\\d.-]+)"`).exec(line)?.[1] ?? Number.NaN);
    if (line.includes('<page')) [width, height] = [at('width'), at('height')];
    const isOff = at('xMin') < 0 || at('xMax') > width || at('yMin') < 0 || at('yMax') > height;
    if (line.includes('<word') && isOff) outside.push(line.trim());
  }
  return { pages, outside, size: /Page size: *(.*)/.exec(run('pdfinfo', []))?.[1] ?? '' };
}

async function print(page: Page, paper: string, testInfo: TestInfo): Promise<string> {
  await page.getByLabel(paper, { exact: true }).check();
  const path = testInfo.outputPath(`${paper}.pdf`);
  writeFileSync(path, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  return path;
}

test('the papers repeat the figures of the sheet, on the screen, on paper and in the workbook', async ({
  page,
}, testInfo) => {
  test.setTimeout(480_000);
  await openSheet(page);
  const figures = await figuresOfSheet(page);
  await openPapers(page);
  const papers = page.getByRole('article');

  await test.step('on the screen', async () => {
    for (const figure of Object.values(figures)) await expect(papers).toContainText(figure);
    await expect(papers.locator('svg[role="application"], svg[role="img"]')).toHaveCount(5);
  });

  await test.step('in the workbook', async () => {
    const button = page.getByRole('button', { name: 'Save as workbook' });
    await expect(button).toBeEnabled({ timeout: 120_000 });
    const download = page.waitForEvent('download');
    await button.click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('lender-workbook-six-on-one-pump.xlsx');
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.readFile(await file.path());
    const summary = workbook.getWorksheet('Summary');
    const rows = summary?.getColumn(1).values ?? [];
    const cell = summary?.getCell(rows.indexOf('Net present value'), 2);
    expect(cell?.formula).toContain('Returns');
    expect(Math.round(Number(cell?.result))).toBe(Number(figures.npv.replaceAll(',', '')));
  });

  const reader = findPdfReader();
  test.skip(!reader, 'pdftotext is not installed');
  for (const [paper, size] of [
    ['A4', '(A4)'],
    ['Letter', '(letter)'],
  ] as const) {
    await test.step(`on ${paper}`, async () => {
      const { pages, outside, size: printed } = readPdf(reader ?? '', await print(page, paper, testInfo));
      expect(printed).toContain(size);
      expect(pages.length).toBeGreaterThan(12);
      expect(pages.length).toBeLessThan(40);
      expect(outside).toEqual([]);
      pages.forEach((text, k) => {
        expect(text).toContain(`page ${k + 1} of ${pages.length}`);
      });
      for (const figure of Object.values(figures)) expect(pages.join('\n')).toContain(figure);
      // The head of a long table stands on every page that the table runs over.
      const schedules = pages.filter((text) => /^\s*\d+(\s+[\d,.–-]+){5}\s*$/m.test(text));
      expect(schedules.length).toBeGreaterThan(1);
      for (const text of schedules) expect(text).toContain('Owed at the start');
      expect(pages[0]).not.toContain('Undo');
    });
  }
});
