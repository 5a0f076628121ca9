import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isTwoWayDate, orderEvidence, readDate } from '../../../lib/plan/log-text/read-date.ts';

describe('readDate', () => {
  it.each([
    ['2026-05-03', '2026-05-03'],
    ['2026/5/3', '2026-05-03'],
    ['20260503', '2026-05-03'],
    ['2026-05-03T14:30:00Z', '2026-05-03'],
    ['2026-05-03 2:30 pm', '2026-05-03'],
    ['3.5.2026', '2026-05-03'],
    ['3.5.26', '2026-05-03'],
    ['3 May 2026', '2026-05-03'],
    ['3rd May 2026', '2026-05-03'],
    ['3-May-26', '2026-05-03'],
    ['May 3, 2026', '2026-05-03'],
    ['Sunday, 3 May 2026', '2026-05-03'],
    ['29.2.2028', '2028-02-29'],
  ])('reads %s', (text, date) => {
    expect(readDate(text, 'month')).toEqual({ ok: true, value: date });
  });

  it('reads three numbers in the order asked for, and the other way when that is impossible', () => {
    expect(readDate('5/3/2026', 'month')).toEqual({ ok: true, value: '2026-05-03' });
    expect(readDate('5/3/2026', 'day')).toEqual({ ok: true, value: '2026-03-05' });
    expect(readDate('5/13/2026', 'day')).toEqual({ ok: true, value: '2026-05-13' });
  });

  it.each(['', 'yesterday', '31.2.2026', '2026-13-01', '46145', '3 May 1026', '5/3', '3 Foo 2026', '2026-05-03-01'])(
    'says what is wrong with "%s"',
    (text) => {
      const read = readDate(text, 'day');
      expect(!read.ok && read.error.remedy.length).toBeGreaterThan(10);
    },
  );

  it('never throws', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.constantFrom('day' as const, 'month' as const),
        (text, order) => void readDate(text, order),
      ),
    );
  });
});

describe('orderEvidence', () => {
  it.each([
    [['5/3/2026', '13/3/2026'], 'day'],
    [['5/3/2026', '3/13/2026'], 'month'],
    [['5/3/2026', '6/4/2026'], 'unclear'],
    [['13/3/2026', '3/13/2026'], 'contradictory'],
    [['13.3.2026', '3/5/2026'], 'unclear'],
    [['2026-03-13'], 'unclear'],
  ])('of %j is %s', (texts, evidence) => {
    expect(orderEvidence(texts)).toBe(evidence);
  });

  it('knows which dates can be read two ways', () => {
    expect(['5/3/2026', '5/5/2026', '5/13/2026', '5.3.2026', '2026-05-03'].map(isTwoWayDate)).toEqual([
      true,
      false,
      false,
      false,
      false,
    ]);
  });
});
