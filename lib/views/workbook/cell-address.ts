/** Letters of a column, counted from 0: A, B … Z, AA. */
export function columnLetters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
}

/** A cell as formulas write it, counted from 0: (4, 2) is C5. */
export function cellAddress(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** A cell that stays the same wherever the formula is copied: $C$5. */
export function fixedAddress(row: number, column: number): string {
  return `$${columnLetters(column)}$${row + 1}`;
}
