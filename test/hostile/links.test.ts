import fc from 'fast-check';
import { expect, it } from 'vitest';
import { toBase64Url } from '../../lib/io/base64-url.ts';
import { deflateText } from '../../lib/io/deflate-text.ts';
import { planInFragment } from '../../lib/io/plan-link.ts';
import { linkWords } from '../../lib/views/link-words.ts';
import { hostileText } from './hostile-text.ts';
import { smallPlanText } from './small-plan.ts';
import { expectUntouched } from './untouched.ts';

async function around(text: string): Promise<string> {
  return `#plan=1.${toBase64Url(await deflateText(text))}`;
}

/** What must hold of every fragment: a plan, or words. */
async function expectTakenOrTold(fragment: string): Promise<boolean> {
  const read = await planInFragment(fragment);
  if (read.ok) return true;
  const lines = linkWords(read.error);
  expect(lines.length).toBeGreaterThan(0);
  for (const { problem, remedy } of lines) expect(`${problem} ${remedy}`).toMatch(/\. .+\.$/s);
  return false;
}

it('a link damaged anywhere is told of', async () => {
  const whole = await around(smallPlanText());
  expect(await expectTakenOrTold(whole)).toBe(true);
  let taken = 0;
  const cut = fc.record({
    at: fc.nat(whole.length),
    length: fc.integer({ min: 0, max: 20 }),
    put: fc.oneof(hostileText, fc.base64String({ maxLength: 12 })),
  });
  await fc.assert(
    fc.asyncProperty(cut, async ({ at, length, put }) => {
      const hurt = whole.slice(0, at) + put + whole.slice(at + length);
      if (hurt !== whole && (await expectTakenOrTold(hurt))) taken += 1;
    }),
    { numRuns: 7000 },
  );
  // Only the spare bits of the last letter may change without harm.
  expect(taken).toBeLessThan(20);
  expectUntouched();
});

it('any text packed as a link is told of', async () => {
  await fc.assert(
    fc.asyncProperty(fc.oneof(hostileText, fc.json()), async (text) => {
      expect(await expectTakenOrTold(await around(text))).toBe(false);
    }),
    { numRuns: 1500 },
  );
  expectUntouched();
});

it('any bytes and any letters behind the mark are told of', async () => {
  const bytes = fc.uint8Array({ maxLength: 300 }).map((data) => `#plan=1.${toBase64Url(data)}`);
  await fc.assert(
    fc.asyncProperty(
      fc.oneof(
        bytes,
        hostileText.map((text) => `#plan=${text}`),
      ),
      async (fragment) => {
        expect(await expectTakenOrTold(fragment)).toBe(false);
      },
    ),
    { numRuns: 1500 },
  );
});

it.each([
  ['blanks', () => ' '.repeat(30_000_000)],
  ['brackets', () => '['.repeat(30_000_000)],
  ['a list without end', () => `{"format":"rimeplan-plan","version":1,"products":[${'0,'.repeat(2_000_000)}0]}`],
])('a few letters that unpack to %s without end are stopped', async (_name, text) => {
  const fragment = await around(text());
  expect(fragment.length).toBeLessThan(60_000);
  expect(await expectTakenOrTold(fragment)).toBe(false);
});
