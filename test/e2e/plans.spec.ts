import type { Page } from '@playwright/test';
import { crash } from './crash.ts';
import { cellAt, enter, openSheet, statusLine } from './sheet.ts';
import { expect, test } from './strict-page.ts';

async function kept(page: Page): Promise<void> {
  await expect(page.getByTestId('keeping')).toHaveText('kept in this browser');
}

function plansDialog(page: Page) {
  return page.getByRole('dialog', { name: 'Your plans' });
}

async function openList(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  await expect(plansDialog(page)).toBeVisible();
}

/** The names of the kept plans as the list shows them, latest first. */
async function planNames(page: Page): Promise<string[]> {
  return plansDialog(page).locator('button > span:first-child').allTextContents();
}

/** Makes a link that carries the open plan. */
async function linkOf(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Share', exact: true }).click();
  const field = page.getByRole('textbox', { name: 'Link with the plan' });
  await expect(field).toHaveValue(/#plan=1\./);
  const link = await field.inputValue();
  await page.keyboard.press('Escape');
  return link;
}

test.beforeEach(async ({ page }) => {
  await openSheet(page);
});

test('several plans are kept, renamed, copied, opened and deleted', async ({ page }) => {
  await enter(page, 1, 'chambers:mid', '5');
  await kept(page);
  await openList(page);
  const [own = ''] = await planNames(page);
  await page.getByRole('button', { name: 'New from the invented shop' }).click();
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('3');
  await kept(page);

  await openList(page);
  await expect.poll(() => planNames(page)).toEqual([`${own} 2`, own]);
  await page.getByRole('button', { name: `Rename ${own}`, exact: true }).click();
  await page.getByRole('textbox', { name: `New name of ${own}` }).fill('Mine');
  await page.keyboard.press('Enter');
  await expect(plansDialog(page)).toContainText('Mine');
  await page.getByRole('button', { name: 'Duplicate Mine' }).click();
  await expect(plansDialog(page)).toContainText('Mine 2');

  await page.getByRole('button', { name: 'Delete Mine 2' }).click();
  await expect(page.getByRole('button', { name: 'Keep it' })).toBeFocused();
  await page.getByRole('button', { name: 'Delete it' }).click();
  await expect(plansDialog(page)).not.toContainText('Mine 2');
  await expect(page.getByRole('button', { name: `Delete ${own} 2` })).toBeDisabled();

  await page.getByRole('button', { name: /^Mine/ }).click();
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
  await expect(page.getByRole('textbox', { name: 'Name of the plan' })).toHaveValue('Mine');
  await page.reload();
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
});

test('a link brings the plan to another browser, which asks first and keeps its own', async ({ page, browser }) => {
  await enter(page, 1, 'chambers:mid', '5');
  const link = await linkOf(page);
  expect(link.length).toBeLessThan(16_000);
  const other = await (await browser.newContext()).newPage();
  await openSheet(other);
  await enter(other, 1, 'chambers:mid', '7');
  await kept(other);
  await other.goto(link);
  const question = other.getByRole('dialog', { name: 'A link brings a plan' });
  await question.getByRole('button', { name: 'Open it as a new plan' }).click();
  await expect(cellAt(other, 1, 'chambers:mid')).toHaveText('5');
  expect(other.url()).not.toContain('plan=');
  await kept(other);
  await openList(other);
  await expect.poll(() => planNames(other)).toHaveLength(2);
  await plansDialog(other).locator('li').nth(1).locator('button').first().click();
  await expect(cellAt(other, 1, 'chambers:mid')).toHaveText('7');
  await other.context().close();
});

test('a damaged link says so and changes nothing', async ({ page }) => {
  const link = await linkOf(page);
  await enter(page, 1, 'chambers:mid', '7');
  await kept(page);
  await page.goto(link.slice(0, -40));
  const failure = page.getByRole('dialog', { name: 'The link was not opened' });
  await expect(failure).toContainText('damaged');
  await page.keyboard.press('Escape');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('7');
  expect(page.url()).not.toContain('plan=');
});

test('two tabs on one plan follow each other', async ({ page, context }) => {
  await enter(page, 2, 'chambers:mid', '2');
  await kept(page);
  const other = await context.newPage();
  await other.goto('/');
  await expect(cellAt(other, 2, 'chambers:mid')).toHaveText('2');
  await enter(other, 1, 'chambers:mid', '5');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
  await enter(page, 1, 'chambers:mid', '6');
  await expect(cellAt(other, 1, 'chambers:mid')).toHaveText('6');
  await expect(statusLine(other)).toContainText('Another tab has changed this plan');
  await other.keyboard.press('Control+z');
  await expect(cellAt(other, 1, 'chambers:mid')).toHaveText('5');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
});

test('tabs that cannot hear each other keep both plans', async ({ page, context }) => {
  await enter(page, 2, 'chambers:mid', '2');
  await kept(page);
  const deaf = await context.newPage();
  await deaf.addInitScript(() => Object.defineProperty(window, 'BroadcastChannel', { value: undefined }));
  await deaf.goto('/');
  await expect(cellAt(deaf, 2, 'chambers:mid')).toHaveText('2');
  await enter(page, 1, 'chambers:mid', '6');
  await kept(page);
  await enter(deaf, 1, 'chambers:mid', '7');
  await expect(statusLine(deaf)).toContainText('both are kept');
  await kept(deaf);
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('6');
  await openList(deaf);
  await expect.poll(() => planNames(deaf)).toHaveLength(2);
  await deaf.reload();
  await expect(cellAt(deaf, 1, 'chambers:mid')).toHaveText('7');
});

test('a tab that dies in the middle of an edit loses no more than a moment', async ({ page, context }) => {
  await enter(page, 1, 'chambers:mid', '5');
  await enter(page, 2, 'chambers:mid', 'lots');
  await cellAt(page, 3, 'chambers:mid').click();
  await page.keyboard.type('4+2');
  await page.waitForTimeout(1000);
  await crash(page);

  const again = await context.newPage();
  await again.goto('/');
  await expect(cellAt(again, 1, 'chambers:mid')).toHaveText('5');
  await expect(cellAt(again, 2, 'chambers:mid')).toHaveText('lots');
  await expect(cellAt(again, 3, 'chambers:mid')).toHaveText('4+2');
  await cellAt(again, 3, 'chambers:mid').click();
  await expect(again.getByTestId('cell-note')).toContainText('being typed when the page was left');
  await again.keyboard.press('Enter');
  await again.keyboard.press('Enter');
  await expect(cellAt(again, 3, 'chambers:mid')).toHaveText('6');
});

test('a store without room says so, and keeps the plan as soon as there is room', async ({ page }) => {
  await enter(page, 1, 'chambers:mid', '4');
  await kept(page);
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    Object.assign(window, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put }) });
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('The store is full.', 'QuotaExceededError');
    };
  });
  await enter(page, 1, 'chambers:mid', '5');
  await expect(page.getByTestId('keeping')).toHaveText('not kept: save it as a file');
  await expect(statusLine(page)).toContainText('The store is full');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  expect((await download).suggestedFilename()).toMatch(/\.rimeplan\.json$/);
  await page.evaluate(() => (window as unknown as { makeRoom: () => void }).makeRoom());
  await enter(page, 1, 'chambers:mid', '6');
  await kept(page);
});
