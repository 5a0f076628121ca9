import type { MoneyRow } from './money-row.ts';
import { COST_ROWS } from './money-rows-cost.ts';
import { LIFE_ROWS } from './money-rows-lives.ts';
import { PLAN_ROWS } from './money-rows-plans.ts';
import { RETURN_ROWS } from './money-rows-returns.ts';
import { TIME_VALUE_ROWS } from './money-rows-time-value.ts';

/** Every published money value the code must reproduce. */
export const MONEY_ROWS: readonly MoneyRow[] = [
  ...TIME_VALUE_ROWS,
  ...RETURN_ROWS,
  ...LIFE_ROWS,
  ...PLAN_ROWS,
  ...COST_ROWS,
];
