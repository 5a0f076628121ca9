import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64Url, toBase64Url } from '../../lib/io/base64-url.ts';
import { deflateText, inflateText } from '../../lib/io/deflate-text.ts';
import { carriesPlan, planFragment, planInFragment } from '../../lib/io/plan-link.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { LIMITS } from '../../lib/plan/limits.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';

async function fragmentOf(plan: Plan): Promise<string> {
  const fragment = await planFragment(plan);
  if (!fragment.ok) throw new Error(fragment.error.kind);
  return fragment.value;
}

/** A fragment around any text, whether it is a plan or not. */
async function around(text: string): Promise<string> {
  return `#plan=1.${toBase64Url(await deflateText(text))}`;
}

describe('a link', () => {
  it('brings a plan whole, in letters that no address changes', async () => {
    const fragment = await fragmentOf(DEMO_PLAN);
    expect(fragment).toMatch(/^#plan=1\.[\w-]+$/);
    expect(fragment.length).toBeLessThan(16_000);
    expect(carriesPlan(fragment)).toBe(true);
    expect(await planInFragment(fragment)).toEqual({ ok: true, value: DEMO_PLAN });
  });

  it('is not made for a plan that is too large, and says how large', async () => {
    // Letters drawn at random, which no compression makes small.
    const notes = fc.sample(fc.string({ minLength: 3000, maxLength: 3000, unit: 'grapheme' }), {
      numRuns: 20,
      seed: 5,
    });
    const scenarios = notes.map((note, place) => ({
      ...DEMO_PLAN.scenarios[0]!,
      id: `s${place}`,
      note: note.slice(0, LIMITS.note),
    }));
    expect(await planFragment({ ...DEMO_PLAN, scenarios })).toMatchObject({ ok: false, error: { kind: 'tooLong' } });
  });

  it('that is cut off or changed anywhere is called damaged', async () => {
    const fragment = await fragmentOf(DEMO_PLAN);
    const start = '#plan=1.'.length;
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: start, max: fragment.length - 1 }), fc.boolean(), async (at, isCut) => {
        const other = fragment[at] === 'A' ? 'B' : 'A';
        const hurt = isCut ? fragment.slice(0, at) : `${fragment.slice(0, at)}${other}${fragment.slice(at + 1)}`;
        const read = await planInFragment(hurt);
        // The last letter may hold spare bits that mean nothing.
        if (!isCut && at === fragment.length - 1 && read.ok) return;
        expect(read).toEqual({ ok: false, error: { kind: 'damaged' } });
      }),
      { numRuns: 60 },
    );
  });

  it.each([
    ['#plan=', 'damaged'],
    ['#plan=1.', 'damaged'],
    ['#plan=1.%%%', 'damaged'],
    ['#plan=1.AAAAA', 'damaged'],
    ['#plan=2.AAAA', 'otherForm'],
    [`#plan=1.${'A'.repeat(60_001)}`, 'tooLong'],
  ])('%.20s is refused as %s', async (fragment, kind) => {
    expect(await planInFragment(fragment)).toMatchObject({ ok: false, error: { kind } });
  });

  it('with a plan that does not hold is refused as a file would be', async () => {
    expect(await planInFragment(await around('{"format":"rimeplan-plan","version":1}'))).toMatchObject({
      ok: false,
      error: { kind: 'file', error: { kind: 'invalid' } },
    });
    expect(await planInFragment(await around('{"__proto__":{"a":1},"format":"rimeplan-plan"}'))).toMatchObject({
      ok: false,
      error: { kind: 'file' },
    });
  });

  it('that unpacks without end is stopped', async () => {
    const bomb = await around(' '.repeat(20_000_000));
    expect(bomb.length).toBeLessThan(30_000);
    expect(await planInFragment(bomb)).toMatchObject({
      ok: false,
      error: { kind: 'file', error: { kind: 'tooLarge' } },
    });
  });
});

describe('its parts', () => {
  it('bytes come back from their letters', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 20_000 }), (bytes) => {
        const read = fromBase64Url(toBase64Url(bytes));
        expect(read.ok && [...read.value]).toEqual([...bytes]);
      }),
      { numRuns: 40 },
    );
  });

  it('text comes back from its compression, up to the limit and not a byte further', async () => {
    const packed = new Uint8Array(await deflateText('wärme'));
    expect(await inflateText(packed, 6)).toEqual({ ok: true, value: 'wärme' });
    expect(await inflateText(packed, 5)).toEqual({ ok: false, error: 'tooLarge' });
  });
});
