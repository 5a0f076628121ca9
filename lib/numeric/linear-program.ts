import { type Coefficients, solve } from 'yalps';

/** Maximise gain·x subject to uses·x ≤ limits and x ≥ 0. */
export interface LinearProgram {
  /** Gain of one unit of each activity. */
  readonly gain: readonly number[];
  /** Use of each limit (row) by one unit of each activity (column). */
  readonly uses: readonly (readonly number[])[];
  /** Each limit, ≥ 0. */
  readonly limits: readonly number[];
}

export type LinearProgramOutcome =
  | {
      readonly kind: 'optimal';
      readonly value: number;
      /** Amount of each activity. */
      readonly amounts: readonly number[];
      /** Gain from one more unit of each limit; 0 where it does not bind. One of several answers where limits just touch. */
      readonly shadowPrices: readonly number[];
    }
  /** The gain grows without end along this activity. */
  | { readonly kind: 'unbounded'; readonly activity: number }
  /** The solver went in circles, which it does on rare programs whose limits touch in many ways. */
  | { readonly kind: 'notSolved' };

/** Numbers below this are nothing to the solver; gains, rows and limits are scaled to 1 before. */
const PRECISION = 1e-11;

const OPTIONS = { precision: PRECISION, checkCycles: true, includeZeroVariables: true } as const;

/** A program whose largest gain, largest use in every row and largest limit are 1, with what it takes to come back. */
interface Scaled {
  readonly gain: readonly number[];
  readonly uses: readonly (readonly number[])[];
  readonly limits: readonly number[];
  readonly gainScale: number;
  readonly rowScales: readonly number[];
  readonly limitScale: number;
}

/**
 * Best mix of activities under limits, by the simplex method of an open-source library. Doing nothing is always allowed,
 * since limits are not negative. Shadow prices are the solution of the dual program, limits·y least with usesᵀ·y ≥ gain, by
 * the same library: at the optimum both have the same value, which tests check.
 * Source: hillier-lieberman, duality theory.
 * Throws RangeError when sizes do not fit, a limit is negative or a number is not finite.
 */
export function solveLinearProgram(program: LinearProgram): LinearProgramOutcome {
  requireProgram(program);
  const scaled = scaledProgram(program);
  const primal = solvePrimal(scaled);
  if (primal.kind !== 'solved') return primal.kind === 'unbounded' ? endless(program, primal.activity) : primal;
  const dual = solveDual(scaled);
  if (!dual) return { kind: 'notSolved' };
  const amounts = primal.amounts.map((amount) => amount * scaled.limitScale);
  return {
    kind: 'optimal',
    value: amounts.reduce((sum, amount, k) => sum + amount * (program.gain[k] ?? 0), 0),
    amounts,
    shadowPrices: dual.map((price, row) => (price * scaled.gainScale) / (scaled.rowScales[row] ?? 1)),
  };
}

function solvePrimal(
  scaled: Scaled,
):
  | { readonly kind: 'solved'; readonly amounts: readonly number[] }
  | { readonly kind: 'unbounded'; readonly activity: number | undefined }
  | { readonly kind: 'notSolved' } {
  const solution = solve<number, number>(
    {
      direction: 'maximize',
      objective: OBJECTIVE,
      constraints: scaled.limits.map((max, row) => [row, { max }] as const),
      variables: scaled.gain.map(
        (gain, k) =>
          [
            k,
            column(
              gain,
              scaled.uses.map((uses) => uses[k] ?? 0),
            ),
          ] as const,
      ),
    },
    OPTIONS,
  );
  if (solution.status === 'unbounded') return { kind: 'unbounded', activity: solution.variables[0]?.[0] };
  if (solution.status !== 'optimal') return { kind: 'notSolved' };
  return { kind: 'solved', amounts: inOrder(solution.variables, scaled.gain.length) };
}

/** Prices of the rows; null when the solver went in circles. */
function solveDual(scaled: Scaled): number[] | null {
  const solution = solve<number, number>(
    {
      direction: 'minimize',
      objective: OBJECTIVE,
      constraints: scaled.gain.map((min, k) => [k, { min }] as const),
      variables: scaled.limits.map((limit, row) => [row, column(limit, scaled.uses[row] ?? [])] as const),
    },
    OPTIONS,
  );
  return solution.status === 'optimal' ? inOrder(solution.variables, scaled.limits.length) : null;
}

/** Key of the objective among the rows, which are numbered from 0. */
const OBJECTIVE = -1;

function column(objective: number, uses: readonly number[]): Coefficients<number> {
  return [[OBJECTIVE, objective] as const, ...uses.map((use, row) => [row, use] as const)];
}

function inOrder(variables: readonly (readonly [number, number])[], count: number): number[] {
  const values = new Array<number>(count).fill(0);
  for (const [key, value] of variables) values[key] = value;
  return values;
}

/** The activity along which the gain has no end: the solver's, or the first that pays and takes nothing of any limit. */
function endless({ gain, uses }: LinearProgram, named: number | undefined): LinearProgramOutcome {
  const free = gain.findIndex((value, k) => value > 0 && uses.every((row) => (row[k] ?? 0) <= 0));
  return { kind: 'unbounded', activity: free >= 0 ? free : (named ?? 0) };
}

function scaledProgram({ gain, uses, limits }: LinearProgram): Scaled {
  const gainScale = largest(gain);
  const rowScales = uses.map(largest);
  const scaledLimits = limits.map((limit, row) => limit / (rowScales[row] ?? 1));
  const limitScale = largest(scaledLimits);
  return {
    gain: gain.map((value) => value / gainScale),
    uses: uses.map((row, k) => row.map((use) => use / (rowScales[k] ?? 1))),
    limits: scaledLimits.map((limit) => limit / limitScale),
    gainScale,
    rowScales,
    limitScale,
  };
}

/** Largest magnitude; 1 when there is nothing but zeros. */
function largest(values: readonly number[]): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0) || 1;
}

function requireProgram(program: LinearProgram): void {
  const { gain, uses, limits } = program;
  if (uses.length !== limits.length || uses.some((row) => row.length !== gain.length)) {
    throw new RangeError(
      `linear program of ${gain.length} activities, ${uses.length} rows and ${limits.length} limits`,
    );
  }
  const wrong = [...gain, ...uses.flat(), ...limits].find((value) => !Number.isFinite(value));
  if (wrong !== undefined) throw new RangeError(`linear program holds ${wrong}`);
  const negative = limits.find((limit) => limit < 0);
  if (negative !== undefined) throw new RangeError(`limit ${negative} must be 0 or more`);
}
