import type { Locator, Page } from '@playwright/test';
import { expect } from './strict-page.ts';

/** Goes to a figure by the index over the figures; it is drawn when its place comes near the window. */
export async function goToFigure(page: Page, name: string): Promise<Locator> {
  await page.getByRole('navigation', { name: 'Figures' }).getByRole('button', { name, exact: true }).click();
  const figure = page.locator(`[data-figure="${name}"]`);
  await expect(figure).toBeVisible();
  await expect(figure).not.toHaveAttribute('data-pending', 'true', { timeout: 120_000 });
  return figure;
}

/** Figures that are drawn without being asked for, in the order of the page. */
export const READY_FIGURES = [
  'Payback',
  'What a batch costs',
  'A typical week',
  'Where a batch’s hours go',
  'Chambers against output',
  'What jams',
  'Shared pump or own pumps',
] as const;
