import { expect, test } from './strict-page.ts';

test('the page opens under its name', async ({ page }) => {
  await page.goto('/');
  await expect(page).toHaveTitle('Rimeplan');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});

test('nothing sticks out sideways on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 380, height: 700 });
  await page.goto('/');
  const overhang = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overhang).toBeLessThanOrEqual(0);
});

test.describe('colours', () => {
  const ground = 'rgb(239, 244, 246)';
  const night = 'rgb(14, 23, 29)';

  for (const { system, wish, expected } of [
    { system: 'light', wish: undefined, expected: ground },
    { system: 'dark', wish: undefined, expected: night },
    { system: 'dark', wish: 'light', expected: ground },
    { system: 'light', wish: 'dark', expected: night },
  ] as const) {
    test(`a ${system} system with the wish ${wish ?? 'none'}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme: system });
      await page.goto('/');
      if (wish) await page.evaluate((theme) => document.documentElement.setAttribute('data-theme', theme), wish);
      await expect(page.locator('body')).toHaveCSS('background-color', expected);
    });
  }

  test('paper is light', async ({ page }) => {
    await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
    await page.goto('/');
    await page.evaluate(() => document.documentElement.setAttribute('data-theme', 'dark'));
    await expect(page.locator('body')).toHaveCSS('color', 'rgb(21, 37, 45)');
  });
});

test.describe('a wrong address', () => {
  test.use({ expectedComplaints: [/404/] });

  test('says so and leads back', async ({ page }) => {
    const response = await page.goto('/no-such-page/');
    expect(response?.status()).toBe(404);
    await page.getByRole('link', { name: 'Back to the plan' }).click();
    await expect(page).toHaveTitle('Rimeplan');
  });
});

test('the policy is sent with the page', async ({ page }) => {
  const response = await page.goto('/');
  const policy = response?.headers()['content-security-policy'] ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).toMatch(/script-src 'self' 'sha256-/);
  expect(policy).not.toContain('unsafe-eval');
});
