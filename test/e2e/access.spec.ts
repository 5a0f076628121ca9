import AxeBuilder from '@axe-core/playwright';
import { goToFigure, READY_FIGURES } from './figures.ts';
import { cellAt, enter, openSheet, untilDone } from './sheet.ts';
import { expect, test } from './strict-page.ts';

for (const colorScheme of ['light', 'dark'] as const) {
  test(`nothing stands in the way of anyone, ${colorScheme}`, async ({ page }) => {
    test.setTimeout(300_000);
    await page.emulateMedia({ colorScheme });
    await openSheet(page);
    await enter(page, 1, 'chambers:mid', 'lots');
    await page.getByLabel('All columns').check();
    await untilDone(page);
    for (const name of READY_FIGURES) await goToFigure(page, name);
    for (const summary of await page.locator('details > summary').all()) await summary.click();
    const results = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
    expect(results.violations.map((violation) => [violation.id, violation.nodes.map((node) => node.html)])).toEqual([]);
  });
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`nothing stands in the way in the other parts, ${colorScheme}`, async ({ page }) => {
    test.setTimeout(300_000);
    await page.emulateMedia({ colorScheme });
    await openSheet(page);
    const found: string[] = [];
    // Parts are built alike and colours are tested by themselves, so each part is looked at in one scheme only.
    const parts = (await page.getByRole('tab').allTextContents()).slice(1);
    for (const name of parts.filter((_, place) => (place % 2 === 0) === (colorScheme === 'light'))) {
      await page.getByRole('tab', { name, exact: true }).click();
      const cell = page.getByRole('gridcell').first();
      if (await cell.isVisible({ timeout: 2000 }).catch(() => false)) {
        await cell.click();
        await page.keyboard.type('?');
        await page.keyboard.press('Enter');
      }
      const results = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
      found.push(...results.violations.map((one) => `${name}: ${one.id} ${one.nodes[0]?.html}`));
    }
    expect(found).toEqual([]);
  });
}

test('every chart has its finding as a name, and its figures as a table', async ({ page }) => {
  test.setTimeout(300_000);
  await openSheet(page);
  await untilDone(page);
  for (const name of READY_FIGURES) await goToFigure(page, name);
  const figures = await page.getByRole('figure').all();
  // Of the pumps the comparison is a table, and their failures are a figure of its own.
  expect(figures.length).toBeGreaterThanOrEqual(READY_FIGURES.length);
  for (const figure of figures) {
    await expect(figure.getByRole('heading', { level: 3 })).not.toBeEmpty();
    await figure.locator('summary').click();
    await expect(figure.locator('tbody tr').first()).toBeVisible();
  }
});

test('the page is read on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 380, height: 800 });
  await openSheet(page);
  const week = await goToFigure(page, 'A typical week');
  await expect(week.locator('svg[role="img"]')).toBeVisible({ timeout: 60_000 });
  const overhang = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overhang).toBeLessThanOrEqual(0);
  await page.evaluate(() => window.scrollTo(0, 0));
  await expect(cellAt(page, 0, 'name')).toBeInViewport();
});

test('typing never waits for the engine', async ({ page }) => {
  await openSheet(page);
  // The engine is at work on six rows by now; the cell takes up the entry all the same.
  await enter(page, 1, 'chambers:mid', '5');
  await enter(page, 1, 'chambers:mid', '6');
  await enter(page, 1, 'chambers:mid', '7');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('7', { timeout: 2000 });
  await expect(page.getByTestId('progress')).toHaveAttribute('data-done', 'false');
});
