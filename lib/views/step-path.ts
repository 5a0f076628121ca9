import type { TraceBin } from './week-trace.ts';

/** Places on the picture [px]. */
export interface StepScale {
  readonly x: (time: number) => number;
  readonly y: (value: number) => number;
  /** Time at which the last step ends [s]. */
  readonly end: number;
}

function figure(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function runsOf(bins: readonly TraceBin[], end: number): { from: number; to: number; value: number }[][] {
  const runs: { from: number; to: number; value: number }[][] = [];
  let run: { from: number; to: number; value: number }[] | null = null;
  bins.forEach((bin, index) => {
    if (bin.value === null) {
      run = null;
      return;
    }
    if (run === null) {
      run = [];
      runs.push(run);
    }
    const last = run.at(-1);
    const to = bins[index + 1]?.time ?? end;
    if (last && last.value === bin.value) last.to = to;
    else run.push({ from: bin.time, to, value: bin.value });
  });
  return runs;
}

/** SVG path of a stepped line; it is lifted where there is no value. */
export function stepLine(bins: readonly TraceBin[], { x, y, end }: StepScale): string {
  return runsOf(bins, end)
    .map((run) => {
      const steps = run.map((step) => `V${figure(y(step.value))}H${figure(x(step.to))}`).join('');
      return `M${figure(x(run[0]?.from ?? 0))} ${figure(y(run[0]?.value ?? 0))}${steps}`;
    })
    .join('');
}

/** SVG path of the area between a stepped line and the base value. */
export function stepArea(bins: readonly TraceBin[], scale: StepScale, base = 0): string {
  const { x, y, end } = scale;
  return runsOf(bins, end)
    .map((run) => {
      const steps = run.map((step) => `V${figure(y(step.value))}H${figure(x(step.to))}`).join('');
      return `M${figure(x(run[0]?.from ?? 0))} ${figure(y(base))}${steps}V${figure(y(base))}Z`;
    })
    .join('');
}
