import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { goToFigure } from './figures.ts';
import { cellAt, openSheet } from './sheet.ts';
import { expect, test } from './strict-page.ts';

async function saved(page: Page, figure: string, kind: 'SVG' | 'PNG' | 'CSV'): Promise<{ name: string; body: Buffer }> {
  const download = page.waitForEvent('download');
  await page
    .locator(`[data-figure="${figure}"]`)
    .getByRole('button', { name: `Save as ${kind}` })
    .click();
  const file = await download;
  return { name: file.suggestedFilename(), body: await readFile(await file.path()) };
}

test('a figure is saved as a picture that stands alone and as numbers a spreadsheet reads', async ({ page }) => {
  await openSheet(page);
  await expect(cellAt(page, 5, 'cost.total')).toHaveText(/^\d/, { timeout: 120_000 });
  const figure = await goToFigure(page, 'What a batch costs');
  const finding = (await figure.getByRole('heading', { level: 3 }).textContent()) ?? '';

  const svg = await saved(page, 'What a batch costs', 'SVG');
  expect(svg.name).toBe('what-a-batch-costs.svg');
  const text = svg.body.toString('utf8');
  expect(text).toContain(`<title>${finding}</title>`);
  expect(text).toContain('Four, mostly candy');
  expect(text).toContain('>Labour<');
  expect(text).toMatch(/fill="rgb\(\d+, \d+, \d+\)"/);
  expect(text).not.toMatch(/var\(|class=|light-dark|<style|href=/);

  const png = await saved(page, 'What a batch costs', 'PNG');
  expect(png.body.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
  const width = Number(/<svg[^>]* width="(\d+)"/.exec(text)?.[1]);
  expect(png.body.readUInt32BE(16)).toBe(2 * width);

  const csv = await saved(page, 'What a batch costs', 'CSV');
  const rows = csv.body.toString('utf8').replace('\uFEFF', '').trim().split('\r\n');
  expect(rows).toHaveLength(7);
  expect(rows[0]).toContain('Ingredients [USD]');
  const today = (rows[1] ?? '').split(',');
  const total = Number(today.at(-1));
  expect(today.slice(1, -1).reduce((sum, part) => sum + Number(part), 0)).toBeCloseTo(total, 6);
  expect(total).toBeCloseTo(Number(await cellAt(page, 0, 'cost.total').textContent()), 0);
});

test('a name that looks like a formula is text in the saved numbers', async ({ page }) => {
  await openSheet(page);
  await cellAt(page, 1, 'name').click();
  await page.keyboard.press('F2');
  await page.keyboard.press('Control+a');
  await page.keyboard.type('=1+1');
  await page.keyboard.press('Enter');
  await expect(cellAt(page, 1, 'name')).toContainText('=1+1');
  await expect(cellAt(page, 5, 'cost.total')).toHaveText(/^\d/, { timeout: 120_000 });
  await goToFigure(page, 'What a batch costs');
  const csv = await saved(page, 'What a batch costs', 'CSV');
  expect(csv.body.toString('utf8')).toContain("\r\n'=1+1,");
});

test('the figures that take long are begun by a button, show how far they are, and can be stopped', async ({
  page,
}) => {
  await openSheet(page);
  await expect(cellAt(page, 5, 'cost.total')).toHaveText(/^\d/, { timeout: 120_000 });
  await page.getByRole('navigation', { name: 'Figures' }).getByRole('button', { name: 'Spread' }).click();
  const spread = page.locator('[data-figure="Spread"]');
  await spread.getByRole('button', { name: /^Draw/ }).click();
  await expect(spread.getByRole('progressbar')).toBeVisible();
  // The band around payback is of the same draws: it is under way there too, and stopped there it is stopped here.
  const payback = await goToFigure(page, 'Payback');
  await expect(payback.getByRole('progressbar')).toBeVisible();
  await payback.getByRole('button', { name: 'Stop' }).click();
  await expect(payback.getByRole('button', { name: /for the band$/ })).toBeVisible();
  await expect(spread.getByRole('button', { name: /^Draw/ })).toBeVisible();

  await page.getByRole('combobox', { name: 'Scenario the evidence is for' }).selectOption('Three on one pump');
  await page
    .getByRole('navigation', { name: 'Figures' })
    .getByRole('button', { name: 'What moves the answer' })
    .click();
  const tornado = page.locator('[data-figure="What moves the answer"]');
  await tornado.getByRole('button', { name: 'Try every input' }).click();
  await expect(tornado.getByRole('heading', { level: 3 })).toContainText('hangs most on', { timeout: 150_000 });
});
