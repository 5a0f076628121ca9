import type { Plan } from '../plan/plan-types.ts';
import { drawValues, type SpreadShape } from './draw-plan.ts';
import type { DrawRequest } from './evaluate-draws.ts';
import { samplePoints } from './sample-points.ts';
import { uncertainInputs } from './uncertain-inputs.ts';

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
