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
  handle: EngineHandle<Engine> | null;
  running: Job<Engine> | null;
}

function vacate<Engine>(seat: Seat<Engine>): void {
  seat.running = null;
  seat.handle?.stop();
  seat.handle = null;
}

/** Hands jobs to a fixed number of engines; the latest list of wishes wins. */
export class JobBoard<Engine> implements Board<Engine> {
  readonly #spawn: () => EngineHandle<Engine>;
  readonly #report: JobReport;
  readonly #seats: readonly Seat<Engine>[];
  #waiting: readonly Job<Engine>[] = [];

  constructor(engines: number, spawn: () => EngineHandle<Engine>, report: JobReport) {
    this.#spawn = spawn;
    this.#report = report;
    this.#seats = Array.from({ length: engines }, () => ({ handle: null, running: null }));
  }

  want(jobs: readonly Job<Engine>[]): void {
    const wanted = new Set(jobs.map((job) => job.key));
    for (const seat of this.#seats) if (seat.running && !wanted.has(seat.running.key)) vacate(seat);
    const running = new Set(this.#seats.map((seat) => seat.running?.key));
    this.#waiting = jobs.filter((job) => !running.has(job.key));
    this.#fill();
  }

  /** Stops everything. */
  close(): void {
    this.#waiting = [];
    for (const seat of this.#seats) vacate(seat);
  }

  #fill(): void {
    for (const job of [...this.#waiting].sort((a, b) => Number(a.slow) - Number(b.slow))) {
      const seat = this.#seatFor(job);
      if (!seat) return;
      this.#waiting = this.#waiting.filter((other) => other !== job);
      this.#begin(seat, job);
    }
  }

  /** A free seat, or for a quick job one that a slow job has to leave; undefined when there is none. */
  #seatFor(job: Job<Engine>): Seat<Engine> | undefined {
    const free = this.#seats.find((seat) => seat.running === null);
    if (free || job.slow) return free;
    const taken = this.#seats.findLast((seat) => seat.running?.slow);
    if (taken?.running) {
      this.#waiting = [...this.#waiting, taken.running];
      vacate(taken);
    }
    return taken;
  }

  #begin(seat: Seat<Engine>, job: Job<Engine>): void {
    seat.handle ??= this.#spawn();
    seat.running = job;
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
