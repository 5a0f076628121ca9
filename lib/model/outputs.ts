import { CAPITAL_OUTPUTS, COST_OUTPUTS, RETURN_OUTPUTS } from './outputs/money-outputs.ts';
import type { OutputField } from './outputs/output-field.ts';
import { THROUGHPUT_OUTPUTS } from './outputs/throughput-outputs.ts';
import { VACUUM_OUTPUTS } from './outputs/vacuum-outputs.ts';

/** The one register of computed quantities, in the order in which the sheet shows them. */
export const OUTPUTS: readonly OutputField[] = [
  ...THROUGHPUT_OUTPUTS,
  ...VACUUM_OUTPUTS,
  ...COST_OUTPUTS,
  ...CAPITAL_OUTPUTS,
  ...RETURN_OUTPUTS,
];
