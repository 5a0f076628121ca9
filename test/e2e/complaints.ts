import type { BrowserContext } from '@playwright/test';

/** Writes down everything that must not happen while a page is open: errors, warnings of the policy, foreign requests. */
export function collectComplaints(context: BrowserContext, origin: string, complaints: string[]): void {
  context.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`console error: ${message.text()}`);
  });
  context.on('weberror', (error) => complaints.push(`page error: ${error.error().stack ?? error.error().message}`));
  context.on('request', (request) => {
    const url = request.url();
    const local = url.startsWith(`${origin}/`) || /^(?:blob|data|about):/.test(url);
    if (!local) complaints.push(`request to another place: ${url}`);
  });
}

/** What is wrong with a list of complaints: those that nobody expected, and those expected that did not come. */
export function judgeComplaints(complaints: readonly string[], expected: readonly RegExp[]): string[] {
  const unexpected = complaints.filter((text) => !expected.some((pattern) => pattern.test(text)));
  const missing = expected.filter((pattern) => !complaints.some((text) => pattern.test(text)));
  return [...unexpected, ...missing.map((pattern) => `expected and did not come: ${pattern}`)];
}
