import { test } from './strict-page.ts';

// These tests must fail: they show that the strict page lets nothing pass.
test.describe('the strict page fails a test', () => {
  test.fail();

  test('on a console error', async ({ page }) => {
    await page.goto('/');
    await page.evaluate(() => console.error('planted'));
  });

  test('on an error nobody caught', async ({ page }) => {
    await page.goto('/');
    await page.evaluate(() => void setTimeout(() => Promise.reject(new Error('planted')), 0));
    await page.waitForEvent('pageerror', { timeout: 5_000 }).catch(() => undefined);
  });

  test('on a request to another place', async ({ page }) => {
    await page.goto('/');
    await page.evaluate(() => fetch('http://other.invalid/').catch(() => undefined));
  });

  test.describe('that expects a complaint', () => {
    test.use({ expectedComplaints: [/never said/] });

    test('when it does not come', async ({ page }) => {
      await page.goto('/');
    });
  });
});
