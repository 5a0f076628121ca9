import type { Dimension } from '../../units/dimension.ts';
import type { ScenarioResult } from '../scenario-result.ts';
import type { Explanation, WorkContext } from '../workings/working.ts';

export type OutputGroup = 'throughput' | 'vacuum' | 'cost' | 'capital' | 'return' | 'lender' | 'risk';

/** One computed quantity: the sheet, explanations, exports and the lender's papers all read this row. */
export interface OutputField {
  readonly id: string;
  readonly label: string;
  readonly group: OutputGroup;
  readonly dimension: Dimension;
  /** What it tells, in one plain sentence. */
  readonly meaning: string;
  /** How it is worked out, in words. */
  readonly formula: string;
  /** Ids of the outputs it is worked out from. */
  readonly needs: readonly string[];
  /** The value in the dimension's own unit; null where there is none to give. */
  readonly read: (result: ScenarioResult) => number | null;
  /** How that value comes about, down to the plan's inputs and what was counted in the simulated week. */
  readonly working: (context: WorkContext) => Explanation;
}
