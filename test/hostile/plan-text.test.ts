import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hostileText } from './hostile-text.ts';
import { expectTakenOrTold, type Seen } from './plan-property.ts';
import { smallPlanText } from './small-plan.ts';
import { expectUntouched } from './untouched.ts';

const TEXT = smallPlanText();

it('a plan file with any letters cut, doubled or put in is sound or refused with reasons', () => {
  const seen: Seen = { taken: 0, refused: 0 };
  const cut = fc.record({ at: fc.nat(TEXT.length), length: fc.integer({ min: 0, max: 12 }), put: hostileText });
  fc.assert(
    fc.property(fc.array(cut, { minLength: 1, maxLength: 2 }), (cuts) => {
      const text = cuts.reduce((all, { at, length, put }) => all.slice(0, at) + put + all.slice(at + length), TEXT);
      expectTakenOrTold(text, seen);
    }),
    { numRuns: 4500, endOnFailure: true },
  );
  expectUntouched();
  expect(seen.refused).toBeGreaterThan(200);
});

it('any text and any JSON is refused with reasons', () => {
  const seen: Seen = { taken: 0, refused: 0 };
  fc.assert(
    fc.property(
      fc.oneof(
        hostileText,
        fc.json(),
        fc.json().map((json) => `{"format":"rimeplan-plan","version":1,"x":${json}}`),
      ),
      (text) => expectTakenOrTold(text, seen),
    ),
    { numRuns: 1000 },
  );
  expectUntouched();
  expect(seen).toEqual({ taken: 0, refused: 1000 });
});
