import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Loose } from '../plan/edited-demo.ts';
import { hostileText, hostileValue } from './hostile-text.ts';
import { expectTakenOrTold, type Seen } from './plan-property.ts';
import { smallPlanText } from './small-plan.ts';
import { expectUntouched } from './untouched.ts';

const TEXT = smallPlanText();

/** All groups and lists of a document, outermost first. */
function holders(value: Loose): Loose[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(holders)];
}

type Change = (holder: Loose, key: string, value: unknown) => void;

const CHANGES: readonly Change[] = [
  (holder, key) => delete holder[key],
  (holder, key, value) => Array.isArray(holder) && holder.push(value),
  (holder, key) => Array.isArray(holder) && holder.push(structuredClone(holder[0] ?? null)),
  (holder) => Array.isArray(holder) && holder.reverse(),
  (holder) => Array.isArray(holder) && holder.splice(0),
  (holder, key, value) =>
    Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true }),
  (holder, key, value) =>
    Object.defineProperty(holder, '__proto__', { value: { polluted: value }, enumerable: true, configurable: true }),
  (holder, key, value) => {
    if (!Array.isArray(holder)) holder.constructor = { prototype: { polluted: value } };
  },
];

it('a plan with keys, lists and groups out of shape is sound or refused with reasons', () => {
  const seen: Seen = { taken: 0, refused: 0 };
  const count = holders(JSON.parse(TEXT)).length;
  const change = fc.record({
    at: fc.nat(count - 1),
    kind: fc.nat(CHANGES.length - 1),
    place: fc.nat(40),
    newKey: hostileText,
    isNew: fc.boolean(),
    value: hostileValue,
  });
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
      const document = JSON.parse(TEXT);
      for (const { at, kind, place, newKey, isNew, value } of changes) {
        const holder = holders(document)[at];
        if (holder === undefined) continue;
        const keys = Object.keys(holder);
        const key = isNew || keys.length === 0 ? newKey : (keys[place % keys.length] ?? '');
        if (Array.isArray(holder) && key === 'length') continue;
        CHANGES[kind]?.(holder, key, value);
      }
      expectTakenOrTold(JSON.stringify(document), seen);
    }),
    { numRuns: 3000, endOnFailure: true },
  );
  expectUntouched();
  expect(seen.taken).toBeGreaterThan(20);
  expect(seen.refused).toBeGreaterThan(200);
});
