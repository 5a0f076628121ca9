import type { ScenarioResult } from '../model/scenario-result.ts';

/** One scenario as charts and findings see it: its place in the plan, its name as it is now, and its last result. */
export interface ScenarioView {
  readonly id: string;
  readonly name: string;
  /** Place in the plan from 0; the colour of its lines hangs on it. */
  readonly place: number;
  readonly result: ScenarioResult;
}

/** Number of the colour token that belongs to a scenario: 1 to 8, then again from 1. */
export function seriesNumber(place: number): number {
  return (place % 8) + 1;
}
