/** A piece of work for one of several engines. Jobs with the same key are the same job. */
export interface Job<Engine> {
  readonly key: string;
  /** A slow job gives its engine up to a quick one that finds none free, and is begun again later. */
  readonly slow: boolean;
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

/** How a board treats quick jobs. */
export interface BoardManners {
  /** Seats that only quick jobs get, so that one of them never has to wait for a slow one nor to stop it. */
  readonly quickOnly: number;
  /**
   * How long a quick job that is no longer wanted may take to end by itself [ms]: a new engine would take as long to start,
   * and what the old one has in memory would be lost.
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
  #waiting: readonly Job<Engine>[] = [];
  #wanted: ReadonlySet<string> = new Set();

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
    const wanted = new Set(jobs.map((job) => job.key));
    this.#wanted = wanted;
    for (const seat of this.#seats)
      if (seat.running && !wanted.has(seat.running.key)) this.#dismiss(seat, seat.running);
    const running = new Set(this.#seats.map((seat) => seat.running?.key));
    this.#waiting = jobs.filter((job) => !running.has(job.key));
    this.#fill();
  }

  /** Stops everything. */
  close(): void {
    this.#waiting = [];
    this.#wanted = new Set();
    for (const seat of this.#seats) vacate(seat);
  }

  /** Stops a job that is no longer wanted, a quick one only when it has had its time. */
  #dismiss(seat: Seat<Engine>, job: Job<Engine>): void {
    const left = seat.since + this.#grace - performance.now();
    if (job.slow || left <= 0) vacate(seat);
    else setTimeout(() => this.#dismissLate(seat, job), left);
  }

  #dismissLate(seat: Seat<Engine>, job: Job<Engine>): void {
    if (seat.running !== job || this.#wanted.has(job.key)) return;
    vacate(seat);
    this.#fill();
  }

  #fill(): void {
    for (const job of [...this.#waiting].sort((a, b) => Number(a.slow) - Number(b.slow))) {
      const seat = this.#seatFor(job);
      if (!seat) continue;
      this.#waiting = this.#waiting.filter((other) => other !== job);
      this.#begin(seat, job);
    }
  }

  /** A free seat, or for a quick job one that a slow job has to leave; undefined when there is none. */
  #seatFor(job: Job<Engine>): Seat<Engine> | undefined {
    const free = this.#seats.find((seat) => seat.running === null && !(job.slow && seat.forQuickOnly));
    if (free || job.slow || this.#seats.some((seat) => seat.forQuickOnly)) return free;
    const taken = this.#seats.findLast((seat) => seat.running?.slow);
    if (taken?.running) {
      this.#waiting = [...this.#waiting, taken.running];
      vacate(taken);
    }
    return taken;
  }

  #begin(seat: Seat<Engine>, job: Job<Engine>): void {
    seat.handle ??= this.#spawn(seat.forQuickOnly);
    seat.running = job;
    seat.since = performance.now();
    job.start(seat.handle.engine).then(
      (value) => this.#settle(seat, job, () => this.#report.onDone(job.key, value)),
      (reason) => this.#settle(seat, job, () => this.#report.onFailed(job.key, reason)),
    );
  }

  #settle(seat: Seat<Engine>, job: Job<Engine>, report: () => void): void {
    // A job that was stopped, or whose seat has been given away, has nothing more to say.
    if (seat.running !== job) return;
    seat.running = null;
    report();
    this.#fill();
  }
}
