import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { copyIdentity, freshId } from '../../../lib/plan/commands/fresh-id.ts';
import { isId } from '../../../lib/plan/text-schemas.ts';

describe('freshId', () => {
  it.each([
    ['Good pump', [], 'good-pump'],
    ['Good pump', ['good-pump', 'good-pump-2'], 'good-pump-3'],
    ['  Six, at last! ', [], 'six-at-last'],
    ['é', [], 'item'],
    ['constructor', [], 'constructor-2'],
  ])('%j beside %j gives %s', (name, taken, expected) => {
    expect(
      freshId(
        taken.map((id) => ({ id })),
        name,
      ),
    ).toBe(expected);
  });

  it('gives an id that can be used, whatever the name', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 120 }), (name) => {
        expect(isId(freshId([{ id: 'item' }], name))).toBe(true);
      }),
    );
  });
});

describe('copyIdentity', () => {
  it('counts copies up', () => {
    const today = { id: 'today', name: 'Today' };
    const second = copyIdentity([today], today);
    expect(second).toEqual({ id: 'today-2', name: 'Today 2' });
    expect(copyIdentity([today, second], second)).toEqual({ id: 'today-3', name: 'Today 3' });
  });
});
