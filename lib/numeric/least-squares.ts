import { levenbergMarquardt } from 'ml-levenberg-marquardt';

/** What is to be fitted: the parameters that make the sum of squared residuals smallest. */
export interface LeastSquaresProblem {
  readonly start: readonly number[];
  /** Least and greatest value of each parameter. */
  readonly least: readonly number[];
  readonly most: readonly number[];
  /** Residuals at given parameters, always equally many; all finite. */
  readonly residuals: (parameters: readonly number[]) => readonly number[];
  /** Step by which derivatives are taken, the same for all parameters. */
  readonly difference: number;
  /** Told after every pass. */
  readonly onPass?: (pass: number) => void;
}

export interface LeastSquaresFit {
  readonly parameters: readonly number[];
  /** Sum of squared residuals there. */
  readonly cost: number;
  readonly passes: number;
  /** False when the passes ran out while the sum was still falling. */
  readonly converged: boolean;
}

const MOST_PASSES = 30;
const FIRST_DAMPING = 1e-3;
const MOST_DAMPING = 1e6;
/** A fall of the sum by less than this, and by less than this share of it, is the end. */
const SETTLED = 1e-4;

/** One damped step by the library, from the best point so far; it keeps that point when the step does not lead down. */
function pass(problem: LeastSquaresProblem, parameters: readonly number[], damping: number) {
  const count = problem.residuals(parameters).length;
  const places = Array.from({ length: count }, (_, place) => place);
  const fitted = levenbergMarquardt(
    { x: places, y: places.map(() => 0) },
    (tried) => {
      const values = problem.residuals(tried);
      return (place) => values[place] as number;
    },
    {
      initialValues: [...parameters],
      minValues: [...problem.least],
      maxValues: [...problem.most],
      damping,
      maxIterations: 1,
      errorTolerance: 0,
      gradientDifference: problem.difference,
    },
  );
  return { parameters: fitted.parameterValues, cost: fitted.parameterError };
}

/**
 * Least squares by Levenberg and Marquardt's method. The step is the library's; when to trust it, to go back and to stop is
 * decided here, because the library walks on from a worse point and stops only when nothing is left to explain.
 * Source: marquardt-1963.
 * Throws RangeError when there is no parameter or fewer than two residuals, which the library cannot work on.
 */
export function leastSquares(problem: LeastSquaresProblem): LeastSquaresFit {
  const { start, residuals, onPass = () => {} } = problem;
  const first = residuals(start);
  if (start.length === 0 || first.length < 2) {
    throw new RangeError(`nothing to fit: ${start.length} parameters, ${first.length} residuals`);
  }
  let best = { parameters: [...start], cost: first.reduce((sum, value) => sum + value * value, 0) };
  let damping = FIRST_DAMPING;
  for (let passes = 1; passes <= MOST_PASSES; passes += 1) {
    const tried = pass(problem, best.parameters, damping);
    onPass(passes);
    const fall = best.cost - tried.cost;
    if (fall > 0) {
      best = tried;
      damping /= 10;
      if (fall <= SETTLED * (1 + best.cost)) return { ...best, passes, converged: true };
    } else {
      damping *= 10;
      if (damping > MOST_DAMPING) return { ...best, passes, converged: true };
    }
  }
  return { ...best, passes: MOST_PASSES, converged: false };
}
