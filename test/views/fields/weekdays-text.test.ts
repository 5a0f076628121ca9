import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseWeekdays, weekdaysText } from '../../../lib/views/fields/weekdays-text.ts';

describe('weekdays in words', () => {
  it.each([
    [[0, 1, 2, 3, 4], 'Mon–Fri'],
    [[5], 'Sat'],
    [[0, 1], 'Mon, Tue'],
    [[0, 1, 2, 5, 6], 'Mon–Wed, Sat, Sun'],
    [[], 'no day'],
  ])('%j is %s', (days, text) => {
    expect(weekdaysText(days)).toBe(text);
  });

  it.each([
    ['mon-fri', [0, 1, 2, 3, 4]],
    ['Monday to Thursday', [0, 1, 2, 3]],
    ['Mon, Wed and Sat', [0, 2, 5]],
    ['sat – mon', [0, 5, 6]],
    ['weekend', [5, 6]],
    ['every day', [0, 1, 2, 3, 4, 5, 6]],
    ['th', [3]],
    ['', []],
  ])('"%s" is understood', (text, days) => {
    expect(parseWeekdays(text)).toEqual({ ok: true, value: days });
  });

  it.each(['noday', 'mon-', 'mon-tue-wed', 'm', '3', 'constructor'])('"%s" is not', (text) => {
    expect(parseWeekdays(text).ok).toBe(false);
  });

  it('reads back what it writes', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 6 })), (days) => {
        expect(parseWeekdays(weekdaysText(days))).toEqual({ ok: true, value: days.toSorted() });
      }),
    );
  });
});
