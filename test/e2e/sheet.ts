import type { Locator, Page } from '@playwright/test';
import { expect } from './strict-page.ts';

/** A cell by the place of its row and the id of its column. */
export function cellAt(page: Page, row: number, column: string): Locator {
  return page.locator(`.ag-row[row-index="${row}"] .ag-cell[col-id="${column}"]`);
}

export function statusLine(page: Page): Locator {
  return page.getByRole('status').first();
}

/** Opens the page and waits until its rows are there. */
export async function openSheet(page: Page): Promise<void> {
  await page.goto('/');
  await expect(cellAt(page, 5, 'name')).toContainText('Four, mostly candy');
}

/** Types a text over a cell and takes it up. */
export async function enter(page: Page, row: number, column: string, text: string): Promise<void> {
  await cellAt(page, row, column).click();
  await page.keyboard.press('F2');
  await page.keyboard.press('Control+a');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  await expect(page.locator('.ag-cell-inline-editing')).toHaveCount(0);
}

/** Waits until everything on the page has been worked out. */
export async function untilDone(page: Page): Promise<void> {
  await expect(page.getByTestId('progress')).toHaveAttribute('data-done', 'true', { timeout: 240_000 });
}
