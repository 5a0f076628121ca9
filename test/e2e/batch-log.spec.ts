import AxeBuilder from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { statusLine } from './sheet.ts';
import { expect, test } from './strict-page.ts';

const TABLE = `date,chamber,product,wet lb,dry lb,hours,highest pressure mTorr,note
2026-11-10,Mid-size chamber,Sweetcorn,25,6.3,18.5,640,first of the week
2026-11-11,Mid-size chamber,Moon rocks,25,6.3,18.5,640,
2026-11-12,Mid-size chamber,Sweetcorn,25,26,18.5,,
2026-11-13,Mid-size chamber,Strawberry slices,23,2.2,20,,`;

const TESTS = `date,chamber,from mTorr,to mTorr,minutes,note
2026-11-14,Mid-size chamber,220,900,10,after the door was cleaned`;

async function openLog(page: Page): Promise<void> {
  await page.goto('/#log');
  await page.getByRole('tab', { name: 'Batch log' }).click();
  await expect(page.getByRole('heading', { name: 'What the log says of the model' })).toBeVisible();
}

async function openImport(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: 'Bring in a table' }).click();
  return page.getByRole('dialog', { name: 'Bring in a table of batches' });
}

async function expectAccessible(page: Page): Promise<void> {
  const axe = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
  expect(axe.violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
}

test('rows come in by paste and by file, bad ones are named and left out, and one undo takes them out again', async ({
  page,
}) => {
  await openLog(page);
  const batches = page.getByRole('region', { name: 'Batches' });
  const before = await batches.getByRole('row').count();
  const dialog = await openImport(page);
  await dialog.getByLabel('Rows to bring in').fill(TABLE);
  await expect(dialog.getByTestId('import-summary')).toHaveText('2 rows will come in, 2 rows cannot be read.');
  const leftOut = dialog.getByRole('region', { name: 'Left out' });
  await expect(leftOut.getByRole('listitem').nth(0)).toContainText(/Line 3.*Moon rocks/);
  await expect(leftOut.getByRole('listitem').nth(1)).toContainText('Line 4');
  await expectAccessible(page);
  await dialog.getByRole('button', { name: 'Take them in' }).click();
  await expect(statusLine(page)).toContainText('2 entries came into the log, 2 rows left out.');
  await expect(batches.getByRole('row')).toHaveCount(before + 2);

  const again = await openImport(page);
  await again.getByTestId('log-file').setInputFiles({
    name: 'tests.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(`\uFEFF${TESTS}`, 'utf8'),
  });
  await expect(again.getByTestId('import-summary')).toHaveText('1 row will come in.');
  await again.getByRole('button', { name: 'Take them in' }).click();
  const tests = page.getByRole('region', { name: 'Pressure-rise tests' });
  await expect(tests).toContainText('after the door was cleaned');

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(tests).not.toContainText('after the door was cleaned');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(batches.getByRole('row')).toHaveCount(before);
});

test('the fit runs beside the page, and its values go into the plan as one step', async ({ page }) => {
  await openLog(page);
  await page.getByRole('button', { name: 'Fit the model to the log' }).click();
  await expect(page.getByTestId('fit-progress')).toBeVisible();
  // Meanwhile the page is free: a batch is begun and typed.
  await page.getByRole('button', { name: 'Log a batch' }).click();
  await page.getByLabel('Note').fill('typed while the fit runs');
  await expect(page.getByLabel('Note')).toHaveValue('typed while the fit runs');
  await page.getByRole('button', { name: 'Close' }).click();

  const figure = page.locator('[data-figure="Logged and expected hours"]');
  await expect(figure.getByRole('heading')).toContainText('with fitted values it is', { timeout: 150_000 });
  await expect(page.getByRole('list', { name: 'What the fit noticed' })).toContainText('took 62.0 h');
  const leak = page.getByRole('row', { name: /Air leak/ });
  await expect(leak).toContainText('3 pressure-rise tests');
  await expectAccessible(page);

  await page.getByRole('button', { name: 'Use these values' }).click();
  await expect(page.getByTestId('fit-standing')).toContainText('in the plan now, as measured');
  await expect(statusLine(page)).toContainText('from your log');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByTestId('fit-standing')).toContainText('untouched');
});

test('a batch is logged on a phone, and a slip of the pen is said beside it', async ({ page }) => {
  await page.setViewportSize({ width: 380, height: 700 });
  await openLog(page);
  await page.getByRole('button', { name: 'Log a batch' }).click();
  const form = page.getByRole('form', { name: 'Log a batch' });
  await form.getByLabel('Wet weight').fill('24');
  await form.getByLabel('Dry weight').fill('30');
  await form.getByLabel('Hours').fill('18.5');
  await form.getByRole('button', { name: 'Put it in the log' }).click();
  await expect(form.locator('[aria-invalid="true"]')).toHaveCount(1);
  await form.getByLabel('Dry weight').fill('2.3');
  await form.getByRole('button', { name: 'Put it in the log' }).click();
  await expect(statusLine(page)).toContainText('is in the log');
  const overhang = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overhang).toBeLessThanOrEqual(0);
});
