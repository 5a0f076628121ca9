import { describe, expect, it, vi } from 'vitest';
import { computedIn, type DeskEngine, EngineDesk } from '../../lib/io/engine-desk.ts';
import { type Job, type JobReport, UNFINISHED } from '../../lib/io/job-board.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { SAMPLE_BOTTLENECK, sampleResult } from '../views/sample-result.ts';

const PLAN: Plan = { ...DEMO_PLAN, scenarios: DEMO_PLAN.scenarios.slice(0, 3) };
const COMPUTED = { kind: 'computed', result: sampleResult() } as const;

/** A desk whose board only writes down what is wanted; the test answers. */
function deskOf() {
  let report: JobReport | undefined;
  let wanted: readonly Job<DeskEngine>[] = [];
  const desk = new EngineDesk((given) => {
    report = given;
    return {
      want: (jobs) => {
        wanted = jobs;
      },
    };
  });
  const kinds = () => wanted.map((job) => job.key.split(' ')[0]);
  const answer = (value: unknown, at = 0) => report?.onDone(wanted[at]?.key ?? '', value);
  const fail = (reason: unknown) => report?.onFailed(wanted[0]?.key ?? '', reason);
  const answerAll = () => {
    while (kinds()[0] === 'result') answer(COMPUTED);
    while (kinds()[0] === 'bottleneck') answer(SAMPLE_BOTTLENECK);
    if (kinds()[0] === 'knee') answer({ points: [], knee: null, threshold: 0.8 });
  };
  return { desk, kinds, answer, fail, answerAll, keys: () => wanted.map((job) => job.key) };
}

function renamed(plan: Plan, id: string, change: Partial<Plan['scenarios'][number]>): Plan {
  return {
    ...plan,
    scenarios: plan.scenarios.map((scenario) => (scenario.id === id ? { ...scenario, ...change } : scenario)),
  };
}

describe('engine desk', () => {
  it('asks for figures first, then for bottlenecks, and for the knee of the chosen scenario', () => {
    const { desk, kinds, answer } = deskOf();
    desk.follow(PLAN, 'three-shared');
    expect(kinds()).toEqual(['result', 'result', 'result']);
    answer(COMPUTED);
    expect(kinds()).toEqual(['result', 'result', 'bottleneck', 'knee']);
    expect(computedIn(desk.snapshot(), 'three-shared').outcome).toBe(COMPUTED);
    expect(computedIn(desk.snapshot(), 'today').outcome).toBeNull();
  });

  it('counts what is done', () => {
    const { desk, answerAll } = deskOf();
    desk.follow(PLAN, 'today');
    expect(desk.snapshot().progress).toEqual({ done: 0, all: 7 });
    answerAll();
    expect(desk.snapshot().progress).toEqual({ done: 7, all: 7 });
  });

  it('works out again only the row that was changed, and keeps its old figures meanwhile', () => {
    const { desk, answerAll, keys, kinds } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    desk.follow(renamed(PLAN, 'three-shared', { purchaseMonth: 7 }), 'today');
    expect(kinds()).toEqual(['result']);
    expect(keys()[0]).toContain('"purchaseMonth":7');
    const row = computedIn(desk.snapshot(), 'three-shared');
    expect(row).toMatchObject({ outcome: null, bottleneck: undefined });
    expect(row.lastResult).toBe(COMPUTED.result);
    expect(row.lastBottleneck).toBe(SAMPLE_BOTTLENECK);
  });

  it('works out everything again when today changes', () => {
    const { desk, answerAll, kinds } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    desk.follow(renamed(PLAN, 'today', { pattern: 'two-shifts' }), 'today');
    expect(kinds()).toEqual(['result', 'result', 'result']);
  });

  it('asks for nothing when only a name changes, or when a change is undone', () => {
    const { desk, answerAll, kinds } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    desk.follow(renamed(PLAN, 'three-shared', { name: 'Trio' }), 'today');
    expect(kinds()).toEqual([]);
    desk.follow(renamed(PLAN, 'three-shared', { purchaseMonth: 7 }), 'today');
    desk.follow(PLAN, 'today');
    expect(kinds()).toEqual([]);
    expect(computedIn(desk.snapshot(), 'three-shared').outcome).toBe(COMPUTED);
  });

  it('asks for nothing when a product is renamed, but anew for what could not run, which names it', () => {
    const { desk, answer, answerAll, kinds } = deskOf();
    desk.follow(PLAN, 'three-shared');
    answer({ kind: 'refused', scenarioId: 'three-shared', name: '', findings: [] });
    answerAll();
    desk.follow({ ...PLAN, products: PLAN.products.map((product) => ({ ...product, name: 'Other' })) }, 'three-shared');
    expect(kinds()).toEqual(['result']);
  });

  it('looks for no bottleneck of a scenario that cannot run', () => {
    const { desk, answer, kinds } = deskOf();
    desk.follow(PLAN, 'three-shared');
    answer({ kind: 'refused', scenarioId: 'three-shared', name: '', findings: [] });
    answer(COMPUTED);
    answer(COMPUTED);
    expect(kinds()).toEqual(['bottleneck', 'bottleneck']);
  });

  it('turns a fault of the engine into a finding of that row', () => {
    const { desk, fail, kinds } = deskOf();
    desk.follow(PLAN, 'three-shared');
    fail(new RangeError('a speed of −1 m³/s'));
    const { outcome } = computedIn(desk.snapshot(), 'three-shared');
    expect(outcome?.kind === 'refused' && outcome.findings[0]?.problem).toContain('a speed of −1 m³/s');
    expect(kinds()).toEqual(['result', 'result']);
  });

  it('looks for the knee of another scenario when that one is chosen', () => {
    const { desk, answerAll, kinds } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    expect(desk.snapshot().knee.curve).not.toBeNull();
    desk.follow(PLAN, 'three-shared');
    expect(kinds()).toEqual(['knee']);
    expect(desk.snapshot().knee).toEqual({ curve: null, isStale: false });
  });

  it('shows an old knee as old while the new one is looked for', () => {
    const { desk, answerAll } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    desk.follow(renamed(PLAN, 'today', { pattern: 'two-shifts' }), 'today');
    expect(desk.snapshot().knee.isStale).toBe(true);
  });

  it('stops all work, keeps what there is, and goes on when told to or when the plan is edited', () => {
    const { desk, answer, answerAll, kinds } = deskOf();
    desk.follow(PLAN, 'today');
    answer(COMPUTED);
    desk.stop();
    expect(kinds()).toEqual([]);
    expect(desk.snapshot()).toMatchObject({ isStopped: true, progress: { done: 1, all: 7 } });
    expect(computedIn(desk.snapshot(), 'today').outcome).toBe(COMPUTED);
    desk.follow(PLAN, 'three-shared');
    expect(kinds()).toEqual([]);
    desk.goOn();
    expect(desk.snapshot().isStopped).toBe(false);
    expect(kinds()[0]).toBe('result');
    desk.stop();
    desk.follow(renamed(PLAN, 'three-shared', { purchaseMonth: 7 }), 'three-shared');
    expect(desk.snapshot().isStopped).toBe(false);
    answerAll();
    desk.stop();
    expect(desk.snapshot().isStopped).toBe(false);
  });

  it('works out the row just edited before the one chosen since', () => {
    const { desk, keys } = deskOf();
    desk.follow(PLAN, 'today');
    desk.follow(renamed(PLAN, 'four-shared', { purchaseMonth: 7 }), 'today');
    desk.follow(renamed(PLAN, 'four-shared', { purchaseMonth: 7 }), 'three-shared');
    expect(keys()[0]).toContain('"purchaseMonth":7');
    expect(keys()[1]).toContain('"count":3');
  });

  it('gives rows of which nothing has changed the same object', () => {
    const { desk, answerAll } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    const before = computedIn(desk.snapshot(), 'four-shared');
    desk.follow(renamed(PLAN, 'three-shared', { purchaseMonth: 7 }), 'today');
    expect(computedIn(desk.snapshot(), 'four-shared')).toBe(before);
    expect(computedIn(desk.snapshot(), 'three-shared').outcome).toBeNull();
  });

  it('sends an engine today and what leads to the scenario, and nothing besides', async () => {
    const sent: string[][] = [];
    const desk = new EngineDesk(() => ({
      want: (jobs) => {
        const engine = { evaluateScenario: (plan: Plan) => sent.push(plan.scenarios.map(({ id }) => id)) };
        for (const job of jobs) if (job.key.startsWith('result')) job.start(engine as unknown as DeskEngine);
      },
    }));
    desk.follow(renamed(PLAN, 'four-shared', { after: 'three-shared' }), 'today');
    expect(sent).toEqual([['today'], ['today', 'three-shared'], ['today', 'three-shared', 'four-shared']]);
  });

  it('tells its listeners', () => {
    const { desk, answer } = deskOf();
    let told = 0;
    const leave = desk.subscribe(() => {
      told += 1;
    });
    desk.follow(PLAN, 'today');
    answer(COMPUTED);
    leave();
    answer(COMPUTED);
    expect(told).toBe(2);
  });

  it('works out what is being typed before anything else, so that its figures are there when it is entered', () => {
    const { desk, answer, answerAll, kinds, keys } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    const next = renamed(PLAN, 'three-shared', { purchaseMonth: 7 });
    desk.foresee([{ plan: next, scenarioId: 'three-shared' }]);
    expect(kinds()).toEqual(['result']);
    expect(keys()[0]).toContain('"purchaseMonth":7');
    expect(desk.snapshot().progress).toEqual({ done: 7, all: 7 });
    answer(COMPUTED);
    desk.foresee([]);
    desk.follow(next, 'today');
    expect(kinds()).toEqual([]);
    expect(computedIn(desk.snapshot(), 'three-shared').outcome).toBe(COMPUTED);
  });

  it('asks for nothing when what is being typed changes no figure, and no longer for what was typed before', () => {
    const { desk, answerAll, kinds } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    desk.foresee([{ plan: renamed(PLAN, 'three-shared', { purchaseMonth: 7 }), scenarioId: 'three-shared' }]);
    desk.foresee([{ plan: renamed(PLAN, 'three-shared', { name: 'Trio' }), scenarioId: 'three-shared' }]);
    expect(kinds()).toEqual([]);
  });

  it('works out a guess once hands rest, and slow work after it', () => {
    vi.useFakeTimers();
    const { desk, answer, kinds, keys } = deskOf();
    desk.follow(PLAN, 'today');
    for (const _ of PLAN.scenarios) answer(COMPUTED);
    desk.attend();
    desk.foresee([{ plan: renamed(PLAN, 'three-shared', { purchaseMonth: 7 }), scenarioId: 'three-shared' }], true);
    expect(kinds()).toEqual([]);
    vi.advanceTimersByTime(1000);
    expect(kinds()).toEqual(['result']);
    expect(keys()[0]).toContain('"purchaseMonth":7');
    answer(COMPUTED);
    desk.foresee([], true);
    expect(kinds()[0]).toBe('bottleneck');
    vi.useRealTimers();
  });

  it('tries again what failed before it was entered', () => {
    const { desk, answerAll, fail, kinds } = deskOf();
    desk.follow(PLAN, 'today');
    answerAll();
    const next = renamed(PLAN, 'three-shared', { purchaseMonth: 7 });
    desk.foresee([{ plan: next, scenarioId: 'three-shared' }]);
    fail(new RangeError('a speed of −1 m³/s'));
    expect(kinds()).toEqual([]);
    desk.follow(next, 'today');
    expect(kinds()).toEqual(['result']);
    fail(new RangeError('a speed of −1 m³/s'));
    expect(computedIn(desk.snapshot(), 'three-shared').outcome?.kind).toBe('refused');
  });

  it('lets other rows and slow work rest while somebody types, and takes them up soon after', () => {
    vi.useFakeTimers();
    const { desk, answer, kinds, keys } = deskOf();
    desk.follow(PLAN, 'today');
    answer(COMPUTED);
    desk.foresee([{ plan: renamed(PLAN, 'four-shared', { purchaseMonth: 7 }), scenarioId: 'four-shared' }]);
    expect(keys()).toHaveLength(1);
    expect(keys()[0]).toContain('"purchaseMonth":7');
    vi.advanceTimersByTime(1000);
    expect(kinds()).toEqual(['result', 'result', 'result']);
    answer(COMPUTED);
    expect(kinds()).toEqual(['result', 'result', 'bottleneck', 'knee']);
    desk.attend();
    desk.follow(PLAN, 'three-shared');
    expect(kinds()).not.toContain('bottleneck');
    vi.advanceTimersByTime(1000);
    expect(kinds()).toContain('bottleneck');
    vi.useRealTimers();
  });

  it('asks for a search piece by piece', async () => {
    const asked: Job<DeskEngine>[] = [];
    let tell: JobReport | undefined;
    const desk = new EngineDesk((report) => {
      tell = report;
      return { want: (jobs) => asked.splice(0, asked.length, ...jobs) };
    });
    desk.follow(PLAN, 'three-shared');
    tell?.onDone(asked[0]?.key ?? '', COMPUTED);
    const search = asked.find(({ key }) => key.startsWith('bottleneck'));
    const found: unknown[] = [{ isWhole: false }, { isWhole: true, value: SAMPLE_BOTTLENECK }];
    const engine = { findBottleneck: async () => found.shift() } as unknown as DeskEngine;
    expect(await search?.start(engine)).toBe(UNFINISHED);
    expect(await search?.start(engine)).toBe(SAMPLE_BOTTLENECK);
  });
});
