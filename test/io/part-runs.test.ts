import { describe, expect, it } from 'vitest';
import { JobBoard, type JobReport } from '../../lib/io/job-board.ts';
import { PartRuns, type WorkPart } from '../../lib/io/part-runs.ts';

interface CountingEngine {
  readonly count: (numbers: readonly number[]) => Promise<string>;
}

/** A part of work that is told apart by its numbers. */
function part(...numbers: readonly number[]): WorkPart<CountingEngine> {
  return { size: numbers.length, start: (engine) => engine.count(numbers) };
}

interface Started {
  readonly numbers: readonly number[];
  readonly finish: () => Promise<void>;
  readonly fail: (reason: string) => Promise<void>;
}

const settled = async () => {
  for (let tick = 0; tick < 5; tick += 1) await Promise.resolve();
};

/** Runs on engines that do nothing until the test says so. */
function runsOn(engines: number) {
  const started: Started[] = [];
  let stops = 0;
  const engine: CountingEngine = {
    count: (numbers) =>
      new Promise((resolve, reject) => {
        started.push({
          numbers,
          finish: () => {
            resolve(numbers.join());
            return settled();
          },
          fail: (reason) => {
            reject(new Error(reason));
            return settled();
          },
        });
      }),
  };
  const spawn = () => ({
    engine,
    stop: () => {
      stops += 1;
    },
  });
  const runs = new PartRuns<CountingEngine>((report) => new JobBoard(engines, spawn, report));
  return { runs, started, stops: () => stops };
}

describe('PartRuns', () => {
  it('hands parts to free engines, tells progress by size, and puts the answers back in order', async () => {
    const { runs, started } = runsOn(2);
    const told: string[] = [];
    const run = runs.run([part(1, 2), part(3, 4), part(5)], (done, all) => told.push(`${done}/${all}`));
    expect(started.map((job) => job.numbers)).toEqual([
      [1, 2],
      [3, 4],
    ]);
    await started[1]?.finish();
    expect(started.map((job) => job.numbers)).toEqual([[1, 2], [3, 4], [5]]);
    await started[2]?.finish();
    await started[0]?.finish();
    expect(await run).toEqual({ kind: 'done', answers: ['1,2', '3,4', '5'] });
    expect(told).toEqual(['2/5', '3/5', '5/5']);
  });

  it('gives the engines of an earlier run to a later one', async () => {
    const { runs, started, stops } = runsOn(1);
    const told: number[] = [];
    const first = runs.run([part(1), part(2)], (done) => told.push(done));
    const second = runs.run([part(7)]);
    expect(await first).toEqual({ kind: 'cancelled' });
    expect(stops()).toBe(1);
    // What the stopped engine still says is not heard.
    await started[0]?.finish();
    expect(told).toEqual([]);
    await started.at(-1)?.finish();
    expect(await second).toEqual({ kind: 'done', answers: ['7'] });
  });

  it('does not take the answer of an earlier run for its own, even from a board that reports late', async () => {
    const reports: JobReport[] = [];
    const wanted: string[][] = [];
    const runs = new PartRuns<CountingEngine>((report) => {
      reports.push(report);
      return { want: (jobs) => wanted.push(jobs.map((job) => job.key)) };
    });
    const [first, second] = [runs.run([part(1)]), runs.run([part(1)])];
    const [late = '', due = ''] = wanted.flat();
    reports[0]?.onDone(late, 'late');
    reports[0]?.onFailed(late, 'stopped');
    reports[0]?.onDone(due, 'due');
    expect(await first).toEqual({ kind: 'cancelled' });
    expect(await second).toEqual({ kind: 'done', answers: ['due'] });
  });

  it('stops when told to, once', async () => {
    const { runs, started, stops } = runsOn(2);
    const run = runs.run([part(1), part(2), part(3)]);
    runs.cancel();
    runs.cancel();
    expect(await run).toEqual({ kind: 'cancelled' });
    expect(stops()).toBe(2);
    expect(started).toHaveLength(2);
    const again = runs.run([part(4)]);
    await started.at(-1)?.finish();
    expect(await again).toEqual({ kind: 'done', answers: ['4'] });
  });

  it('gives up as a whole when an engine breaks down', async () => {
    const { runs, started } = runsOn(1);
    const run = runs.run([part(1), part(2), part(3)]);
    await started[0]?.finish();
    await started[1]?.fail('out of memory');
    const ended = await run;
    expect(ended.kind === 'failed' && String(ended.reason)).toBe('Error: out of memory');
    expect(started.length).toBeLessThanOrEqual(3);
    const again = runs.run([part(9)]);
    await started.at(-1)?.finish();
    expect((await again).kind).toBe('done');
  });

  it('is done at once where there is nothing to do', async () => {
    const { runs, started } = runsOn(1);
    expect(await runs.run([])).toEqual({ kind: 'done', answers: [] });
    expect(started).toEqual([]);
  });
});
