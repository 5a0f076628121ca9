import { cellAt, openSheet } from './sheet.ts';
import { expect, test } from './strict-page.ts';

test('a figure is taken apart with the keyboard, down to an entry of the plan', async ({ page }) => {
  await openSheet(page);
  const cell = cellAt(page, 0, 'cost.total');
  await expect(cell).toHaveText(/^\d/, { timeout: 120_000 });
  await cell.click();
  await page.keyboard.press('Control+Enter');
  const panel = page.getByRole('dialog', { name: /^Cost per batch/ });
  await expect(panel).toContainText('ingredients + packaging');

  for (const name of [
    /^c₁ Ingredients/,
    /Ingredients a week/,
    /Ingredients a week: Strawberry slices/,
    /Cost of ingredients/,
  ]) {
    const line = page.getByRole('dialog').getByRole('button', { name });
    await line.focus();
    await page.keyboard.press('Enter');
  }
  const entry = page.getByRole('dialog', { name: /^Cost of ingredients/ });
  await expect(entry).toContainText('Where it comes from');
  await expect(entry).toContainText('Products, Strawberry slices');
  await expect(entry.getByRole('heading')).toBeFocused();

  await page.keyboard.press('Backspace');
  await expect(page.getByRole('dialog', { name: /^Ingredients a week: Strawberry slices/ })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(cell).toBeFocused();
});

test('what the simulated week counts is shown with its laws, and an entry has nothing to take apart', async ({
  page,
}) => {
  await openSheet(page);
  await expect(cellAt(page, 0, 'batches')).toHaveText(/^\d/, { timeout: 120_000 });
  await cellAt(page, 0, 'batches').click();
  await page.getByRole('button', { name: 'Show the numbers' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /Strawberry slices/ })
    .click();
  await expect(page.getByRole('dialog')).toContainText('Counted in the simulated week.');
  await expect(page.getByRole('dialog').getByRole('heading', { name: 'Laws behind it' })).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).click();

  await cellAt(page, 0, 'chambers:mid').click();
  await expect(page.getByRole('button', { name: 'Show the numbers' })).toHaveCount(0);
});
