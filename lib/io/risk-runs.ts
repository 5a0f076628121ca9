import type { DrawOutcome, DrawRequest } from '../risk/evaluate-draws.ts';
import type { Board, Job, JobReport } from './job-board.ts';

/** What a run asks of an engine; across threads the answer is a promise. */
export interface RiskEngine {
  readonly evaluateDraws: (request: DrawRequest) => Promise<DrawOutcome[][]>;
}

/** How a run ended. */
export type RiskRun =
  /** By draw and by scenario, in the order of the request. */
  | { readonly kind: 'done'; readonly rows: readonly (readonly DrawOutcome[])[] }
  /** Another run was asked for meanwhile, or none any more. */
  | { readonly kind: 'cancelled' }
  /** An engine broke down; nothing of the run is kept. */
  | { readonly kind: 'failed'; readonly reason: unknown };

export interface RunOptions {
  /** Draws handed to an engine at a time, ≥ 1: small for steady progress; whole rows where draws belong together. */
  readonly chunk?: number;
  /** Told after every chunk how many draws are done, of how many. */
  readonly onProgress?: (done: number, all: number) => void;
}

interface Current {
  readonly serial: number;
  readonly chunks: readonly DrawRequest[];
  readonly answers: (DrawOutcome[][] | undefined)[];
  readonly onProgress: (done: number, all: number) => void;
  readonly settle: (run: RiskRun) => void;
}

const CHUNK = 4;

function chunksOf(request: DrawRequest, chunk: number): DrawRequest[] {
  const count = Math.ceil(request.draws.length / chunk);
  return Array.from({ length: count }, (_, k) => ({
    ...request,
    draws: request.draws.slice(k * chunk, (k + 1) * chunk),
  }));
}

/** Works draws out on a board of engines, in chunks; there is one run at a time, and the latest wins. */
export class RiskRuns {
  readonly #board: Board<RiskEngine>;
  #serial = 0;
  #current: Current | null = null;

  constructor(makeBoard: (report: JobReport) => Board<RiskEngine>) {
    this.#board = makeBoard({
      onDone: (key, value) => this.#remember(key, value as DrawOutcome[][]),
      onFailed: (key, reason) => this.#giveUp(key, reason),
    });
  }

  /**
   * Starts a run; whatever ran before is cancelled and its engines are stopped. Resolves when all draws are worked out, never
   * rejects. Throws RangeError when a chunk is not a whole number of 1 or more.
   */
  run(request: DrawRequest, options: RunOptions = {}): Promise<RiskRun> {
    const { chunk = CHUNK, onProgress = () => {} } = options;
    if (!Number.isInteger(chunk) || chunk < 1) throw new RangeError(`chunks of ${chunk} draws`);
    this.#current?.settle({ kind: 'cancelled' });
    this.#serial += 1;
    const serial = this.#serial;
    const chunks = chunksOf(request, chunk);
    return new Promise((settle) => {
      this.#current = { serial, chunks, answers: chunks.map(() => undefined), onProgress, settle };
      this.#board.want(chunks.map((part, k) => this.#jobOf(serial, k, part)));
      if (chunks.length === 0) this.#end({ kind: 'done', rows: [] });
    });
  }

  /** Stops the run there is, if any. */
  cancel(): void {
    this.#end({ kind: 'cancelled' });
  }

  #jobOf(serial: number, k: number, part: DrawRequest): Job<RiskEngine> {
    return { key: `${serial} ${k}`, slow: false, start: (engine) => engine.evaluateDraws(part) };
  }

  /** The chunk that a job of the current run was for; null for one of an earlier run. */
  #chunkOf(key: string): number | null {
    const [serial, k] = key.split(' ').map(Number);
    return this.#current && serial === this.#current.serial && k !== undefined ? k : null;
  }

  #remember(key: string, rows: DrawOutcome[][]): void {
    const k = this.#chunkOf(key);
    const current = this.#current;
    if (k === null || !current) return;
    current.answers[k] = rows;
    const known = current.answers.filter((answer) => answer !== undefined);
    const done = known.reduce((sum, answer) => sum + answer.length, 0);
    const all = current.chunks.reduce((sum, part) => sum + part.draws.length, 0);
    current.onProgress(done, all);
    if (known.length === current.chunks.length) this.#end({ kind: 'done', rows: known.flat() });
  }

  #giveUp(key: string, reason: unknown): void {
    if (this.#chunkOf(key) !== null) this.#end({ kind: 'failed', reason });
  }

  #end(run: RiskRun): void {
    const current = this.#current;
    this.#current = null;
    this.#board.want([]);
    current?.settle(run);
  }
}
