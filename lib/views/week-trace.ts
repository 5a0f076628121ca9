/** One reading of something that is watched over the week; null while there is nothing to read. */
export interface TracePoint {
  readonly time: number;
  readonly value: number | null;
}

/** One column of a trace that is drawn narrower than it was sampled. */
export interface TraceBin {
  readonly time: number;
  readonly value: number | null;
}

function highest(a: number | null, b: number | null): number | null {
  if (a === null) return b;
  return b === null ? a : Math.max(a, b);
}

/**
 * The highest reading in each of `bins` equal stretches of [0, span]. A reading holds until the next one, so a stretch
 * without readings of its own takes the last one before it. Peaks are never lost, whatever the number of bins.
 * @param points in order of time [s]
 */
export function binHighest(points: readonly TracePoint[], span: number, bins: number): TraceBin[] {
  const width = span / bins;
  const out: TraceBin[] = [];
  let next = 0;
  let held: number | null = null;
  for (let bin = 0; bin < bins; bin += 1) {
    let value = held;
    while (next < points.length && (points[next]?.time ?? span) < (bin + 1) * width) {
      const point = points[next];
      const startsHere = (point?.time ?? 0) <= bin * width;
      held = point?.value ?? null;
      value = startsHere ? held : highest(value, held);
      next += 1;
    }
    out.push({ time: bin * width, value });
  }
  return out;
}

/** Bin by bin the higher of several traces, such as the hardest-worked of several pumps. */
export function highestOf(traces: readonly (readonly TraceBin[])[]): TraceBin[] {
  const [first, ...rest] = traces;
  return (first ?? []).map((bin, index) => ({
    time: bin.time,
    value: rest.reduce((value, trace) => highest(value, trace[index]?.value ?? null), bin.value),
  }));
}
