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
    await use(context);
    expect(judgeComplaints(complaints, expectedComplaints), 'the pages must not complain').toEqual([]);
  },
});

export { expect };
