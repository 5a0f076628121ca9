import type { Board, JobReport } from './job-board.ts';

/** A part of a long piece of work, done by one engine at a time. */
export interface WorkPart<Engine> {
  /** How much of the whole it is, in any one unit: what progress is told in. */
  readonly size: number;
  readonly start: (engine: Engine) => Promise<unknown>;
}

/** How a run ended. */
export type PartRun =
  /** Answers in the order of the parts. */
  | { readonly kind: 'done'; readonly answers: readonly unknown[] }
  /** Another run was asked for meanwhile, or none any more. */
  | { readonly kind: 'cancelled' }
  /** An engine broke down; nothing of the run is kept. */
  | { readonly kind: 'failed'; readonly reason: unknown };

interface Current {
  readonly serial: number;
  readonly sizes: readonly number[];
  readonly answers: Map<number, unknown>;
  readonly onProgress: (done: number, all: number) => void;
  readonly settle: (run: PartRun) => void;
}

/** Works a long job out on a board of engines, part by part; there is one run at a time, and the latest wins. */
export class PartRuns<Engine> {
  readonly #board: Board<Engine>;
  #serial = 0;
  #current: Current | null = null;

  constructor(makeBoard: (report: JobReport) => Board<Engine>) {
    this.#board = makeBoard({
      onDone: (key, value) => this.#remember(key, value),
      onFailed: (key, reason) => this.#giveUp(key, reason),
    });
  }

  /**
   * Starts a run; whatever ran before is cancelled and its engines are stopped. Resolves when all parts are done, never rejects.
   * @param onProgress told after every part how much is done, of how much
   */
  run(parts: readonly WorkPart<Engine>[], onProgress: Current['onProgress'] = () => {}): Promise<PartRun> {
    this.#current?.settle({ kind: 'cancelled' });
    this.#serial += 1;
    const serial = this.#serial;
    const sizes = parts.map((part) => part.size);
    return new Promise((settle) => {
      this.#current = { serial, sizes, answers: new Map(), onProgress, settle };
      this.#board.want(parts.map(({ start }, k) => ({ key: `${serial} ${k}`, slow: false, start })));
      if (parts.length === 0) this.#end({ kind: 'done', answers: [] });
    });
  }

  /** Stops the run there is, if any. */
  cancel(): void {
    this.#end({ kind: 'cancelled' });
  }

  /** The part that a job of the current run was for; null for one of an earlier run. */
  #partOf(key: string): number | null {
    const [serial, k] = key.split(' ').map(Number);
    return this.#current && serial === this.#current.serial && k !== undefined ? k : null;
  }

  #remember(key: string, answer: unknown): void {
    const k = this.#partOf(key);
    const current = this.#current;
    if (k === null || !current) return;
    const { answers, sizes } = current;
    answers.set(k, answer);
    const done = sizes.reduce((sum, size, part) => (answers.has(part) ? sum + size : sum), 0);
    current.onProgress(
      done,
      sizes.reduce((sum, size) => sum + size, 0),
    );
    if (answers.size === sizes.length) this.#end({ kind: 'done', answers: sizes.map((_, part) => answers.get(part)) });
  }

  #giveUp(key: string, reason: unknown): void {
    if (this.#partOf(key) !== null) this.#end({ kind: 'failed', reason });
  }

  #end(run: PartRun): void {
    const current = this.#current;
    this.#current = null;
    this.#board.want([]);
    current?.settle(run);
  }
}
