import { expose } from 'comlink';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { spreadStudy } from '../../lib/io/studies.ts';
import { studyPool } from '../../lib/io/study-pool.ts';
import { drawRequest } from '../../lib/risk/draw-request.ts';
import { drawSummary } from '../../lib/risk/draw-summary.ts';
import { evaluateDraws } from '../../lib/risk/evaluate-draws.ts';
import { certainPlan, uncertainPrice } from '../risk/uncertain-plan.ts';

const opened: MessagePort[] = [];
let alive = 0;

/** A worker whose thread is this one: messages go through a channel and are cloned, as across threads. */
class NearWorker {
  readonly postMessage: MessagePort['postMessage'];
  readonly addEventListener: MessagePort['addEventListener'];
  readonly removeEventListener: MessagePort['removeEventListener'];

  constructor(url: URL, options: WorkerOptions) {
    expect(url.pathname).toMatch(/study\.worker\.ts$/);
    expect(options.type).toBe('module');
    const { port1, port2 } = new MessageChannel();
    opened.push(port1, port2);
    expose({ evaluateDraws }, port2);
    port1.start();
    this.postMessage = port1.postMessage.bind(port1);
    this.addEventListener = port1.addEventListener.bind(port1);
    this.removeEventListener = port1.removeEventListener.bind(port1);
    alive += 1;
  }

  terminate(): void {
    alive -= 1;
  }
}

beforeEach(() => {
  alive = 0;
  vi.stubGlobal('Worker', NearWorker);
  vi.stubGlobal('navigator', { hardwareConcurrency: 3 });
});

afterEach(() => {
  for (const port of opened.splice(0)) port.close();
  vi.unstubAllGlobals();
});

describe('studyPool', () => {
  it('brings draws through threads unchanged', async () => {
    const plan = certainPlan(uncertainPrice);
    const study = spreadStudy(plan, 'two', 4, 2);
    const pool = studyPool();
    expect(alive).toBe(0);
    const run = await pool.run(study.parts);
    const outcomes = evaluateDraws(drawRequest(plan, ['two'], { count: 4, seed: 2 })).flat();
    expect(run.kind === 'done' && study.gather(run.answers)).toMatchObject({
      outcomes,
      summary: drawSummary(outcomes),
      inputs: 1,
    });
    expect(alive).toBe(2);
  });

  it('ends its threads when a run is stopped', async () => {
    const pool = studyPool();
    const run = pool.run(spreadStudy(certainPlan(uncertainPrice), 'two', 4, 2).parts);
    expect(alive).toBe(2);
    pool.cancel();
    expect(await run).toEqual({ kind: 'cancelled' });
    expect(alive).toBe(0);
  });
});
