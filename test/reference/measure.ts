import { accuracyLines } from './accuracy-table.ts';
import { PHYSICS_LAWS } from './physics-laws.ts';
import type { ReferenceRow } from './reference-row.ts';

/** A law as the rows see it: named SI inputs to one SI value. */
export type Law = (inputs: Readonly<Record<string, number>>) => number;

/** A row with what the code makes of it. */
export interface Measurement {
  readonly row: ReferenceRow;
  readonly computed: number;
  /** |computed/expected − 1|. */
  readonly error: number;
}

/** Computes one row: the only place where a reference value and the code meet. Throws RangeError on an unknown law. */
export function measure(row: ReferenceRow, laws: Readonly<Record<string, Law>> = PHYSICS_LAWS): Measurement {
  const law = laws[row.law];
  if (!law) throw new RangeError(`row ${row.id} names the unknown law ${row.law}`);
  const computed = law(row.inputs);
  return { row, computed, error: Math.abs(computed / row.expected - 1) };
}

/** What a failing row shows: every input, expected, computed, error, tolerance. */
export function describeMeasurement({ row, computed, error }: Measurement): string {
  const inputs = Object.entries(row.inputs).map(([name, value]) => `${name} = ${value}`);
  return [
    `${row.id} (${row.source}, ${row.where}): ${inputs.join(', ')}`,
    `expected ${row.expected} ${row.unit}, computed ${computed}`,
    `error ${error.toExponential(2)}, tolerance ${row.tolerance} (${row.why})`,
  ].join('\n');
}

/** The accuracy table of the rows in Markdown, one line per law. */
export function accuracyTable(
  rows: readonly ReferenceRow[],
  laws: Readonly<Record<string, Law>> = PHYSICS_LAWS,
): readonly string[] {
  return accuracyLines(rows.map((row) => measure(row, laws)));
}
