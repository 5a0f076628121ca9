import type { Bottleneck, KneeCurve } from '../insight/insight-types.ts';
import type { ScenarioOutcome, ScenarioResult } from '../model/scenario-result.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioKey } from '../views/scenario-key.ts';
import { type ComputedScenario, NOTHING_COMPUTED } from '../views/scenario-rows.ts';
import type { Job, JobBoard } from './job-board.ts';

/** What the desk asks of an engine; across threads every answer is a promise. */
export interface DeskEngine {
  readonly evaluateScenario: (plan: Plan, scenarioId: string) => Promise<ScenarioOutcome>;
  readonly findBottleneck: (plan: Plan, scenarioId: string) => Promise<Bottleneck | null>;
  readonly kneeCurve: (plan: Plan, scenarioId: string, mostChambers: number) => Promise<KneeCurve>;
}

export interface KneeAnswer {
  readonly curve: KneeCurve | null;
  /** The curve belongs to an earlier state of the scenario. */
  readonly isStale: boolean;
}

/** How much of what the sheet shows has been worked out. */
export interface Progress {
  readonly done: number;
  readonly all: number;
}

export interface DeskSnapshot {
  readonly computed: ReadonlyMap<string, ComputedScenario>;
  readonly knee: KneeAnswer;
  readonly progress: Progress;
}

export interface EngineDesk {
  /** Works out whatever of this plan is not known yet. `currentId` is served first, and has its knee worked out. */
  readonly follow: (plan: Plan, currentId: string) => void;
  readonly snapshot: () => DeskSnapshot;
  readonly subscribe: (listener: () => void) => () => void;
  readonly close: () => void;
}

export const EMPTY_SNAPSHOT: DeskSnapshot = {
  computed: new Map(),
  knee: { curve: null, isStale: false },
  progress: { done: 0, all: 0 },
};

/** Answers kept, so that undo shows its figures at once. */
const MOST_ANSWERS = 150;
/** The knee is looked for up to this many chambers, or two more than the scenario has. */
const FEWEST_KNEE_CHAMBERS = 8;
const MOST_KNEE_CHAMBERS = 16;

type Kind = 'result' | 'bottleneck' | 'knee';

interface Watched {
  readonly scenario: Scenario;
  readonly key: string;
}

function chambersOf(scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
}

function jobKey(kind: Kind, watched: Watched): string {
  return `${kind} ${watched.key}`;
}

/** A fault of the engine itself, told as a finding so that the row says it and the others go on. */
function brokenOutcome({ scenario }: Watched, reason: unknown): ScenarioOutcome {
  const message = reason instanceof Error ? reason.message : String(reason);
  const finding = {
    severity: 'error',
    field: 'scenarios',
    value: scenario.name,
    problem: `This row could not be worked out: ${message}`,
    remedy: 'Change one of its entries, or undo the last change.',
  } as const;
  return { kind: 'refused', scenarioId: scenario.id, name: scenario.name, findings: [finding] };
}

function jobOf(kind: Kind, plan: Plan, watched: Watched): Job<DeskEngine> {
  const { scenario } = watched;
  const most = Math.min(MOST_KNEE_CHAMBERS, Math.max(FEWEST_KNEE_CHAMBERS, chambersOf(scenario) + 2));
  const start = (engine: DeskEngine): Promise<unknown> => {
    if (kind === 'result') return engine.evaluateScenario(plan, scenario.id);
    if (kind === 'bottleneck') return engine.findBottleneck(plan, scenario.id);
    return engine.kneeCurve(plan, scenario.id, most);
  };
  return { key: jobKey(kind, watched), slow: kind !== 'result', start };
}

/** Keeps the figures of a plan up to date: only what has changed is worked out, the latest edit wins. */
export function createEngineDesk(
  makeBoard: (report: {
    onDone: (key: string, value: unknown) => void;
    onFailed: (key: string, reason: unknown) => void;
  }) => JobBoard<DeskEngine>,
): EngineDesk {
  const answers = new Map<string, unknown>();
  const lastResults = new Map<string, ScenarioResult>();
  const lastBottlenecks = new Map<string, Bottleneck>();
  let lastKnee: { scenarioId: string; curve: KneeCurve } | null = null;
  let watched: readonly Watched[] = [];
  let plan: Plan | null = null;
  let currentId = '';
  let snapshot = EMPTY_SNAPSHOT;
  const listeners = new Set<() => void>();

  const board = makeBoard({ onDone: remember, onFailed: rememberFailure });

  function keep(key: string, value: unknown): void {
    answers.delete(key);
    answers.set(key, value);
    const oldest = answers.keys().next().value;
    if (answers.size > MOST_ANSWERS && oldest !== undefined) answers.delete(oldest);
  }

  function remember(key: string, value: unknown): void {
    keep(key, value);
    refresh();
  }

  function rememberFailure(key: string, reason: unknown): void {
    const failed = watched.find((one) => jobKey('result', one) === key);
    keep(key, failed ? brokenOutcome(failed, reason) : null);
    refresh();
  }

  function answer<Value>(kind: Kind, one: Watched): Value | undefined {
    return answers.get(jobKey(kind, one)) as Value | undefined;
  }

  function computedOf(one: Watched): ComputedScenario {
    const { id } = one.scenario;
    const outcome = answer<ScenarioOutcome>('result', one) ?? null;
    if (outcome?.kind === 'computed') lastResults.set(id, outcome.result);
    const bottleneck = answer<Bottleneck | null>('bottleneck', one);
    if (bottleneck) lastBottlenecks.set(id, bottleneck);
    return {
      outcome,
      lastResult: lastResults.get(id) ?? null,
      bottleneck,
      lastBottleneck: lastBottlenecks.get(id) ?? null,
    };
  }

  function kneeAnswer(): KneeAnswer {
    const current = watched.find((one) => one.scenario.id === currentId);
    const curve = current ? (answer<KneeCurve>('knee', current) ?? null) : null;
    if (curve) lastKnee = { scenarioId: currentId, curve };
    if (curve) return { curve, isStale: false };
    const last = lastKnee?.scenarioId === currentId ? lastKnee.curve : null;
    return { curve: last, isStale: last !== null };
  }

  function isComputed(one: Watched): boolean {
    return answer<ScenarioOutcome>('result', one)?.kind === 'computed';
  }

  /** Everything wanted, most urgent first: figures, then bottlenecks, the chosen scenario before the others, then its knee. */
  function wanted(): (readonly [Kind, Watched])[] {
    const current = watched.filter((one) => one.scenario.id === currentId);
    const ordered = [...current, ...watched.filter((one) => one.scenario.id !== currentId)];
    const known = ordered.filter((one) => !answers.has(jobKey('result', one)) || isComputed(one));
    return [
      ...ordered.map((one) => ['result', one] as const),
      ...known.map((one) => ['bottleneck', one] as const),
      ...current.filter((one) => known.includes(one)).map((one) => ['knee', one] as const),
    ];
  }

  function refresh(): void {
    const all = wanted();
    const open = all.filter(([kind, one]) => !answers.has(jobKey(kind, one)));
    snapshot = {
      computed: new Map(watched.map((one) => [one.scenario.id, computedOf(one)])),
      knee: kneeAnswer(),
      progress: { done: all.length - open.length, all: all.length },
    };
    for (const listener of listeners) listener();
    // A bottleneck or a knee is only looked for once the scenario itself can be worked out.
    const ready = open.filter(([kind, one]) => kind === 'result' || isComputed(one));
    const current = plan;
    if (current) board.want(ready.map(([kind, one]) => jobOf(kind, current, one)));
  }

  function follow(next: Plan, nextCurrentId: string): void {
    if (next === plan && nextCurrentId === currentId) return;
    if (next !== plan) watched = next.scenarios.map((scenario) => ({ scenario, key: scenarioKey(next, scenario) }));
    plan = next;
    currentId = nextCurrentId;
    refresh();
  }

  function subscribe(listener: () => void): () => void {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }

  return { follow, snapshot: () => snapshot, subscribe, close: board.close };
}

/** The computed state of a scenario the desk has not heard of yet is "nothing". */
export function computedIn(snapshot: DeskSnapshot, scenarioId: string): ComputedScenario {
  return snapshot.computed.get(scenarioId) ?? NOTHING_COMPUTED;
}
