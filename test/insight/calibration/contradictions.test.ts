import { describe, expect, it } from 'vitest';
import { contradictions } from '../../../lib/insight/calibration/contradictions.ts';
import type { LoggedBatch } from '../../../lib/insight/calibration/logged-batches.ts';
import { oddBatches } from '../../../lib/insight/calibration/odd-batches.ts';

function batch(id: string, wet: number, hours: number, product = 'p', chamber = 'mid'): LoggedBatch {
  return { id, date: '2026-05-03', chamber, product, wet, dry: 1, time: hours * 3600, highestPressure: null };
}

describe('contradictions', () => {
  it('are like loads of which one took half as long again', () => {
    const found = contradictions([batch('a', 10, 20), batch('b', 10.2, 34), batch('c', 10.1, 21)]);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ shortest: { id: 'a' }, longest: { id: 'b' }, pairs: 2 });
  });

  it.each([
    ['another weight', batch('b', 15, 34)],
    ['another product', batch('b', 10, 34, 'q')],
    ['another chamber', batch('b', 10, 34, 'p', 'large')],
    ['hours not so different', batch('b', 10, 28)],
  ])('are not %s', (_, other) => {
    expect(contradictions([batch('a', 10, 20), other])).toEqual([]);
  });
});

describe('oddBatches', () => {
  const five = [0.01, -0.02, 0.03, 0, -0.01].map((_, i) => batch(`b${i}`, 10, 20));

  it('are those far out of a group large enough to tell', () => {
    const all = [...five, batch('odd', 10, 60)];
    expect(oddBatches(all, [0.01, -0.02, 0.03, 0, -0.01, 1.1]).map(({ id }) => id)).toEqual(['odd']);
  });

  it('are none in a small group, nor where all are off alike', () => {
    expect(oddBatches(five.slice(0, 3), [0, 0, 2])).toEqual([]);
    expect(oddBatches(five, [1, 1.02, 0.98, 1, 1.01])).toEqual([]);
  });
});
