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
      /** Gain from one more unit of each limit; 0 where it does not bind. */
      readonly shadowPrices: readonly number[];
    }
  /** The gain grows without end along this activity. */
  | { readonly kind: 'unbounded'; readonly activity: number };

/** Reduced gains below this share of the largest gain count as none. */
const ROUNDING = 1e-12;

/**
 * Best mix of activities under limits, by the simplex method on a full tableau with Bland's rule, which cannot cycle.
 * Doing nothing is always allowed, since limits are not negative. Meant for tens of activities, not thousands.
 * Throws RangeError when sizes do not fit, a limit is negative or a number is not finite.
 */
export function solveLinearProgram(program: LinearProgram): LinearProgramOutcome {
  requireProgram(program);
  const activities = program.gain.length;
  const table = startTable(program);
  const basis = program.limits.map((_, row) => activities + row);
  const small = ROUNDING * program.gain.reduce((largest, gain) => Math.max(largest, Math.abs(gain)), 0);
  for (;;) {
    const gains = lastRow(table);
    const column = gains.findIndex((gain, k) => k < gains.length - 1 && gain > small);
    if (column < 0) return readOptimum(table, basis, activities);
    const row = leavingRow(table, basis, column);
    if (row === null) return { kind: 'unbounded', activity: column };
    pivot(table, row, column);
    basis[row] = column;
  }
}

/** Rows: one per limit with its slack, the gains last. Columns: activities, slacks, right-hand side. */
function startTable(program: LinearProgram): number[][] {
  const rows = program.limits.length;
  const table = program.uses.map((uses, row) => [
    ...uses,
    ...program.limits.map((_, slack) => (slack === row ? 1 : 0)),
    program.limits[row] ?? 0,
  ]);
  table.push([...program.gain, ...new Array<number>(rows + 1).fill(0)]);
  return table;
}

function lastRow(table: readonly number[][]): readonly number[] {
  return table[table.length - 1] ?? [];
}

/** The limit that stops the entering activity first; ties go to the lowest variable (Bland). Null when none does. */
function leavingRow(table: readonly number[][], basis: readonly number[], column: number): number | null {
  let best: { row: number; ratio: number } | null = null;
  for (let row = 0; row < table.length - 1; row += 1) {
    const use = table[row]?.[column] ?? 0;
    if (use <= ROUNDING) continue;
    const ratio = (table[row]?.at(-1) ?? 0) / use;
    const isTie = best !== null && ratio === best.ratio && (basis[row] ?? 0) < (basis[best.row] ?? 0);
    if (best === null || ratio < best.ratio || isTie) best = { row, ratio };
  }
  return best?.row ?? null;
}

function pivot(table: number[][], row: number, column: number): void {
  const divisor = table[row]?.[column] ?? 1;
  const pivotRow = (table[row] ?? []).map((value) => value / divisor);
  table.forEach((values, k) => {
    const factor = values[column] ?? 0;
    table[k] = k === row ? pivotRow : values.map((value, j) => value - factor * (pivotRow[j] ?? 0));
  });
}

function readOptimum(table: readonly number[][], basis: readonly number[], activities: number): LinearProgramOutcome {
  const gains = lastRow(table);
  const amounts = new Array<number>(activities).fill(0);
  basis.forEach((variable, row) => {
    if (variable < activities) amounts[variable] = table[row]?.at(-1) ?? 0;
  });
  const shadowPrices = gains.slice(activities, -1).map((gain) => 0 - gain);
  return { kind: 'optimal', value: 0 - (gains.at(-1) ?? 0), amounts, shadowPrices };
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
