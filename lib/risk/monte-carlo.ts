import type { Plan } from '../plan/plan-types.ts';
import { type DrawTerms, drawRequest } from './draw-request.ts';
import { type DrawOutcome, type DrawRequest, evaluateDraws } from './evaluate-draws.ts';
import type { UncertainInput } from './uncertain-inputs.ts';

/** Draws and their outcomes, by scenario. */
export interface MonteCarlo {
  readonly inputs: readonly UncertainInput[];
  readonly draws: readonly (readonly number[])[];
  /** `outcomes[id][k]`: what draw k makes of scenario id. */
  readonly outcomes: Readonly<Record<string, readonly DrawOutcome[]>>;
}

/**
 * A plan run through many draws of its uncertain inputs, all scenarios through the same.
 * Throws RangeError as `drawRequest` and `evaluateDraws` do.
 */
export function monteCarlo(
  plan: Plan,
  scenarioIds: readonly string[],
  terms: DrawTerms,
  onDraw: (done: number) => void = () => {},
): MonteCarlo {
  const request = drawRequest(plan, scenarioIds, terms);
  return gatherDraws(request, evaluateDraws(request, onDraw));
}

/** Outcomes of all draws of a request, put together by scenario. @param rows in the order of the draws */
export function gatherDraws(request: DrawRequest, rows: readonly (readonly DrawOutcome[])[]): MonteCarlo {
  const { inputs, draws, scenarioIds } = request;
  const outcomes = scenarioIds.map((id, k) => [id, rows.flatMap((row) => row[k] ?? [])] as const);
  return { inputs, draws, outcomes: Object.fromEntries(outcomes) };
}
