import type { SourceKey } from '../../lib/sources.ts';

/** One published money value and what the code makes of it. */
export interface MoneyRow {
  readonly id: string;
  /** What is measured, as the accuracy table names it. */
  readonly law: string;
  readonly source: SourceKey;
  /** Table, example or page in the source. */
  readonly where: string;
  /** Never 0, since errors are relative. */
  readonly expected: number;
  readonly actual: () => number;
  readonly unit: string;
  /** Largest relative error allowed. */
  readonly tolerance: number;
  /** Why that tolerance. */
  readonly why: string;
  /** True when the expected value or an input was recalled, not read. */
  readonly fromMemory: boolean;
}

export interface MoneyMeasurement {
  readonly row: MoneyRow;
  readonly computed: number;
  /** |computed/expected − 1|. */
  readonly error: number;
}

/** What the rows of one table share. The tolerance is either relative or half a printed digit. */
export type MoneyFamily = Omit<MoneyRow, 'id' | 'expected' | 'actual' | 'tolerance' | 'fromMemory'> & {
  readonly fromMemory?: boolean;
} & ({ readonly relative: number } | { readonly halfDigit: number });

/** Rows of one table: each of `values` is what the code makes and what was printed; `name` starts the ids. */
export function moneyRows(
  name: string,
  family: MoneyFamily,
  values: readonly (readonly [actual: () => number, expected: number])[],
): readonly MoneyRow[] {
  const { law, source, where, unit, why, fromMemory = false } = family;
  return values.map(([actual, expected], i) => ({
    id: `${name}-${i + 1}`,
    law,
    source,
    where,
    unit,
    why,
    fromMemory,
    actual,
    expected,
    // A printed digit that ends in 5 may have been rounded either way: a hair more than half of it.
    tolerance: 'relative' in family ? family.relative : (1.0001 * family.halfDigit) / Math.abs(expected),
  }));
}

/** Computes one row. */
export function measureMoney(row: MoneyRow): MoneyMeasurement {
  const computed = row.actual();
  return { row, computed, error: Math.abs(computed / row.expected - 1) };
}

/** What a failing row shows. */
export function describeMoney({ row, computed, error }: MoneyMeasurement): string {
  return [
    `${row.id} (${row.source}, ${row.where})`,
    `expected ${row.expected} ${row.unit}, computed ${computed}`,
    `error ${error.toExponential(2)}, tolerance ${row.tolerance.toExponential(2)} (${row.why})`,
  ].join('\n');
}
