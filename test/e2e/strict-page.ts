import { type BrowserContext, test as base, expect } from '@playwright/test';

interface Options {
  /** Complaints that a test brings about on purpose; each must turn up. */
  readonly expectedComplaints: readonly RegExp[];
}

/** Writes down everything that must not happen while a page is open: errors, warnings of the policy, foreign requests. */
function collectComplaints(context: BrowserContext, origin: string, complaints: string[]): void {
  context.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`console error: ${message.text()}`);
  });
  context.on('weberror', (error) => complaints.push(`page error: ${error.error().stack ?? error.error().message}`));
  context.on('request', (request) => {
    const url = request.url();
    const local = url.startsWith(origin) || /^(?:blob|data|about):/.test(url);
    if (!local) complaints.push(`request to another place: ${url}`);
  });
}

/** The test function of all browser tests: it fails a test whose pages complain or ask anything of another place. */
export const test = base.extend<Options>({
  expectedComplaints: [[], { option: true }],
  context: async ({ context, baseURL, expectedComplaints }, use) => {
    const complaints: string[] = [];
    collectComplaints(context, new URL(baseURL ?? '').origin, complaints);
    await use(context);
    const unexpected = complaints.filter((text) => !expectedComplaints.some((pattern) => pattern.test(text)));
    expect(unexpected, 'the pages must not complain').toEqual([]);
    const missing = expectedComplaints.filter((pattern) => !complaints.some((text) => pattern.test(text)));
    expect(missing.map(String), 'every complaint expected must turn up').toEqual([]);
  },
});

export { expect };
