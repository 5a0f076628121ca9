import type { Page } from '@playwright/test';

/** Kills the page as a crash does: nothing in it is told. */
export async function crash(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  session.send('Page.crash').catch(() => undefined);
  await crashed;
}
