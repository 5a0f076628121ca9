import { test as base, expect } from '@playwright/test';
import { collectComplaints, judgeComplaints } from './complaints.ts';

/** The plain test function with a list of complaints beside it that nothing judges. */
const test = base.extend<{ complaints: string[] }>({
  complaints: async ({ context, baseURL }, use) => {
    const complaints: string[] = [];
    collectComplaints(context, new URL(baseURL ?? '').origin, complaints);
    await use(complaints);
  },
});

test.describe('is written down', () => {
  test('a console error', async ({ page, complaints }) => {
    await page.goto('/');
    await page.evaluate(() => console.error('planted'));
    await expect.poll(() => complaints).toEqual(['console error: planted']);
  });

  test('an error nobody caught', async ({ page, complaints }) => {
    await page.goto('/');
    await page.evaluate(() => void setTimeout(() => Promise.reject(new Error('planted')), 0));
    await expect.poll(() => complaints).toEqual([expect.stringContaining('page error: Error: planted')]);
  });

  test('a request to another place', async ({ page, complaints }) => {
    // The page's own policy stops such a request, so it is sent from a page without one.
    await page.route('**/bare', (route) => route.fulfill({ contentType: 'text/html', body: '<!doctype html>' }));
    await page.route('http://other.invalid/**', (route) => route.fulfill({ body: '' }));
    await page.goto('/bare');
    await page.evaluate(() => fetch('http://other.invalid/a', { mode: 'no-cors' }));
    await expect.poll(() => complaints).toEqual(['request to another place: http://other.invalid/a']);
  });

  test('what the policy forbids', async ({ page, complaints }) => {
    await page.goto('/');
    await page.evaluate(() => document.head.append(Object.assign(document.createElement('script'), { text: '1' })));
    // Once for the policy that came with the page, once for the one that stands in it.
    const forbidden = expect.stringContaining('Content Security Policy');
    await expect.poll(() => complaints).toEqual([forbidden, forbidden]);
  });
});

test('only what was expected passes, and all of it must come', () => {
  expect(judgeComplaints([], [])).toEqual([]);
  expect(judgeComplaints(['a 404'], [/404/])).toEqual([]);
  expect(judgeComplaints(['a 404', 'other'], [/404/])).toEqual(['other']);
  expect(judgeComplaints([], [/404/])).toEqual(['expected and did not come: /404/']);
});
