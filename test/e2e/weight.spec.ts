import { gzipSync } from 'node:zlib';
import type { Page, Response } from '@playwright/test';
import { cellAt } from './sheet.ts';
import { expect, test } from './strict-page.ts';

/**
 * Most script that may be fetched, packed as servers send it [kB]: until the sheet can be read, for the engines that run in
 * threads beside the page, and in the page's idle time. The framework takes some 140 of the first and the grid some 270 of the
 * last, whatever is done here; the rest is ours.
 */
const BUDGET = { reading: 400, engines: 90, idle: 560 };

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

interface IdleWindow extends Window {
  readonly waitingForIdle: (() => void)[];
}

/** Collects the scripts of a page; what it fetches in its idle time is held back until it is let go. */
async function holdIdle(page: Page): Promise<{ letGo: () => Promise<void>; all: () => Promise<readonly Fetched[]> }> {
  const answers: Response[] = [];
  await page.addInitScript(() => {
    const waitingForIdle: (() => void)[] = [];
    Object.assign(window, { waitingForIdle, requestIdleCallback: (call: () => void) => waitingForIdle.push(call) });
  });
  page.context().on('response', (response) => {
    if (new URL(response.url()).pathname.endsWith('.js')) answers.push(response);
  });
  return {
    letGo: () =>
      page.evaluate(() => {
        for (const call of (window as unknown as IdleWindow).waitingForIdle.splice(0)) call();
      }),
    all: async () => {
      const all = await Promise.all(answers.map(weigh));
      return [...new Map(all.map((one) => [one.name, one])).values()];
    },
  };
}

function sum(scripts: readonly Fetched[], isOfWorker: boolean): number {
  return scripts.filter((one) => one.isOfWorker === isOfWorker).reduce((total, { size }) => total + size, 0);
}

function judge(what: string, size: number, most: number): void {
  console.log(`    script ${what}: ${size.toFixed(0)} kB packed, of at most ${most} kB`);
  expect(size).toBeGreaterThan(10);
  expect(size).toBeLessThan(most);
}

test('the sheet is read with little script; what it takes to work at it, and the figures, come after', async ({
  page,
}) => {
  const fetched = await holdIdle(page);
  await page.goto('/');
  await expect(page.getByRole('row', { name: /Four, mostly candy/ })).toBeVisible();
  await expect(page.getByTestId('progress')).not.toContainText('0 of', { timeout: 60_000 });
  const first = await fetched.all();
  judge('until the sheet can be read', sum(first, false), BUDGET.reading);
  judge('of the engines beside it', sum(first, true), BUDGET.engines);
  await expect(page.locator('.ag-cell, figure')).toHaveCount(0);

  await fetched.letGo();
  await expect(cellAt(page, 5, 'name')).toContainText('Four, mostly candy');
  await expect(page.getByRole('figure').first()).toBeVisible();
  const later = (await fetched.all()).filter((one) => !first.some(({ name }) => name === one.name));
  judge('fetched in idle time, to work at it and for the figures', sum(later, false), BUDGET.idle);
});
