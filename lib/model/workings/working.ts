import type { Plan, Scenario } from '../../plan/plan-types.ts';
import type { SourceKey } from '../../sources.ts';
import type { Dimension } from '../../units/dimension.ts';
import type { ScenarioResult } from '../scenario-result.ts';

/** What a figure is explained from: the plan it was computed from, and the results. */
export interface WorkContext {
  readonly plan: Plan;
  readonly scenario: Scenario;
  /** Of this scenario of this plan. */
  readonly result: ScenarioResult;
  /** Of the plan's first scenario, against which all are judged. */
  readonly today: ScenarioResult;
}

/** Read off the simulated week or the months of the projection: here arithmetic ends, and what was counted and by which laws is told. */
export interface CountedOrigin {
  readonly kind: 'counted';
  readonly where: 'week' | 'months';
  /** What was counted, in words. */
  readonly what: string;
  /** Laws behind the count. */
  readonly sources: readonly SourceKey[];
  /** Paths of the plan's values it hangs on most. */
  readonly inputs: readonly string[];
}

export type TermOrigin =
  /** A value of the plan; the path leads to it. */
  | { readonly kind: 'input'; readonly path: string }
  /** Worked out from other numbers. */
  | { readonly kind: 'worked'; readonly work: () => Working }
  | CountedOrigin
  /** Set in the model, and why. */
  | { readonly kind: 'fixed'; readonly why: string };

/** One number that goes into another. */
export interface Term {
  readonly label: string;
  /** Its letter in the formula. */
  readonly symbol: string;
  /** In the engine's unit of its dimension. */
  readonly value: number;
  readonly dimension: Dimension;
  readonly origin: TermOrigin;
}

/** How a number follows from others. */
export interface Working {
  readonly kind: 'worked';
  /** In words. */
  readonly formula: string;
  /** The same in the letters of the terms. */
  readonly symbols: string;
  readonly terms: readonly Term[];
  /** The number from the values of the terms, in their order. */
  readonly compute: (values: readonly number[]) => number;
}

/** Why there is no figure to explain. */
export interface NoFigure {
  readonly kind: 'none';
  readonly why: string;
}

export type Explanation = Working | NoFigure;

/** The number that a working gives. */
export function recompute(working: Working): number {
  return working.compute(working.terms.map((term) => term.value));
}
