import type { SourceKey } from '../../lib/sources.ts';

/** One value that a law must reproduce. */
export interface ReferenceRow {
  readonly id: string;
  /** Name of the law in the table of laws it is measured with. */
  readonly law: string;
  readonly source: SourceKey;
  /** Table, equation, page or example in the source. */
  readonly where: string;
  /** SI values by name. */
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: number;
  readonly unit: string;
  /** Largest relative error allowed. */
  readonly tolerance: number;
  /** Why that tolerance. */
  readonly why: string;
  /** True when the expected value or an input was recalled, not read. */
  readonly fromMemory: boolean;
}

/** What the rows of one table share. */
export type RowFamily = Omit<ReferenceRow, 'id' | 'inputs' | 'expected'>;

/** Rows of one table: each of `values` is inputs and the expected value; `name` starts the ids. */
export function rowsOf(
  name: string,
  family: RowFamily,
  values: readonly (readonly [inputs: Readonly<Record<string, number>>, expected: number])[],
): readonly ReferenceRow[] {
  return values.map(([inputs, expected], i) => ({ id: `${name}-${i + 1}`, ...family, inputs, expected }));
}
