/** The figures of a chart as a table, for readers who do not see the chart or want to copy it. */
export interface DataTable {
  readonly caption: string;
  readonly head: readonly string[];
  /** The first cell of each row names the row. */
  readonly rows: readonly (readonly string[])[];
}
