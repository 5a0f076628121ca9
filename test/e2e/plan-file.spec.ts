import { readFile } from 'node:fs/promises';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import { cellAt, enter, openSheet, statusLine } from './sheet.ts';
import { expect, test } from './strict-page.ts';

test.beforeEach(async ({ page }) => {
  await openSheet(page);
});

test('a plan is saved as a file and opened again', async ({ page }) => {
  await enter(page, 1, 'chambers:mid', '5');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const file = await (await download).path();
  const parsed = parsePlan(await readFile(file, 'utf8'));
  expect(parsed.ok && parsed.value.scenarios[1]?.chambers[0]?.count).toBe(5);

  await enter(page, 1, 'chambers:mid', '7');
  await page.getByTestId('open-file').setInputFiles(file);
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
  await expect(statusLine(page)).toContainText('What was open before is in the list of plans');
  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  await page.getByRole('dialog', { name: 'Your plans' }).locator('li').nth(1).getByRole('button').first().click();
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('7');
});

test('a file with faults is not opened, and every fault is shown', async ({ page }) => {
  await enter(page, 1, 'chambers:mid', '5');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const text = await readFile(await (await download).path(), 'utf8');
  const broken = text.replace('"count": 5', '"count": 500').replace('"currency": "USD"', '"currency": "dollars"');
  await page.getByTestId('open-file').setInputFiles({
    name: 'broken.json',
    mimeType: 'application/json',
    buffer: Buffer.from(broken),
  });
  const dialog = page.getByRole('dialog', { name: 'broken.json was not opened' });
  await expect(dialog.getByRole('listitem')).toHaveCount(2);
  await expect(dialog).toContainText('scenarios.1.chambers.0.count');
  await expect(dialog).toContainText('site.currency');
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
});

test('the plan is as it was left when the page is opened again', async ({ page }) => {
  await enter(page, 1, 'chambers:mid', '5');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
  await expect(page.getByTestId('keeping')).toHaveText('kept in this browser');
  await page.reload();
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
  await expect(statusLine(page)).toHaveText('Your plan is as you left it.');
});

test('a browser that keeps nothing says so, and the plan can still be saved', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { value: undefined });
  });
  await openSheet(page);
  await expect(statusLine(page)).toContainText('does not keep the plan');
  await expect(page.getByTestId('keeping')).toHaveText('not kept: save it as a file');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  expect((await download).suggestedFilename()).toMatch(/\.rimeplan\.json$/);
});
