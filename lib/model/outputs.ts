import { FAILURE_OUTPUTS } from './outputs/failure-outputs.ts';
import { LENDER_OUTPUTS } from './outputs/lender-outputs.ts';
import { MARGIN_OUTPUTS } from './outputs/margin-outputs.ts';
import { CAPITAL_OUTPUTS, COST_OUTPUTS } from './outputs/money-outputs.ts';
import type { OutputField } from './outputs/output-field.ts';
import { RETURN_OUTPUTS } from './outputs/return-outputs.ts';
import { THROUGHPUT_OUTPUTS } from './outputs/throughput-outputs.ts';
import { VACUUM_OUTPUTS } from './outputs/vacuum-outputs.ts';

/** The one register of computed quantities, in the order in which the sheet shows them. */
export const OUTPUTS: readonly OutputField[] = [
  ...THROUGHPUT_OUTPUTS,
  ...VACUUM_OUTPUTS,
  ...COST_OUTPUTS,
  ...MARGIN_OUTPUTS,
  ...CAPITAL_OUTPUTS,
  ...RETURN_OUTPUTS,
  ...LENDER_OUTPUTS,
  ...FAILURE_OUTPUTS,
];
