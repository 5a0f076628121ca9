import { test as base, expect } from '@playwright/test';
import { collectComplaints, judgeComplaints } from './complaints.ts';

interface Options {
  /** Complaints that a test brings about on purpose; each must turn up. */
  readonly expectedComplaints: readonly RegExp[];
}

/** The test function of all browser tests: it fails a test whose pages complain or ask anything of another place. */
export const test = base.extend<Options>({
  expectedComplaints: [[], { option: true }],
  context: async ({ context, baseURL, expectedComplaints }, use) => {
    const complaints: string[] = [];
    collectComplaints(context, new URL(baseURL ?? '').origin, complaints);
    // What the policy stops is not always said in the console: code that only tries whether it may evaluate text is not.
    await context.addInitScript(() =>
      document.addEventListener('securitypolicyviolation', (event) =>
        console.error(`against the policy: ${event.violatedDirective} ${event.blockedURI}`),
      ),
    );
    await use(context);
    expect(judgeComplaints(complaints, expectedComplaints), 'the pages must not complain').toEqual([]);
  },
});

export { expect };
