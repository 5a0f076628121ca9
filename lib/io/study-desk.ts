import type { PartRun, PartRuns } from './part-runs.ts';
import type { Study, StudyAnswers, StudyEngine, StudyKind } from './studies.ts';

/** How far a kind of study has come. Its last answer stays until there is another. */
export interface StudyState<Kind extends StudyKind = StudyKind> {
  readonly status: 'idle' | 'waiting' | 'running' | 'failed';
  /** Share done while it runs, 0–1. */
  readonly progress: number;
  /** Key of what is being worked out, or was tried last; null before the first. */
  readonly wantedKey: string | null;
  readonly answer: { readonly key: string; readonly value: StudyAnswers[Kind] } | null;
}

const UNTOUCHED: StudyState = { status: 'idle', progress: 0, wantedKey: null, answer: null };

type States = { readonly [Kind in StudyKind]: StudyState<Kind> };

const NO_STUDIES: States = {
  spread: UNTOUCHED as StudyState<'spread'>,
  tornado: UNTOUCHED as StudyState<'tornado'>,
  kneeMap: UNTOUCHED as StudyState<'kneeMap'>,
  pumpSides: UNTOUCHED as StudyState<'pumpSides'>,
  stress: UNTOUCHED as StudyState<'stress'>,
  turning: UNTOUCHED as StudyState<'turning'>,
  lenderBasis: UNTOUCHED as StudyState<'lenderBasis'>,
};

/** Long pieces of work that the page has asked for, done one after the other; one of a kind at a time. */
export class StudyDesk {
  readonly #runs: PartRuns<StudyEngine>;
  readonly #listeners = new Set<() => void>();
  #queue: readonly Study[] = [];
  /** An object of its own for every run: one study may be begun twice, and the first run must not speak for the second. */
  #running: { readonly study: Study } | null = null;
  #states: States = NO_STUDIES;

  constructor(runs: PartRuns<StudyEngine>) {
    this.#runs = runs;
  }

  readonly states = (): States => this.#states;

  /** @returns how to stop listening */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Asks for a study; one of the same kind that waits or runs gives way to it. */
  start(study: Study): void {
    this.cancel(study.kind);
    this.#queue = [...this.#queue, study];
    this.#change(study.kind, { status: 'waiting', progress: 0, wantedKey: study.key });
    this.#next();
  }

  /** Stops the study of this kind, if any; its last answer stays. */
  cancel(kind: StudyKind): void {
    this.#queue = this.#queue.filter((study) => study.kind !== kind);
    const isRunning = this.#running?.study.kind === kind;
    if (isRunning) {
      this.#running = null;
      this.#runs.cancel();
    }
    this.#change(kind, { status: 'idle', progress: 0 });
    if (isRunning) this.#next();
  }

  #next(): void {
    const [study, ...rest] = this.#queue;
    if (this.#running || !study) return;
    this.#queue = rest;
    const running = { study };
    this.#running = running;
    this.#change(study.kind, { status: 'running' });
    const onProgress = (done: number, all: number) => this.#change(study.kind, { progress: done / all });
    this.#runs.run(study.parts, onProgress).then((run) => this.#finish(running, run));
  }

  #finish(running: { readonly study: Study }, run: PartRun): void {
    // A run that was stopped has nothing more to say.
    if (this.#running !== running) return;
    this.#running = null;
    const { study } = running;
    if (run.kind === 'done') {
      this.#change(study.kind, { status: 'idle', answer: { key: study.key, value: study.gather(run.answers) } });
    } else this.#change(study.kind, { status: run.kind === 'failed' ? 'failed' : 'idle' });
    this.#next();
  }

  #change(kind: StudyKind, change: Partial<StudyState>): void {
    this.#states = { ...this.#states, [kind]: { ...this.#states[kind], ...change } };
    for (const listener of this.#listeners) listener();
  }
}
