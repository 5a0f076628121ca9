import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import type { Page, TestInfo } from '@playwright/test';
import ExcelJS from 'exceljs';
import { findPdfReader } from '../../.tools/poppler.mjs';
import { cellAt, openSheet } from './sheet.ts';
import { expect, test } from './strict-page.ts';

const SCENARIO = 'Six on one pump';
const ROW = 3;

/** Columns of the sheet that the papers repeat. */
const REPEATED = ['npv', 'payback', 'irr', 'cashNeeded', 'dscr', 'dscr.ownerPaid', 'dscr.year2', 'capital'] as const;

type Figures = Readonly<Record<(typeof REPEATED)[number], string>>;

async function figuresOfSheet(page: Page): Promise<Figures> {
  const figures: Record<string, string> = {};
  for (const column of REPEATED) {
    const cell = cellAt(page, ROW, column);
    await expect(cell).not.toHaveText('', { timeout: 120_000 });
    figures[column] = (await cell.textContent()) ?? '';
  }
  return figures as Figures;
}

async function openPapers(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Lender pack' }).click();
  await page.getByLabel('Scenario the papers are for').selectOption({ label: SCENARIO });
  await expect(page.getByRole('article', { name: `Lender pack: ${SCENARIO}` })).toBeVisible({ timeout: 300_000 });
}

/** What stands in the way of anyone, by the rules that the other parts are held to. */
async function barriers(page: Page): Promise<string[]> {
  const results = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
  return results.violations.map((one) => `${one.id} ${one.nodes[0]?.html}`);
}

/** No word comes nearer to the edge of the paper [pt]; the foot may, by half. */
const EDGE = 30;

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
    const isOff = at('xMin') < EDGE || at('xMax') > width - EDGE || at('yMin') < EDGE || at('yMax') > height - EDGE / 2;
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
  await page.getByLabel('All columns').check();
  const figures = await figuresOfSheet(page);
  await openPapers(page);
  const papers = page.getByRole('article');

  await test.step('on the screen', async () => {
    for (const figure of Object.values(figures)) await expect(papers).toContainText(figure);
    await expect(papers.locator('svg[role="application"], svg[role="img"]')).toHaveCount(5);
  });

  await test.step('for anyone, in light and dark and on a phone', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await expect(papers).toHaveCSS('background-color', 'rgb(255, 255, 255)');
      expect(await barriers(page), colorScheme).toEqual([]);
    }
    const size = page.viewportSize() ?? { width: 1280, height: 800 };
    await page.setViewportSize({ width: 380, height: 800 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    await page.setViewportSize(size);
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
  test.skip(!reader && !process.env.CI, 'pdftotext is not installed');
  expect(reader, 'pdftotext').toBeDefined();
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
        // A page with a head and a line or two on it is paper for nothing; only the last holds what is left.
        if (k < pages.length - 1)
          expect(text.split('\n').filter((line) => line.trim() !== '').length, text).toBeGreaterThan(9);
      });
      for (const figure of Object.values(figures)) expect(pages.join('\n')).toContain(figure);
      // The head of a long table stands on every page that the table runs over.
      const schedules = pages.filter((text) => /^\s*\d+(\s+([\d,]+\.\d\d|–)){5}\s*$/m.test(text));
      expect(schedules.length).toBeGreaterThan(1);
      for (const text of schedules) expect(text).toContain('Owed at the start');
      expect(pages[0]).not.toContain('Undo');
    });
  }
});
