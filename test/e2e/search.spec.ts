import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { statusLine } from './sheet.ts';
import { expect, test } from './strict-page.ts';

/** Opens the search and narrows it down to two chambers on small pumps, so that it is over in a moment. */
async function openSmallSearch(page: Page): Promise<void> {
  await page.goto('/#search');
  await expect(page.getByRole('heading', { name: 'Find options' })).toBeVisible();
  await page.getByLabel('Budget').fill('$6,000');
  await page.getByLabel('Chambers in all, at most').fill('2');
}

test('a small search ends with a proof, and what it finds goes to the sheet and back again', async ({ page }) => {
  await openSmallSearch(page);
  await expect(page.getByText('8 ways to set up the shop.')).toBeVisible();
  await page.getByRole('button', { name: 'Find options' }).click();
  await expect(page.getByText('Finished:')).toBeVisible({ timeout: 150_000 });
  await expect(page.getByText('Nothing is left to look at')).toBeVisible();
  await expect(page.getByText('cost more than the budget').first()).toBeVisible();
  const figure = page.locator('[data-figure="Options"]');
  await expect(figure.getByRole('heading', { name: 'Worth most' })).toBeVisible();
  await expect(figure.getByRole('button', { name: 'CSV' })).toBeVisible();
  const axe = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
  expect(axe.violations.map((violation) => violation.id)).toEqual([]);

  const send = page.getByRole('button', { name: /^To the sheet/ });
  await send.first().focus();
  await page.keyboard.press('Enter');
  await expect(statusLine(page)).toContainText('is in the sheet');
  await page.getByRole('tab', { name: 'Scenarios' }).click();
  const found = page.locator('.ag-row[row-index="6"] .ag-cell[col-id="name"]');
  await expect(found).toContainText('Found: 2 × Mid-size chamber');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(found).toHaveCount(0);
  await page.getByRole('tab', { name: 'Find options' }).click();
  await expect(page.getByText('Finished:')).toBeVisible();
});

test('a search can be stopped, and says that it is not proven', async ({ page }) => {
  await page.goto('/#search');
  await page.getByLabel('Power supply').fill('');
  await page.getByLabel('Circuits for machines').fill('');
  await page.getByRole('button', { name: 'Find options' }).click();
  await expect(page.getByText('worked out so far')).toBeVisible({ timeout: 120_000 });
  await page.locator('main').getByRole('button', { name: 'Stop' }).last().click();
  await expect(page.getByText('Stopped:')).toBeVisible();
  await expect(page.getByText('Not proven yet')).toBeVisible();
  await page.getByLabel('Budget').fill('a lot');
  await expect(page.getByText('Some entries cannot be read')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Find options' })).toBeDisabled();
});

test('the search is readable on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 380, height: 700 });
  await page.goto('/#search');
  await expect(page.getByRole('button', { name: 'Find options' })).toBeVisible();
  const overhang = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overhang).toBeLessThanOrEqual(0);
});
