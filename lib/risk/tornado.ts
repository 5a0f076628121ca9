import type { Plan } from '../plan/plan-types.ts';
import { type DrawMeasure, measureOf } from './draw-measure.ts';
import type { DrawOutcome, DrawRequest } from './evaluate-draws.ts';
import { type UncertainInput, uncertainInputs } from './uncertain-inputs.ts';

/** What one input alone does to a figure, all others at their likely values. */
export interface TornadoBar {
  readonly input: UncertainInput;
  /** The figure with the input at its low and at its high [unit of the figure]; null where there is none. */
  readonly atLow: number | null;
  readonly atHigh: number | null;
  /** Distance between lowest and highest of low, likely and high, which need not lie in that order. */
  readonly swing: number;
}

export interface Tornado {
  /** The figure with all inputs likely; null where there is none. */
  readonly likely: number | null;
  /** Widest first; equally wide ones in order of key. */
  readonly bars: readonly TornadoBar[];
}

/** Draws of a tornado: all likely, then each input low and high in turn. */
export function tornadoRequest(plan: Plan, scenarioIds: readonly string[]): DrawRequest {
  const inputs = uncertainInputs(plan);
  const likely = inputs.map(({ points }) => points.likely);
  const draws = inputs.flatMap(({ points }, k) => [likely.with(k, points.low), likely.with(k, points.high)]);
  return { plan, scenarioIds, inputs, draws: [likely, ...draws] };
}

/**
 * Bars of one scenario from its outcomes at the draws of `tornadoRequest`. A payback beyond the horizon is no end of a bar.
 * Throws RangeError when there is not one outcome for each draw.
 */
export function tornado(
  inputs: readonly UncertainInput[],
  outcomes: readonly DrawOutcome[],
  measure: DrawMeasure,
): Tornado {
  if (outcomes.length !== 2 * inputs.length + 1) {
    throw new RangeError(`${outcomes.length} outcomes for a tornado of ${inputs.length} inputs`);
  }
  const [likely = null, ...ends] = outcomes.map((outcome) => shown(measureOf(outcome, measure)));
  const bars = inputs.map((input, k) => {
    const [atLow = null, atHigh = null] = ends.slice(2 * k, 2 * k + 2);
    return { input, atLow, atHigh, swing: swingOf([likely, atLow, atHigh]) };
  });
  return { likely, bars: bars.sort((a, b) => b.swing - a.swing) };
}

function shown(value: number | null): number | null {
  return value !== null && Number.isFinite(value) ? value : null;
}

function swingOf(values: readonly (number | null)[]): number {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? 0 : Math.max(...known) - Math.min(...known);
}
