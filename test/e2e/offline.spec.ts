import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { writeOfflineWorker } from '../../.tools/offline.mjs';
import { type OwnSite, test } from './own-site.ts';
import { cellAt, enter, openSheet } from './sheet.ts';
import { expect } from './strict-page.ts';

test.use({ serviceWorkers: 'allow' });

/** Waits until the browser has the whole site. */
async function untilStored(page: Page): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, { timeout: 60_000 });
}

/** Puts another build in the place of the site: its title tells it from the first. */
function update(site: OwnSite, title: string): void {
  const page = join(site.folder, 'index.html');
  writeFileSync(
    page,
    readFileSync(page, 'utf8').replace(/<html lang="en"[^>]*>/, `<html lang="en" data-build="${title}">`),
  );
  writeOfflineWorker(site.folder);
}

function root(page: Page) {
  return page.locator('html');
}

function newerLine(page: Page) {
  return page.getByRole('button', { name: 'Open it again with the newer version' });
}

test('after the first visit it opens without a network, and figures follow an edit', async ({ page, site }) => {
  test.setTimeout(180_000);
  await openSheet(page);
  await untilStored(page);
  await site.switchOff();
  await page.reload();
  await expect(cellAt(page, 1, 'batches')).not.toBeEmpty({ timeout: 60_000 });
  const before = await cellAt(page, 1, 'batches').textContent();
  await enter(page, 1, 'chambers:mid', '1');
  await expect(cellAt(page, 1, 'batches')).not.toHaveText(before ?? '', { timeout: 60_000 });
  for (const tab of await page.getByRole('tab').all()) {
    await tab.click();
    await expect(page.getByRole('tabpanel').getByRole('heading').first()).toBeVisible();
  }
});

test('a newer build waits for the page to ask, and keeps what was entered', async ({ page, site }) => {
  await openSheet(page);
  await untilStored(page);
  await enter(page, 1, 'chambers:mid', '5');
  await expect(page.getByTestId('keeping')).toHaveText('kept in this browser');
  update(site, 'second');
  await page.reload();
  await expect(newerLine(page)).toBeVisible({ timeout: 60_000 });
  await expect(root(page)).not.toHaveAttribute('data-build');
  await newerLine(page).click();
  await expect(root(page)).toHaveAttribute('data-build', 'second');
  await expect(cellAt(page, 1, 'chambers:mid')).toHaveText('5');
  await expect(newerLine(page)).toBeHidden();
  await expect.poll(() => page.evaluate(() => caches.keys())).toHaveLength(1);
});

test('a newer build is taken up at the next visit, and half an update never', async ({ page, context, site }) => {
  await openSheet(page);
  await untilStored(page);
  update(site, 'second');
  const script = join(site.folder, 'icon.svg');
  const whole = readFileSync(script, 'utf8');
  writeFileSync(script, `${whole}\n`);
  const tried = page.waitForEvent('console', (message) => message.text().includes('planted mark'));
  await page.reload();
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
    const installing = registration?.installing;
    await new Promise<void>((done) => {
      if (!installing) return done();
      installing.addEventListener('statechange', () => installing.state === 'redundant' && done());
    });
    console.info('planted mark');
  });
  await tried;
  await expect(newerLine(page)).toBeHidden();
  writeFileSync(script, whole);
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await expect(newerLine(page)).toBeVisible({ timeout: 60_000 });
  await page.close();
  const next = await context.newPage();
  // The browser takes a moment to see that no tab holds the older build any more.
  await expect(async () => {
    await next.goto('about:blank');
    await next.waitForTimeout(500);
    await next.goto('/');
    await expect(root(next)).toHaveAttribute('data-build', 'second', { timeout: 500 });
  }).toPass({ timeout: 30_000 });
});
