import type { Bottleneck, KneeCurve } from '../insight/insight-types.ts';
import type { ScenarioOutcome, ScenarioResult } from '../model/scenario-result.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioChain } from '../plan/scenario-chain.ts';
import type { Turn } from '../risk/by-turns.ts';
import { FigureKeys } from '../views/figure-keys.ts';
import { type ComputedScenario, NOTHING_COMPUTED } from '../views/scenario-rows.ts';
import { type Board, type Job, type JobReport, UNFINISHED } from './job-board.ts';

/** What the desk asks of an engine; across threads every answer is a promise. */
export interface DeskEngine {
  readonly evaluateScenario: (plan: Plan, scenarioId: string) => Promise<ScenarioOutcome>;
  readonly findBottleneck: (plan: Plan, scenarioId: string) => Promise<Turn<Bottleneck | null>>;
  readonly kneeCurve: (plan: Plan, scenarioId: string, mostChambers: number) => Promise<Turn<KneeCurve>>;
}

/** A plan that may soon be the plan, such as one with what is being typed taken up, and the scenario that it would change. */
export interface Foreseen {
  readonly plan: Plan;
  readonly scenarioId: string;
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
  /** The user has stopped the work; the next edit of the plan, or `goOn`, takes it up again. */
  readonly isStopped: boolean;
}

export const EMPTY_SNAPSHOT: DeskSnapshot = {
  computed: new Map(),
  knee: { curve: null, isStale: false },
  progress: { done: 0, all: 0 },
  isStopped: false,
};

/** Answers kept, so that undo shows its figures at once. */
const MOST_ANSWERS = 400;
/** The knee is looked for up to this many chambers, or two more than the scenario has. */
const FEWEST_KNEE_CHAMBERS = 8;
const MOST_KNEE_CHAMBERS = 16;

/** Of a long list of choices the first ones are worked out beforehand. */
const MOST_FORESEEN = 8;

/** How long hands must have rested before slow work is taken up [ms]. */
const REST = 400;

type Kind = 'result' | 'bottleneck' | 'knee';

interface Watched {
  readonly scenario: Scenario;
  /** Under which the answers to what is asked of it are kept. */
  readonly keys: Readonly<Record<Kind, string>>;
}

/** Something wanted to be known of a scenario. */
type Wish = readonly [Kind, Watched];

function chambersOf(scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
}

function watch(plan: Plan, scenario: Scenario, book: FigureKeys): Watched {
  const { figures, nameless } = book.of(plan, scenario);
  const keys = { result: `result ${figures}`, bottleneck: `bottleneck ${nameless}`, knee: `knee ${nameless}` };
  return { scenario, keys };
}

/** More rows than these have not been edited by hand, but by a change that concerns all. */
const MOST_EDITED = 12;

/** Ids of the scenarios that an edit has changed; none when it has changed most of them, null when it has changed no figures. @param before keys by id */
function editedIn(before: ReadonlyMap<string, string>, watched: readonly Watched[]): ReadonlySet<string> | null {
  const changed = watched.filter(({ scenario, keys }) => before.get(scenario.id) !== keys.result);
  if (changed.length === 0) return null;
  const isByHand = before.size > 0 && changed.length <= MOST_EDITED;
  return new Set(isByHand ? changed.map(({ scenario }) => scenario.id) : []);
}

function isSameComputed(a: ComputedScenario, b: ComputedScenario): boolean {
  const isSameResult = a.outcome === b.outcome && a.lastResult === b.lastResult;
  return isSameResult && a.bottleneck === b.bottleneck && a.lastBottleneck === b.lastBottleneck;
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

/** What the engine needs of a plan for one scenario: today, and the scenarios on the way to it. The rest would only be copied. */
function planFor(plan: Plan, scenario: Scenario): Plan {
  const needed = new Set([...plan.scenarios.slice(0, 1), ...scenarioChain(plan, scenario)]);
  return { ...plan, scenarios: plan.scenarios.filter((one) => needed.has(one)), batchLog: [] };
}

/** What a search has come to by now. */
async function piece(search: Promise<Turn<unknown>>): Promise<unknown> {
  const found = await search;
  return found.isWhole ? found.value : UNFINISHED;
}

function jobOf(kind: Kind, whole: Plan, { scenario, keys }: Watched): Job<DeskEngine> {
  const start = (engine: DeskEngine): Promise<unknown> => {
    const plan = planFor(whole, scenario);
    if (kind === 'result') return engine.evaluateScenario(plan, scenario.id);
    if (kind === 'bottleneck') return piece(engine.findBottleneck(plan, scenario.id));
    const most = Math.min(MOST_KNEE_CHAMBERS, Math.max(FEWEST_KNEE_CHAMBERS, chambersOf(scenario) + 2));
    return piece(engine.kneeCurve(plan, scenario.id, most));
  };
  return { key: keys[kind], slow: kind !== 'result', start };
}

/** Answers by key, the oldest forgotten when there are too many. */
class AnswerBook {
  readonly #answers = new Map<string, unknown>();

  keep(key: string, value: unknown): void {
    this.#answers.delete(key);
    this.#answers.set(key, value);
    const oldest = this.#answers.keys().next().value;
    if (this.#answers.size > MOST_ANSWERS && oldest !== undefined) this.#answers.delete(oldest);
  }

  forgetRefusals(): void {
    for (const [key, value] of this.#answers) {
      if ((value as { readonly kind?: unknown } | null)?.kind === 'refused') this.#answers.delete(key);
    }
  }

  has(kind: Kind, one: Watched): boolean {
    return this.#answers.has(one.keys[kind]);
  }

  get<Value>(kind: Kind, one: Watched): Value | undefined {
    return this.#answers.get(one.keys[kind]) as Value | undefined;
  }

  isComputed(one: Watched): boolean {
    return this.get<ScenarioOutcome>('result', one)?.kind === 'computed';
  }
}

/** Keeps the figures of a plan up to date: only what has changed is worked out, the latest edit wins. */
export class EngineDesk {
  readonly #answers = new AnswerBook();
  readonly #lastResults = new Map<string, ScenarioResult>();
  readonly #lastBottlenecks = new Map<string, Bottleneck>();
  readonly #listeners = new Set<() => void>();
  readonly #board: Board<DeskEngine>;
  #lastKnee: { readonly scenarioId: string; readonly curve: KneeCurve } | null = null;
  #watched: readonly Watched[] = [];
  #plan: Plan | null = null;
  #currentId = '';
  #snapshot = EMPTY_SNAPSHOT;
  #isStopped = false;
  #edited: ReadonlySet<string> = new Set();
  #foreseen: readonly { readonly plan: Plan; readonly one: Watched }[] = [];
  /** What is foreseen may wait until hands rest. */
  #isGuess = false;
  /** Hands are at work until this runs out. */
  #rest: ReturnType<typeof setTimeout> | null = null;
  readonly #keys = new FigureKeys();
  #names = '';

  constructor(makeBoard: (report: JobReport) => Board<DeskEngine>) {
    this.#board = makeBoard({
      onDone: (key, value) => this.#remember(key, value),
      onFailed: (key, reason) => this.#rememberFailure(key, reason),
    });
  }

  /** Works out whatever of this plan is not known yet. `currentId` is served first, and has its knee worked out. */
  follow(plan: Plan, currentId: string): void {
    if (plan === this.#plan && currentId === this.#currentId) return;
    if (plan !== this.#plan) {
      this.#takeNames(plan);
      const before = new Map(this.#watched.map((one) => [one.scenario.id, one.keys.result]));
      this.#watched = plan.scenarios.map((scenario) => watch(plan, scenario, this.#keys));
      this.#edited = editedIn(before, this.#watched) ?? this.#edited;
      this.#isStopped = false;
    }
    this.#plan = plan;
    this.#currentId = currentId;
    this.#refresh();
  }

  /**
   * Works out what may soon be wanted, likeliest first, so that its figures are there when it is; nothing when the list is empty.
   * @param isGuess nobody has begun to enter it, so that it waits until hands rest
   */
  foresee(next: readonly Foreseen[], isGuess = false): void {
    if (next.length === 0 && this.#foreseen.length === 0) return;
    this.#isGuess = isGuess;
    this.#foreseen = next.slice(0, MOST_FORESEEN).flatMap(({ plan, scenarioId }) => {
      const scenario = plan.scenarios.find(({ id }) => id === scenarioId);
      return scenario ? [{ plan, one: watch(plan, scenario, this.#keys) }] : [];
    });
    if (!isGuess && this.#foreseen.length > 0) this.attend();
    this.#putUp();
  }

  /** Told that hands are at work: slow work rests until they do, so that what they do is answered at once. */
  attend(): void {
    if (this.#rest) clearTimeout(this.#rest);
    this.#rest = setTimeout(() => {
      this.#rest = null;
      this.#putUp();
    }, REST);
  }

  /** Stops all work. What was worked out last stays; the next edit or `goOn` takes the work up again. */
  stop(): void {
    this.#isStopped = true;
    this.#refresh();
  }

  /** Takes up the work that was stopped. */
  goOn(): void {
    this.#isStopped = false;
    this.#refresh();
  }

  snapshot(): DeskSnapshot {
    return this.#snapshot;
  }

  /** @returns how to stop listening */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Figures name no product and no scenario, but what is said of a scenario that cannot run does. */
  #takeNames(plan: Plan): void {
    const names = JSON.stringify([...plan.products, ...plan.scenarios].map(({ id, name }) => [id, name]));
    if (names !== this.#names) this.#answers.forgetRefusals();
    this.#names = names;
  }

  #remember(key: string, value: unknown): void {
    this.#answers.keep(key, value);
    this.#refresh();
  }

  #rememberFailure(key: string, reason: unknown): void {
    const failed = this.#watched.find((one) => one.keys.result === key);
    // What is only expected may never be wanted; if it is, it is tried again and its row says what is wrong.
    this.#foreseen = this.#foreseen.filter(({ one }) => one.keys.result !== key);
    if (failed) this.#remember(key, brokenOutcome(failed, reason));
    else if (key.startsWith('result')) this.#putUp();
    else this.#remember(key, null);
  }

  #refresh(): void {
    const all = this.#wanted();
    const open = this.#open(all);
    this.#snapshot = {
      computed: new Map(this.#watched.map((one) => [one.scenario.id, this.#computed(one)])),
      knee: this.#knee(),
      progress: { done: all.length - open.length, all: all.length },
      isStopped: this.#isStopped && open.length > 0,
    };
    for (const listener of this.#listeners) listener();
    this.#putUp(open);
  }

  /** Puts up what is to be worked on now. */
  #putUp(open = this.#open(this.#wanted())): void {
    const plan = this.#plan;
    if (!plan) return;
    const foreseen = this.#dueForeseen();
    const jobs = this.#isStopped ? [] : open.filter((wish) => this.#isDue(wish, foreseen.length > 0));
    this.#board.want([
      ...foreseen.map((next) => jobOf('result', next.plan, next.one)),
      ...jobs.map(([kind, one]) => jobOf(kind, plan, one)),
    ]);
  }

  #open(wishes: readonly Wish[]): readonly Wish[] {
    return wishes.filter(([kind, one]) => !this.#answers.has(kind, one));
  }

  #dueForeseen() {
    if (this.#isGuess && (this.#rest || this.#isStopped)) return [];
    return this.#foreseen.filter(({ one }) => !this.#answers.has('result', one));
  }

  /** While somebody types only what the edits concern is worked on, and nothing slow while hands are at work or something is foreseen. */
  #isDue([kind, one]: Wish, isForeseeing: boolean): boolean {
    const { id } = one.scenario;
    const isTyping = this.#rest !== null && this.#foreseen.length > 0 && !this.#isGuess;
    if (kind === 'result') return !isTyping || this.#edited.has(id) || id === this.#currentId;
    // A bottleneck or a knee is only looked for once the scenario itself can be worked out.
    return !this.#rest && !isForeseeing && this.#answers.isComputed(one);
  }

  /**
   * Everything wanted, most urgent first: figures, then bottlenecks, then the knee of the chosen scenario. Figures of the rows
   * just edited come first, as the choice has gone on to the next row by then; else the chosen scenario before the others.
   */
  #wanted(): readonly Wish[] {
    const current = this.#watched.filter((one) => one.scenario.id === this.#currentId);
    const ordered = [...current, ...this.#watched.filter((one) => one.scenario.id !== this.#currentId)];
    const isEdited = (one: Watched) => this.#edited.has(one.scenario.id);
    const runs = (one: Watched) => !this.#answers.has('result', one) || this.#answers.isComputed(one);
    return [
      ...ordered.filter(isEdited).map((one) => ['result', one] as const),
      ...ordered.filter((one) => !isEdited(one)).map((one) => ['result', one] as const),
      ...ordered.filter(runs).map((one) => ['bottleneck', one] as const),
      ...current.filter(runs).map((one) => ['knee', one] as const),
    ];
  }

  #computed(one: Watched): ComputedScenario {
    const { id } = one.scenario;
    const outcome = this.#answers.get<ScenarioOutcome>('result', one) ?? null;
    if (outcome?.kind === 'computed') this.#lastResults.set(id, outcome.result);
    const bottleneck = this.#answers.get<Bottleneck | null>('bottleneck', one);
    if (bottleneck) this.#lastBottlenecks.set(id, bottleneck);
    const lastResult = this.#lastResults.get(id) ?? null;
    const next = { outcome, lastResult, bottleneck, lastBottleneck: this.#lastBottlenecks.get(id) ?? null };
    const was = this.#snapshot.computed.get(id);
    return was && isSameComputed(was, next) ? was : next;
  }

  #knee(): KneeAnswer {
    const scenarioId = this.#currentId;
    const current = this.#watched.find((one) => one.scenario.id === scenarioId);
    const curve = current ? (this.#answers.get<KneeCurve>('knee', current) ?? null) : null;
    if (curve) this.#lastKnee = { scenarioId, curve };
    if (curve) return { curve, isStale: false };
    const last = this.#lastKnee?.scenarioId === scenarioId ? this.#lastKnee.curve : null;
    return { curve: last, isStale: last !== null };
  }
}

/** The computed state of a scenario the desk has not heard of yet is "nothing". */
export function computedIn(snapshot: DeskSnapshot, scenarioId: string): ComputedScenario {
  return snapshot.computed.get(scenarioId) ?? NOTHING_COMPUTED;
}
