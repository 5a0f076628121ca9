/** A row measured, as far as the table needs it. */
export interface Accuracy {
  readonly row: {
    readonly law: string;
    readonly source: string;
    readonly tolerance: number;
    readonly fromMemory: boolean;
  };
  /** |computed/expected − 1|. */
  readonly error: number;
}

/** A relative error in per cent, two digits. */
export function percent(value: number): string {
  return value < 1e-8 ? '< 0.000001 %' : `${Number((100 * value).toPrecision(2))} %`;
}

function lineOf(law: string, measured: readonly Accuracy[]): string {
  const worst = measured.reduce((a, b) => (b.error / b.row.tolerance > a.error / a.row.tolerance ? b : a));
  const recalled = measured.filter(({ row }) => row.fromMemory).length;
  const sources = [...new Set(measured.map(({ row }) => row.source))].join(', ');
  return `| ${law} | ${measured.length} | ${recalled} | ${percent(worst.error)} | ${percent(worst.row.tolerance)} | ${sources} |`;
}

/**
 * The accuracy table in Markdown, one line per law: number of rows, worst error with its own tolerance, rows recalled from
 * memory. The worst row is the one nearest to its tolerance.
 */
export function accuracyLines(measured: readonly Accuracy[]): readonly string[] {
  const laws = [...new Set(measured.map(({ row }) => row.law))];
  const lines = laws.map((law) =>
    lineOf(
      law,
      measured.filter(({ row }) => row.law === law),
    ),
  );
  return [
    '| Law | Values | Of them from memory | Worst error | Tolerance there | Sources |',
    '| --- | ---: | ---: | ---: | ---: | --- |',
    ...lines,
  ];
}
