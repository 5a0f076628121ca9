/** What a job resolves to when only a piece of it is done: it is to be begun again, and its engine remembers what it has. */
export const UNFINISHED: unique symbol = Symbol('unfinished');

/** A piece of work for one of several engines. Jobs with the same key are the same job. */
export interface Job<Engine> {
  readonly key: string;
  /** A slow job comes after every quick one. It should be done in pieces, between which its engine can serve others. */
  readonly slow: boolean;
  /** Resolves to what came of the job, or to `UNFINISHED`. */
  readonly start: (engine: Engine) => Promise<unknown>;
}

/** An engine that can be stopped in mid-work. */
export interface EngineHandle<Engine> {
  readonly engine: Engine;
  readonly stop: () => void;
}

/** Who is told how a job went. */
export interface JobReport {
  readonly onDone: (key: string, value: unknown) => void;
  readonly onFailed: (key: string, reason: unknown) => void;
}

/** Where jobs are put up to be done. */
export interface Board<Engine> {
  /** Replaces the list of wanted jobs, most urgent first. What is no longer wanted is dropped, or stopped if it runs. */
  readonly want: (jobs: readonly Job<Engine>[]) => void;
}

interface Seat<Engine> {
  readonly forQuickOnly: boolean;
  handle: EngineHandle<Engine> | null;
  running: Job<Engine> | null;
  /** When the running job was begun [ms]. */
  since: number;
}

/** How a board treats its jobs. */
export interface BoardManners {
  /** Seats that only quick jobs get, so that one of them never has to wait for a slow one. */
  readonly quickOnly: number;
  /**
   * How long a job that is no longer wanted may take to end by itself [ms]: a new engine would take as long to start, and what
   * the old one has in memory would be lost.
   */
  readonly grace: number;
}

const PLAIN: BoardManners = { quickOnly: 0, grace: 0 };

function vacate<Engine>(seat: Seat<Engine>): void {
  seat.running = null;
  seat.handle?.stop();
  seat.handle = null;
}

/** Hands jobs to a fixed number of engines, some of them for quick jobs only; the latest list of wishes wins. */
export class JobBoard<Engine> implements Board<Engine> {
  readonly #spawn: (forQuickOnly: boolean) => EngineHandle<Engine>;
  readonly #report: JobReport;
  readonly #seats: readonly Seat<Engine>[];
  readonly #grace: number;
  /** What is wanted and not done yet, quick jobs first, then by urgency. */
  #open: readonly Job<Engine>[] = [];

  /** @param spawn starts an engine; told whether its seat is for quick jobs only */
  constructor(
    engines: number,
    spawn: (forQuickOnly: boolean) => EngineHandle<Engine>,
    report: JobReport,
    manners: BoardManners = PLAIN,
  ) {
    this.#spawn = spawn;
    this.#report = report;
    this.#grace = manners.grace;
    this.#seats = Array.from({ length: engines }, (_, at) => ({
      forQuickOnly: at < manners.quickOnly,
      handle: null,
      running: null,
      since: 0,
    }));
  }

  want(jobs: readonly Job<Engine>[]): void {
    this.#open = [...jobs.filter((job) => !job.slow), ...jobs.filter((job) => job.slow)];
    for (const seat of this.#seats)
      if (seat.running && !this.#isWanted(seat.running)) this.#dismiss(seat, seat.running);
    this.#fill();
  }

  /** Stops everything. */
  close(): void {
    this.#open = [];
    for (const seat of this.#seats) vacate(seat);
  }

  #isWanted({ key }: Job<Engine>): boolean {
    return this.#open.some((job) => job.key === key);
  }

  /** Stops a job that is no longer wanted when it has had its time. */
  #dismiss(seat: Seat<Engine>, job: Job<Engine>): void {
    const left = seat.since + this.#grace - performance.now();
    if (left <= 0) vacate(seat);
    else setTimeout(() => this.#dismissLate(seat, job), left);
  }

  #dismissLate(seat: Seat<Engine>, job: Job<Engine>): void {
    if (seat.running !== job || this.#isWanted(job)) return;
    vacate(seat);
    this.#fill();
  }

  #fill(): void {
    const running = new Set(this.#seats.map((seat) => seat.running?.key));
    for (const job of this.#open.filter(({ key }) => !running.has(key))) {
      const seat = this.#seats.find((one) => one.running === null && !(job.slow && one.forQuickOnly));
      if (seat) this.#begin(seat, job);
    }
  }

  #begin(seat: Seat<Engine>, job: Job<Engine>): void {
    seat.handle ??= this.#spawn(seat.forQuickOnly);
    seat.running = job;
    seat.since = performance.now();
    job.start(seat.handle.engine).then(
      (value) => {
        if (this.#leave(seat, job, value === UNFINISHED)) this.#report.onDone(job.key, value);
        this.#fill();
      },
      (reason) => {
        if (this.#leave(seat, job, false)) this.#report.onFailed(job.key, reason);
        this.#fill();
      },
    );
  }

  /** Frees the seat of a job that has ended; false when there is nothing to tell of it. */
  #leave(seat: Seat<Engine>, job: Job<Engine>, isUnfinished: boolean): boolean {
    // A job that was stopped, or whose seat has been given away, has nothing more to say.
    if (seat.running !== job) return false;
    seat.running = null;
    if (isUnfinished) return false;
    this.#open = this.#open.filter(({ key }) => key !== job.key);
    return true;
  }
}
