import type { Page } from '@playwright/test';
import { CLIPBOARD } from '../fixtures/clipboard.ts';
import { cellAt, enter, openSheet, statusLine } from './sheet.ts';
import { expect, test } from './strict-page.ts';

async function press(page: Page, ...keys: string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

/** The names of the rows from top to bottom, without the signs beside them. */
async function names(page: Page): Promise<string[]> {
  return page.locator('.ag-cell[col-id="name"] [class*="nameText"]').allTextContents();
}

async function put(page: Page, text: string): Promise<void> {
  await page.evaluate((given) => navigator.clipboard.writeText(given), text);
}

/** Opens the menu of the cell in focus with a key and presses one of its lines. */
async function choose(page: Page, line: string): Promise<void> {
  await page.keyboard.press('Shift+F10');
  await page.getByRole('button', { name: line, exact: true }).click();
}

test.beforeEach(async ({ page }) => {
  await openSheet(page);
});

test('arrows, Tab, Enter and Ctrl with arrows go where they do in any sheet', async ({ page }) => {
  const count = cellAt(page, 1, 'chambers:mid');
  await count.click();
  await press(page, 'Control+ArrowDown');
  await expect(cellAt(page, 5, 'chambers:mid')).toBeFocused();
  await press(page, 'Control+ArrowLeft');
  await expect(cellAt(page, 5, 'name')).toBeFocused();
  await count.click();
  await page.keyboard.type('4');
  await press(page, 'Tab');
  await expect(cellAt(page, 1, 'chambers:large')).toBeFocused();
  await expect(page.locator('.ag-cell-inline-editing')).toHaveCount(0);
  await expect(count).toHaveText('4');
  await count.click();
  await page.keyboard.type('5');
  await press(page, 'ArrowDown');
  await expect(cellAt(page, 2, 'chambers:mid')).toBeFocused();
  await expect(count).toHaveText('5');
  await press(page, 'Control+z');
  await expect(count).toHaveText('4');
});

test('ranges are stretched with Shift to ends and edges, and filled with Delete', async ({ page }) => {
  await cellAt(page, 1, 'chambers:mid').click();
  await press(page, 'Control+Shift+ArrowDown', 'Control+c');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('3\n4\n6\n6\n4');
  await cellAt(page, 1, 'pumpArrangement').click();
  await press(page, 'Shift+ArrowDown', 'Delete');
  await expect(statusLine(page)).toHaveText('2 cells set back.');
  await cellAt(page, 1, 'chambers:mid').click();
  await press(page, 'Control+d');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('2');
});

test('a range is drawn out by its corner', async ({ page }) => {
  await cellAt(page, 1, 'chambers:mid').click();
  const corner = await cellAt(page, 1, 'chambers:mid').boundingBox();
  const target = await cellAt(page, 3, 'chambers:mid').boundingBox();
  if (!corner || !target) throw new Error('the cells are not on screen');
  await page.mouse.move(corner.x + corner.width - 4, corner.y + corner.height - 4);
  await page.mouse.down();
  await page.mouse.move(target.x + 20, target.y + 10, { steps: 5 });
  await page.mouse.up();
  await expect(statusLine(page)).toHaveText('2 cells changed.');
  await expect(cellAt(page, 3, 'chambers:mid')).toHaveText('3');
  await press(page, 'Control+z');
  await expect(cellAt(page, 3, 'chambers:mid')).toHaveText('6');
});

test('amounts come in as other spreadsheets write them', async ({ page }) => {
  await page.getByLabel('All columns').check();
  await put(page, CLIPBOARD.amounts);
  await cellAt(page, 1, 'extraCapital').click();
  await press(page, 'Control+v');
  await expect(statusLine(page)).toHaveText('Pasted: 4 cells changed.');
  await expect(cellAt(page, 1, 'extraCapital')).toHaveText('1,235');
  await expect(cellAt(page, 2, 'extraCapital')).toHaveText('5,000');
  await expect(cellAt(page, 3, 'extraCapital')).toHaveText('−1,235');
  await expect(cellAt(page, 4, 'extraCapital')).toHaveText('13,700');
});

test('rows are inserted, dragged and brought back', async ({ page }) => {
  await cellAt(page, 1, 'chambers:mid').click();
  await press(page, 'Alt+Insert');
  await expect.poll(() => names(page)).toContain('Scenario 2');
  expect((await names(page))[2]).toBe('Scenario 2');
  await press(page, 'Control+z');
  await expect.poll(async () => (await names(page)).length).toBe(6);
  const handle = await page.locator('.ag-row[row-index="1"] .ag-row-drag').boundingBox();
  const target = await cellAt(page, 4, 'name').boundingBox();
  if (!handle || !target) throw new Error('the rows are not on screen');
  await page.mouse.move(handle.x + 4, handle.y + 8);
  await page.mouse.down();
  await page.mouse.move(handle.x + 10, handle.y + 30, { steps: 4 });
  await page.mouse.move(target.x + 30, target.y + 10, { steps: 8 });
  await page.mouse.up();
  await expect.poll(async () => (await names(page))[4]).toBe('Three on one pump');
  await press(page, 'Control+z');
  await expect.poll(async () => (await names(page))[1]).toBe('Three on one pump');
});

test('a note is written with the keyboard, marked, kept and taken away', async ({ page }) => {
  const cell = cellAt(page, 2, 'pumpArrangement');
  await cell.click();
  await press(page, 'Shift+F2');
  await page.keyboard.type('ask for a quote');
  await press(page, 'Control+Enter');
  await expect(cell).toHaveClass(/noted/);
  await expect(page.getByTestId('cell-note')).toContainText('Note: ask for a quote');
  await expect(page.getByTestId('keeping')).toHaveText('kept in this browser');
  await page.reload();
  await expect(cell).toHaveClass(/noted/);
  await cell.click();
  await press(page, 'Shift+F2');
  await page.getByRole('button', { name: 'Remove the note' }).click();
  await expect(cell).not.toHaveClass(/noted/);
  await press(page, 'Control+z');
  await expect(cell).toHaveClass(/noted/);
});

test('sorting, filters, hidden and moved columns are remembered, and undo leaves them alone', async ({ page }) => {
  await cellAt(page, 1, 'chambers:mid').click();
  await choose(page, 'Sort, largest first');
  await expect
    .poll(() => names(page))
    .toEqual([
      'Today',
      'Six on one pump',
      'Six on two pumps',
      'Four on one pump',
      'Four, mostly candy',
      'Three on one pump',
    ]);
  await cellAt(page, 1, 'chambers:mid').click();
  await press(page, 'Alt+ArrowDown');
  await expect(statusLine(page)).toContainText('are sorted');
  await press(page, 'Shift+F10');
  await page.getByRole('textbox', { name: /^Show only rows/ }).fill('<6');
  await press(page, 'Enter');
  await expect
    .poll(() => names(page))
    .toEqual(['Today', 'Four on one pump', 'Four, mostly candy', 'Three on one pump']);
  await cellAt(page, 1, 'chambers:large').click();
  await choose(page, 'Hide the column');
  await expect(cellAt(page, 1, 'chambers:large')).toHaveCount(0);
  await cellAt(page, 1, 'pumpArrangement').click();
  await press(page, 'Alt+Shift+ArrowRight');
  const order = () =>
    page
      .locator('.ag-row[row-index="1"] .ag-cell')
      .evaluateAll((cells) => cells.map((one) => one.getAttribute('col-id')));
  await expect.poll(async () => (await order()).indexOf('pumpArrangement')).toBe(3);
  await page.reload();
  await expect.poll(() => names(page)).toHaveLength(4);
  expect((await order()).slice(0, 4)).toEqual(['name', 'chambers:mid', 'mix', 'pumpArrangement']);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await page.getByRole('button', { name: 'Show all as in the plan' }).click();
  await expect.poll(() => names(page)).toHaveLength(6);
  await page.getByRole('button', { name: 'Columns', exact: true }).click();
  await page.getByRole('button', { name: 'As usual' }).click();
  await press(page, 'Escape');
  await expect(cellAt(page, 1, 'chambers:large')).toBeVisible();
});

test('scenarios stand side by side as columns, and are edited there too', async ({ page }) => {
  const at = (line: string, id: string) => page.locator(`.ag-row[row-id="${line}"] .ag-cell[col-id="${id}"]`);
  await expect(cellAt(page, 1, 'capital')).toHaveText(/\d/, { timeout: 60_000 });
  const capital = (await cellAt(page, 1, 'capital').textContent()) ?? '';
  await page.getByRole('radio', { name: 'As columns' }).check();
  await expect(at('capital', 'three-shared')).toHaveText(capital);
  await at('chambers:mid', 'four-shared').click();
  await page.keyboard.type('5');
  await press(page, 'Tab');
  await expect(at('chambers:mid', 'six-shared')).toBeFocused();
  await expect(at('chambers:mid', 'four-shared')).toHaveText('5');
  await press(page, 'Shift+ArrowLeft', 'Shift+ArrowDown', 'Shift+ArrowDown', 'Control+c');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('5\t6\n0\t0\none shared\tone shared');
  await put(page, '2\t3');
  await at('chambers:mid', 'three-shared').click();
  await press(page, 'Control+v');
  await expect(at('chambers:mid', 'four-shared')).toHaveText('3');
  await press(page, 'Control+z');
  await expect(at('chambers:mid', 'four-shared')).toHaveText('5');
  await expect(page.getByTestId('keeping')).toHaveText('kept in this browser');
  await page.reload();
  await expect(at('chambers:mid', 'four-shared')).toHaveText('5');
});

test('work is stopped, what there was stays, and it goes on', async ({ page }) => {
  const progress = page.getByTestId('progress');
  await enter(page, 0, 'chambers:mid', '3');
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await expect(progress).toContainText('Stopped:');
  await page.getByRole('button', { name: 'Go on', exact: true }).click();
  await expect(progress).not.toContainText('Stopped');
  await expect(cellAt(page, 0, 'batches')).toHaveText(/\d/, { timeout: 60_000 });
});
