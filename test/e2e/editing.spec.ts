import { cellAt, enter, openSheet, statusLine, untilDone } from './sheet.ts';
import { expect, test } from './strict-page.ts';

test.beforeEach(async ({ page }) => {
  await openSheet(page);
});

test('an edit is undone and done again', async ({ page }) => {
  const count = cellAt(page, 1, 'chambers:mid');
  await enter(page, 1, 'chambers:mid', '4+1');
  await expect(count).toHaveText('5');
  await expect(statusLine(page)).toContainText('mid-size chambers: 5 (understood from "4+1")');
  await page.keyboard.press('Control+z');
  await expect(count).toHaveText('3');
  await page.keyboard.press('Control+y');
  await expect(count).toHaveText('5');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(count).toHaveText('3');
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

test('a bad entry stays in its cell with what mends it, and the other rows go on', async ({ page }) => {
  const count = cellAt(page, 1, 'chambers:mid');
  await enter(page, 1, 'chambers:mid', 'lots');
  await expect(count).toHaveText('lots');
  await expect(statusLine(page)).toContainText('Write a number');
  await expect(page.getByRole('region', { name: 'Before you rely on this' })).toContainText('"lots"');
  await count.click();
  await expect(page.getByTestId('cell-note')).toContainText('Write a number');

  await enter(page, 2, 'chambers:mid', '5');
  await expect(cellAt(page, 2, 'chambers:mid')).toHaveText('5');
  await expect(count).toHaveText('lots');
  await expect(cellAt(page, 2, 'batches')).toHaveText(/^\d/, { timeout: 60_000 });

  await enter(page, 1, 'chambers:mid', '4');
  await expect(count).toHaveText('4');
  await expect(page.getByRole('region', { name: 'Before you rely on this' })).not.toContainText('"lots"');
});

test('what is understood is said while it is typed', async ({ page }) => {
  await page.getByLabel('All columns').check();
  await cellAt(page, 1, 'extraCapital').click();
  await page.keyboard.type('3*4500+200');
  await expect(page.getByTestId('cell-note')).toHaveText('= $13,700');
  await page.keyboard.press('Escape');
  await expect(cellAt(page, 1, 'extraCapital')).toHaveText('0');
});

test('figures are there with Enter when there was time to work them out while it was typed', async ({ page }) => {
  await page.getByLabel('All columns').check();
  await untilDone(page);
  const capital = cellAt(page, 1, 'capital');
  const before = await capital.textContent();
  await cellAt(page, 1, 'extraCapital').click();
  await page.keyboard.type('5000');
  await page.waitForTimeout(4000);
  await capital.evaluate((cell) => {
    const seen: string[] = [];
    Object.assign(globalThis, { seen });
    new MutationObserver(() => seen.push(cell.className)).observe(cell, { attributes: true });
  });
  await page.keyboard.press('Enter');
  await expect(capital).not.toHaveText(before ?? '');
  const seen = await page.evaluate(() => (globalThis as unknown as { seen: string[] }).seen);
  expect(seen.filter((name) => /stale/.test(name))).toEqual([]);
});

test('a choice is made with the keyboard', async ({ page }) => {
  await cellAt(page, 1, 'pumpArrangement').click();
  await page.keyboard.press('Enter');
  await page.getByRole('combobox', { name: 'Pumps, Three on one pump' }).selectOption('own pump each');
  await expect(cellAt(page, 1, 'pumpArrangement')).toHaveText('own pump each');
});

test('rows are copied, moved and deleted with keys, and come back', async ({ page }) => {
  const names = page.locator('.ag-cell[col-id="name"]');
  await cellAt(page, 1, 'chambers:mid').click();
  await page.keyboard.press('Alt+Enter');
  await expect(names.nth(2)).toContainText('Three on one pump 2');
  await page.keyboard.press('Alt+ArrowDown');
  await expect(names.nth(3)).toContainText('Three on one pump 2');
  await page.keyboard.press('Alt+Delete');
  await expect(names).toHaveCount(6);
  await page.keyboard.press('Control+z');
  await expect(names).toHaveCount(7);
  await cellAt(page, 0, 'chambers:mid').click();
  await page.keyboard.press('Alt+Delete');
  await expect(statusLine(page)).toContainText('the others are judged against it');
  await expect(names).toHaveCount(7);
});

test('Home and End stay in their row', async ({ page }) => {
  await cellAt(page, 2, 'chambers:mid').click();
  await page.keyboard.press('End');
  await expect(cellAt(page, 2, 'bottleneck')).toBeFocused();
  await page.keyboard.press('Home');
  await expect(cellAt(page, 2, 'name')).toBeFocused();
  await page.keyboard.press('Control+End');
  await expect(cellAt(page, 5, 'bottleneck')).toBeFocused();
});

test('units switch everywhere at once', async ({ page }) => {
  await expect(cellAt(page, 0, 'dryOut')).toHaveText(/^\d/, { timeout: 60_000 });
  const pounds = Number(await cellAt(page, 0, 'dryOut').textContent());
  await page.getByRole('radio', { name: 'SI' }).check();
  await expect(page.locator('.ag-header-cell[col-id="dryOut"]')).toContainText('kg');
  const kilograms = Number(await cellAt(page, 0, 'dryOut').textContent());
  expect(pounds / kilograms).toBeCloseTo(2.2046, 1);
  await page.keyboard.press('Control+z');
  await expect(page.locator('.ag-header-cell[col-id="dryOut"]')).toContainText('lb');
});
