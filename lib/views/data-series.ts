import { type CsvCell, csvText } from './csv-text.ts';

/** The numbers a chart is drawn from, unrounded, with units in the heads: what is saved as CSV. */
export interface DataSeries {
  readonly head: readonly string[];
  readonly rows: readonly (readonly CsvCell[])[];
}

/** A chart's numbers as comma-separated text. */
export function seriesCsv({ head, rows }: DataSeries): string {
  return csvText([head, ...rows]);
}
