/**
 * Inverse of a symmetric positive-definite matrix, such as the covariance that belongs to an information matrix, by its
 * Cholesky factor. Rows are lists of equal length; only the lower half is read.
 * Throws RangeError when the matrix is not positive definite.
 */
export function choleskyInverse(matrix: readonly (readonly number[])[]): number[][] {
  const factor = choleskyFactor(matrix);
  const columns = matrix.map((_, k) => solveUnit(factor, k));
  return matrix.map((_, i) => columns.map((column) => column[i] as number));
}

/** Lower triangle L with L·Lᵀ = matrix. */
function choleskyFactor(matrix: readonly (readonly number[])[]): number[][] {
  const factor: number[][] = [];
  matrix.forEach((row, i) => {
    const made: number[] = [];
    for (let j = 0; j < i; j += 1) {
      const above = factor[j] as number[];
      made.push(((row[j] as number) - dot(made, above, j)) / (above[j] as number));
    }
    const square = (row[i] as number) - dot(made, made, i);
    if (!(square > 0)) throw new RangeError(`row ${i} of the matrix leaves ${square}: it is not positive definite`);
    made.push(Math.sqrt(square));
    factor.push(made);
  });
  return factor;
}

function dot(a: readonly number[], b: readonly number[], length: number): number {
  let sum = 0;
  for (let k = 0; k < length; k += 1) sum += (a[k] as number) * (b[k] as number);
  return sum;
}

/** Solution x of L·Lᵀ·x = the unit vector k. */
function solveUnit(factor: readonly (readonly number[])[], k: number): number[] {
  const size = factor.length;
  const middle: number[] = [];
  factor.forEach((row, i) => {
    middle.push(((i === k ? 1 : 0) - dot(row, middle, i)) / (row[i] as number));
  });
  const solution = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i -= 1) {
    let rest = middle[i] as number;
    for (let j = i + 1; j < size; j += 1) rest -= ((factor[j] as number[])[i] as number) * (solution[j] as number);
    solution[i] = rest / ((factor[i] as number[])[i] as number);
  }
  return solution;
}
