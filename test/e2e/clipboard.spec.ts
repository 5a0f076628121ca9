import type { Page } from '@playwright/test';
import { cellAt, openSheet, statusLine } from './sheet.ts';
import { expect, test } from './strict-page.ts';

async function put(page: Page, text: string): Promise<void> {
  await page.evaluate((given) => navigator.clipboard.writeText(given), text);
}

async function taken(page: Page): Promise<string> {
  return page.evaluate(() => navigator.clipboard.readText());
}

test.beforeEach(async ({ page }) => {
  await openSheet(page);
});

test('a block from another spreadsheet is pasted as one step', async ({ page }) => {
  await put(page, '4\t1\town\r\n"5"\t0\tshared\r\n');
  await cellAt(page, 1, 'chambers:mid').click();
  await page.keyboard.press('Control+v');
  await expect(statusLine(page)).toHaveText('Pasted: 6 cells changed.');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('4');
  await expect(cellAt(page, 1, 'chambers:large')).toHaveText('1');
  await expect(cellAt(page, 1, 'pumpArrangement')).toHaveText('own pump each');
  await expect(cellAt(page, 2, 'chambers:mid')).toHaveText('5');
  await page.keyboard.press('Control+z');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('3');
  await expect(cellAt(page, 2, 'chambers:mid')).toHaveText('4');
});

test('what is not understood in a block is marked, the rest is taken up', async ({ page }) => {
  await put(page, '4\n"a\tfew"\n5');
  await cellAt(page, 1, 'chambers:mid').click();
  await page.keyboard.press('Control+v');
  await expect(statusLine(page)).toHaveText('Pasted: 2 cells changed, 1 not understood: they are marked.');
  await expect(cellAt(page, 3, 'chambers:mid')).toHaveText('5');
});

test('a range is selected with Shift, copied, and a single value fills it', async ({ page }) => {
  await cellAt(page, 1, 'chambers:mid').click();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Control+c');
  expect(await taken(page)).toBe('3\t0\n4\t0');
  await put(page, '2');
  await page.keyboard.press('Control+v');
  await expect(cellAt(page, 2, 'chambers:large')).toHaveText('2');
  await expect(statusLine(page)).toHaveText('Pasted: 4 cells changed.');
});

test('a range is selected by dragging, and filled from its top', async ({ page }) => {
  await cellAt(page, 1, 'pumpArrangement').hover();
  await page.mouse.down();
  await cellAt(page, 3, 'pumpArrangement').hover();
  await page.mouse.up();
  await page.keyboard.press('Control+c');
  expect(await taken(page)).toBe('one shared\none shared\none shared');
  await cellAt(page, 0, 'pumpArrangement').click();
  await cellAt(page, 3, 'pumpArrangement').click({ modifiers: ['Shift'] });
  await page.keyboard.press('Control+d');
  await expect(cellAt(page, 3, 'pumpArrangement')).toHaveText('own pump each');
});

test('pasting into an open cell is the browser’s own affair', async ({ page }) => {
  await put(page, '7');
  await cellAt(page, 1, 'chambers:mid').click();
  await page.keyboard.press('F2');
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Control+v');
  await page.keyboard.press('Enter');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('7');
});
