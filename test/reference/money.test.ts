import { describe, expect, it } from 'vitest';
import { describeMoney, measureMoney } from './money-row.ts';
import { MONEY_ROWS } from './money-rows.ts';

describe('published money values', () => {
  it('are all here: none was dropped', () => {
    expect(MONEY_ROWS).toHaveLength(330);
    expect(new Set(MONEY_ROWS.map((row) => row.id)).size).toBe(MONEY_ROWS.length);
  });

  it.each(MONEY_ROWS)('$id: $law, $source, $where', (row) => {
    const measured = measureMoney(row);
    expect(measured.error, describeMoney(measured)).toBeLessThanOrEqual(row.tolerance);
  });
});
