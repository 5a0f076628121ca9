import type { Plan } from '../plan/plan-types.ts';
import { type DrawMeasure, measureOf } from './draw-measure.ts';
import { drawValues } from './draw-plan.ts';
import type { DrawTerms } from './draw-request.ts';
import type { DrawOutcome, DrawRequest } from './evaluate-draws.ts';
import { indexDesign, type SobolIndices, sobolIndices } from './sobol-indices.ts';
import { uncertainInputs } from './uncertain-inputs.ts';

/** What part of a figure's uncertainty comes from each input. */
export type InputIndices =
  | {
      readonly kind: 'computed';
      /** In the order of the inputs. */
      readonly indices: SobolIndices;
      /** Rows of the design left out because the figure was missing or beyond the horizon in one of their draws. */
      readonly dropped: number;
    }
  /** Fewer than two rows of the design have the figure throughout. */
  | { readonly kind: 'tooFew'; readonly dropped: number };

/**
 * Draws from which first-order and total indices follow: count·(inputs + 2), row by row of the design (the row of the
 * first sample, that of the second, then the first with one input after the other from the second), so that draws
 * which differ in one input follow each other. Parts of whole rows may be worked out apart.
 * Source: saltelli-2010.
 * Throws RangeError as `indexDesign` does.
 */
export function indexRequest(plan: Plan, scenarioIds: readonly string[], terms: DrawTerms): DrawRequest {
  const inputs = uncertainInputs(plan);
  const { a, b, mixed } = indexDesign(terms.count, inputs.length, terms.seed);
  const points = a.flatMap((point, row) => [point, b[row] ?? [], ...mixed.map((rows) => rows[row] ?? [])]);
  return { plan, scenarioIds, inputs, draws: points.map((point) => drawValues(inputs, point, terms.shape)) };
}

/**
 * First-order and total indices of a figure from the outcomes of one scenario at the draws of `indexRequest`.
 * Throws RangeError when they are not whole rows.
 * @param inputs number of uncertain inputs
 */
export function inputIndices(outcomes: readonly DrawOutcome[], inputs: number, measure: DrawMeasure): InputIndices {
  const width = inputs + 2;
  if (outcomes.length % width !== 0) throw new RangeError(`${outcomes.length} outcomes in rows of ${width}`);
  const rows = Array.from({ length: outcomes.length / width }, (_, row) =>
    outcomes.slice(row * width, (row + 1) * width).map((outcome) => measureOf(outcome, measure)),
  );
  const whole = rows.filter(isWhole);
  const dropped = rows.length - whole.length;
  if (whole.length < 2) return { kind: 'tooFew', dropped };
  const column = (k: number) => whole.map((row) => row[k] ?? 0);
  const mixed = Array.from({ length: inputs }, (_, input) => column(input + 2));
  return { kind: 'computed', indices: sobolIndices(column(0), column(1), mixed), dropped };
}

function isWhole(row: readonly (number | null)[]): row is readonly number[] {
  return row.every((value) => value !== null && Number.isFinite(value));
}
