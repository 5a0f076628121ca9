import { gzipSync } from 'node:zlib';
import type { Page, Response } from '@playwright/test';
import { openSheet } from './sheet.ts';
import { expect, test } from './strict-page.ts';

/**
 * Most script that may be fetched until the sheet stands, packed as servers send it [kB]. The framework takes some 140 of it
 * and the grid some 270, whatever is done here; the rest is ours. The engines run in threads beside the page.
 */
const BUDGET = { page: 560, engines: 90 };

/** What is fetched as a script, with its packed size [kB]. */
interface Fetched {
  readonly name: string;
  readonly isOfWorker: boolean;
  readonly size: number;
}

async function weigh(response: Response): Promise<Fetched> {
  const { pathname } = new URL(response.url());
  const type = response.request().resourceType();
  const isOfWorker = type !== 'script' || pathname.includes('worker');
  return { name: pathname, isOfWorker, size: gzipSync(await response.body()).length / 1000 };
}

/** Collects the scripts of a page while what it fetches in its idle time is held back. */
async function holdIdle(page: Page): Promise<() => Promise<readonly Fetched[]>> {
  const answers: Response[] = [];
  await page.addInitScript(() => Object.assign(window, { requestIdleCallback: () => 0 }));
  page.context().on('response', (response) => {
    if (new URL(response.url()).pathname.endsWith('.js')) answers.push(response);
  });
  return async () => {
    const all = await Promise.all(answers.map(weigh));
    return [...new Map(all.map((one) => [one.name, one])).values()];
  };
}

function sum(scripts: readonly Fetched[]): number {
  return scripts.reduce((total, { size }) => total + size, 0);
}

test('the sheet stands with little script, and the figures come after it', async ({ page }) => {
  const fetched = await holdIdle(page);
  await openSheet(page);
  await expect(page.getByTestId('progress')).not.toContainText('0 of', { timeout: 60_000 });
  const scripts = await fetched();
  const ofPage = sum(scripts.filter((one) => !one.isOfWorker));
  const ofEngines = sum(scripts.filter((one) => one.isOfWorker));
  console.log(`    script until the sheet stands: ${ofPage.toFixed(0)} kB packed, of at most ${BUDGET.page} kB`);
  console.log(
    `    script of the engines beside it: ${ofEngines.toFixed(0)} kB packed, of at most ${BUDGET.engines} kB`,
  );
  expect(ofPage).toBeGreaterThan(100);
  expect(ofPage).toBeLessThan(BUDGET.page);
  expect(ofEngines).toBeGreaterThan(10);
  expect(ofEngines).toBeLessThan(BUDGET.engines);
  await expect(page.getByRole('figure')).toHaveCount(0);
});
