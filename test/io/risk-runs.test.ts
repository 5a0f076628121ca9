import { describe, expect, it } from 'vitest';
import { JobBoard, type JobReport } from '../../lib/io/job-board.ts';
import { type RiskEngine, RiskRuns } from '../../lib/io/risk-runs.ts';
import type { DrawOutcome, DrawRequest } from '../../lib/risk/evaluate-draws.ts';
import { certainPlan } from '../risk/uncertain-plan.ts';

const PLAN = certainPlan();

/** A request of draws that are told apart by their number. */
function requestOf(numbers: readonly number[]): DrawRequest {
  return { plan: PLAN, scenarioIds: ['two'], inputs: [], draws: numbers.map((number) => [number]) };
}

const rowsOf = (request: DrawRequest): DrawOutcome[][] =>
  request.draws.map(([number]) => [{ kind: 'refused', problem: `draw ${number}` }]);

interface Started {
  readonly draws: readonly number[];
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
  const engine: RiskEngine = {
    evaluateDraws: (request) =>
      new Promise((resolve, reject) => {
        started.push({
          draws: request.draws.map(([number = Number.NaN]) => number),
          finish: () => {
            resolve(rowsOf(request));
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
  const runs = new RiskRuns((report) => new JobBoard<RiskEngine>(engines, spawn, report));
  return { runs, started, stops: () => stops };
}

describe('RiskRuns', () => {
  it('hands chunks to free engines and puts the answers back in order', async () => {
    const { runs, started } = runsOn(2);
    const told: string[] = [];
    const run = runs.run(requestOf([1, 2, 3, 4, 5]), {
      chunk: 2,
      onProgress: (done, all) => told.push(`${done}/${all}`),
    });
    expect(started.map((job) => job.draws)).toEqual([
      [1, 2],
      [3, 4],
    ]);
    await started[1]?.finish();
    expect(started.map((job) => job.draws)).toEqual([[1, 2], [3, 4], [5]]);
    await started[2]?.finish();
    await started[0]?.finish();
    expect(await run).toEqual({ kind: 'done', rows: rowsOf(requestOf([1, 2, 3, 4, 5])) });
    expect(told).toEqual(['2/5', '3/5', '5/5']);
  });

  it('gives the engines of an earlier run to a later one', async () => {
    const { runs, started, stops } = runsOn(1);
    const told: number[] = [];
    const first = runs.run(requestOf([1, 2]), { chunk: 1, onProgress: (done) => told.push(done) });
    const second = runs.run(requestOf([7]), { chunk: 1 });
    expect(await first).toEqual({ kind: 'cancelled' });
    expect(stops()).toBe(1);
    // What the stopped engine still says is not heard.
    await started[0]?.finish();
    expect(told).toEqual([]);
    await started.at(-1)?.finish();
    expect(await second).toEqual({ kind: 'done', rows: rowsOf(requestOf([7])) });
  });

  it('keeps two runs of the same draws apart', async () => {
    const { runs, started } = runsOn(1);
    const first = runs.run(requestOf([1]), { chunk: 1 });
    const second = runs.run(requestOf([1]), { chunk: 1 });
    expect((await first).kind).toBe('cancelled');
    expect(started).toHaveLength(2);
    await started[1]?.finish();
    expect((await second).kind).toBe('done');
  });

  it('does not take the answer of an earlier run for its own, even from a board that reports late', async () => {
    const reports: JobReport[] = [];
    const wanted: string[][] = [];
    const runs = new RiskRuns((report) => {
      reports.push(report);
      return { want: (jobs) => wanted.push(jobs.map((job) => job.key)) };
    });
    const [first, second] = [runs.run(requestOf([1])), runs.run(requestOf([2]))];
    const [late = '', due = ''] = wanted.flat();
    reports[0]?.onDone(late, rowsOf(requestOf([1])));
    reports[0]?.onFailed(late, 'stopped');
    reports[0]?.onDone(due, rowsOf(requestOf([2])));
    expect(await first).toEqual({ kind: 'cancelled' });
    expect(await second).toEqual({ kind: 'done', rows: rowsOf(requestOf([2])) });
  });

  it('stops when told to, once', async () => {
    const { runs, started, stops } = runsOn(2);
    const run = runs.run(requestOf([1, 2, 3]), { chunk: 1 });
    runs.cancel();
    runs.cancel();
    expect(await run).toEqual({ kind: 'cancelled' });
    expect(stops()).toBe(2);
    expect(started).toHaveLength(2);
    const again = runs.run(requestOf([4]));
    await started.at(-1)?.finish();
    expect(await again).toEqual({ kind: 'done', rows: rowsOf(requestOf([4])) });
  });

  it('gives up as a whole when an engine breaks down', async () => {
    const { runs, started } = runsOn(1);
    const run = runs.run(requestOf([1, 2, 3]), { chunk: 1 });
    await started[0]?.finish();
    await started[1]?.fail('out of memory');
    const ended = await run;
    expect(ended.kind === 'failed' && String(ended.reason)).toBe('Error: out of memory');
    expect(started.length).toBeLessThanOrEqual(3);
    const again = runs.run(requestOf([9]), { chunk: 1 });
    await started.at(-1)?.finish();
    expect((await again).kind).toBe('done');
  });

  it('is done at once where there is nothing to do', async () => {
    const { runs, started } = runsOn(1);
    expect(await runs.run(requestOf([]))).toEqual({ kind: 'done', rows: [] });
    expect(started).toEqual([]);
  });

  it('refuses chunks of nothing', () => {
    const { runs } = runsOn(1);
    expect(() => runs.run(requestOf([1]), { chunk: 0 })).toThrow(RangeError);
  });
});
