import type { Locator, Page } from '@playwright/test';
import { crash } from './crash.ts';
import { cellAt, openSheet, statusLine } from './sheet.ts';
import { expect, test } from './strict-page.ts';

function field(page: Page, place: string): Locator {
  return page.locator(`[data-place="${place}"]`);
}

function openTab(page: Page, name: string): Promise<void> {
  return page.getByRole('tab', { name }).click();
}

function followed(page: Page, figure: string): Locator {
  return page.getByTestId('follow').locator(`[data-figure="${figure}"] dd`);
}

/** Waits until the followed figures are those of the plan as it stands. */
async function untilFollowed(page: Page): Promise<void> {
  await expect(page.getByTestId('follow')).toHaveAttribute('data-state', 'fresh', { timeout: 120_000 });
}

test('a pump’s speed is changed, the scenario’s figures follow, and undo brings both back', async ({ page }) => {
  test.setTimeout(300_000);
  await openSheet(page);
  await openTab(page, 'Pumps');
  await expect(page).toHaveURL(/#pumps$/);
  await untilFollowed(page);
  const before = await followed(page, 'batches').textContent();
  await field(page, 'pumps.@good.speed').click();
  await page.keyboard.type('9 m3/h');
  await expect(page.getByRole('complementary')).toContainText('= 9 m³/h = 5.2972 cfm');
  await page.keyboard.press('Enter');
  await expect(statusLine(page)).toContainText('Good pump with gas ballast, rated speed: 5.297 cfm');
  await expect(followed(page, 'batches')).not.toHaveText(before ?? '', { timeout: 120_000 });
  await untilFollowed(page);
  await page.keyboard.press('Control+z');
  await expect(field(page, 'pumps.@good.speed')).toContainText('7.063');
  await expect(followed(page, 'batches')).toHaveText(before ?? '', { timeout: 120_000 });
});

test('a bad entry stays marked until it is mended, and blocks go in and out', async ({ page }) => {
  await openSheet(page);
  await openTab(page, 'Pumps');
  await field(page, 'pumps.@small.price').click();
  await page.keyboard.type('lots');
  await page.keyboard.press('Enter');
  await expect(field(page, 'pumps.@small.price')).toHaveAttribute('aria-invalid', 'true');
  await openTab(page, 'Hoses');
  await expect(page.getByRole('tab', { name: 'Pumps' })).toContainText('1 entry to mend');
  await openTab(page, 'Pumps');
  await expect(field(page, 'pumps.@small.price')).toContainText('lots');
  await field(page, 'pumps.@small.price').click();
  await page.keyboard.press('Escape');
  await expect(field(page, 'pumps.@small.price')).toContainText('900');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Control+c');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Control+v');
  await expect(field(page, 'pumps.@good.price')).toContainText('900');
  await expect(field(page, 'pumps.@good.usefulLife')).toContainText('4');
  await page.getByRole('button', { name: 'Take out Good pump with gas ballast' }).click();
  await expect(statusLine(page)).toContainText('This pump type is in use');
  await page.getByRole('radio', { name: 'SI' }).check({ force: true });
  await expect(page.getByRole('rowheader', { name: 'Rated speed m³/h' })).toBeVisible();
});

test('five answers make a plan of one’s own', async ({ page }) => {
  await openSheet(page);
  await page.getByRole('button', { name: 'Start my own' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Make my plan' }).click();
  await expect(dialog).toContainText('Nothing is chosen.');
  await dialog.getByLabel('Mangoes').check();
  await dialog.getByLabel('Chambers', { exact: true }).fill('2');
  await dialog.getByLabel('Tray area of one').fill('4*4');
  await dialog.getByLabel('one for all').check();
  await dialog.getByLabel('Price of the dried product').fill('35');
  await dialog.getByRole('button', { name: 'Make my plan' }).click();
  await expect(cellAt(page, 0, 'name')).toContainText('Today');
  await expect(cellAt(page, 2, 'name')).toContainText('Twice');
  await expect(cellAt(page, 0, 'batches')).not.toBeEmpty({ timeout: 60_000 });
  await openTab(page, 'Chambers');
  await expect(field(page, 'chambers.@chamber.shelfArea')).toContainText('16');
  await expect(field(page, 'chambers.@chamber.volume')).toContainText('guess');
});

test('tabs and cells are gone about by keys', async ({ page }) => {
  await openSheet(page);
  await page.getByRole('tab', { name: 'Scenarios' }).focus();
  await page.keyboard.press('End');
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Products' })).toHaveAttribute('aria-selected', 'true');
  await expect(page.getByRole('tab', { name: 'Products' })).toBeFocused();
  await field(page, 'products.@strawberries.name').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('F2');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(field(page, 'products.@strawberries.form')).toContainText('poured');
  await expect(field(page, 'products.@strawberries.preFrozen')).toBeFocused();
  await field(page, 'products.@strawberries.price').click();
  await page.keyboard.type('31');
  await page.keyboard.press('ArrowRight');
  await expect(field(page, 'products.@sweetcorn.price')).toBeFocused();
  await expect(field(page, 'products.@strawberries.price')).toContainText('31');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('grid').locator(':focus')).toHaveCount(0);
});

test('a tab that dies while a catalogue cell is open keeps what was typed', async ({ page, context }) => {
  await openSheet(page);
  await openTab(page, 'Pumps');
  await field(page, 'pumps.@small.price').click();
  await page.keyboard.type('2*450');
  await page.waitForTimeout(1000);
  await crash(page);

  const again = await context.newPage();
  await again.goto('/#pumps');
  const price = field(again, 'pumps.@small.price');
  await expect(price).toContainText('2*450');
  await expect(price).toHaveAttribute('aria-invalid', 'true');
  await price.click();
  await expect(again.getByRole('complementary')).toContainText('being typed when the page was left');
  await again.keyboard.press('Enter');
  await again.keyboard.press('Enter');
  await expect(price).not.toHaveAttribute('aria-invalid');
  await expect(price).toContainText('900');
});
