import type { Plan } from '../plan/plan-types.ts';
import { drawValues, type SpreadShape } from './draw-plan.ts';
import { type DrawOutcome, type DrawRequest, evaluateDraws } from './evaluate-draws.ts';
import { samplePoints } from './sample-points.ts';
import { type UncertainInput, uncertainInputs } from './uncertain-inputs.ts';

/** How a plan is drawn. */
export interface DrawTerms {
  /** Draws, best 2ᵏ: the points then cover the inputs evenly. */
  readonly count: number;
  readonly seed: number;
  readonly shape?: SpreadShape;
}

/**
 * The draws of a plan, ready to be worked out here by `evaluateDraws` or elsewhere in parts: every uncertain input at
 * points that depend on seed, count and the inputs alone, not on which scenarios are asked for or in which order.
 * Throws RangeError as `samplePoints` does.
 */
export function drawRequest(plan: Plan, scenarioIds: readonly string[], terms: DrawTerms): DrawRequest {
  const inputs = uncertainInputs(plan);
  const points = samplePoints(terms.count, inputs.length, terms.seed);
  return { plan, scenarioIds, inputs, draws: points.map((point) => drawValues(inputs, point, terms.shape)) };
}

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
