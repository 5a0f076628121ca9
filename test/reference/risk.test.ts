import { describe, expect, it } from 'vitest';
import { describeMoney, measureMoney } from './money-row.ts';
import { RISK_ROWS } from './risk-rows.ts';

describe('published values of chance and spread', () => {
  it('are all here: none was dropped', () => {
    expect(RISK_ROWS).toHaveLength(94);
    expect(new Set(RISK_ROWS.map((row) => row.id)).size).toBe(RISK_ROWS.length);
  });

  it.each(RISK_ROWS)('$id: $law, $source, $where', (row) => {
    const measured = measureMoney(row);
    expect(measured.error, describeMoney(measured)).toBeLessThanOrEqual(row.tolerance);
  });
});
