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

interface Spot {
  readonly holder: Loose;
  readonly key: string;
  readonly value: unknown;
}

function define({ holder, key, value }: Spot): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}

const OF_LISTS: readonly ((spot: Spot) => void)[] = [
  ({ holder, value }) => holder.push(value),
  ({ holder }) => holder.push(structuredClone(holder[0] ?? null)),
  ({ holder }) => holder.reverse(),
  ({ holder }) => holder.splice(0),
];

const OF_GROUPS: readonly ((spot: Spot) => void)[] = [
  ({ holder, key }) => delete holder[key],
  define,
  ({ holder, value }) => define({ holder, key: '__proto__', value: { polluted: value } }),
  ({ holder, value }) => define({ holder, key: 'constructor', value: { prototype: { polluted: value } } }),
];

function change(spot: Spot, kind: number): void {
  const changes = Array.isArray(spot.holder) ? OF_LISTS : OF_GROUPS;
  changes[kind % changes.length]?.(spot);
}

it('a plan with keys, lists and groups out of shape is sound or refused with reasons', () => {
  const seen: Seen = { taken: 0, refused: 0 };
  const count = holders(JSON.parse(TEXT)).length;
  const anyChange = fc.record({
    at: fc.nat(count - 1),
    kind: fc.nat(3),
    place: fc.nat(40),
    newKey: hostileText,
    isNew: fc.boolean(),
    value: hostileValue,
  });
  fc.assert(
    fc.property(fc.array(anyChange, { minLength: 1, maxLength: 3 }), (changes) => {
      const document = JSON.parse(TEXT);
      for (const { at, kind, place, newKey, isNew, value } of changes) {
        const holder = holders(document)[at];
        if (holder === undefined) continue;
        const keys = Object.keys(holder);
        const key = isNew || keys.length === 0 ? newKey : (keys[place % keys.length] ?? '');
        change({ holder, key, value }, kind);
      }
      expectTakenOrTold(JSON.stringify(document), seen);
    }),
    { numRuns: 2500, endOnFailure: true },
  );
  expectUntouched();
  expect(seen.taken).toBeGreaterThan(20);
  expect(seen.refused).toBeGreaterThan(200);
});
