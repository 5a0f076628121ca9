import { pow } from '../numeric/portable-math.ts';
import { growthFactor } from './annuity.ts';
import { presentValues } from './net-present-value.ts';

/**
 * Modified internal rate of return [1/period]: (FV of receipts at the reinvestment rate ÷ PV of payments at the finance
 * rate)^(1/n) − 1. There is at most one, which is its use beside several internal rates.
 * Null when there is no payment or no receipt.
 * Source: numpy-financial, documentation of `mirr`.
 * @param flows by period from time 0 [money]
 * @param financeRate per period paid on what is owed, > −1
 * @param reinvestRate per period earned on what comes in, > −1
 */
export function modifiedInternalRate(
  flows: readonly number[],
  financeRate: number,
  reinvestRate: number,
): number | null {
  const periods = flows.length - 1;
  const paid = sum(
    presentValues(
      financeRate,
      flows.map((flow) => Math.min(flow, 0)),
    ),
  );
  const received = sum(
    presentValues(
      reinvestRate,
      flows.map((flow) => Math.max(flow, 0)),
    ),
  );
  if (paid === 0 || received === 0) return null;
  return pow((received * growthFactor(reinvestRate, periods)) / -paid, 1 / periods) - 1;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
