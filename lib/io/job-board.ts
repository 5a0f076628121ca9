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

export interface JobBoardOptions<Engine> {
  readonly engines: number;
  readonly spawn: () => EngineHandle<Engine>;
  readonly onDone: (key: string, value: unknown) => void;
  readonly onFailed: (key: string, reason: unknown) => void;
}

export interface JobBoard<Engine> {
  /** Replaces the list of wanted jobs, most urgent first. What is no longer wanted is dropped, or stopped if it runs. */
  readonly want: (jobs: readonly Job<Engine>[]) => void;
  /** Stops everything. */
  readonly close: () => void;
}

interface Seat<Engine> {
  handle: EngineHandle<Engine> | null;
  running: Job<Engine> | null;
}

/** Hands jobs to a fixed number of engines; the latest list of wishes wins. */
export function createJobBoard<Engine>(options: JobBoardOptions<Engine>): JobBoard<Engine> {
  const seats: Seat<Engine>[] = Array.from({ length: options.engines }, () => ({ handle: null, running: null }));
  let waiting: readonly Job<Engine>[] = [];

  function settle(seat: Seat<Engine>, job: Job<Engine>, report: () => void): void {
    // A job that was stopped, or whose seat has been given away, has nothing more to say.
    if (seat.running !== job) return;
    seat.running = null;
    report();
    fill();
  }

  function begin(seat: Seat<Engine>, job: Job<Engine>): void {
    seat.handle ??= options.spawn();
    seat.running = job;
    job.start(seat.handle.engine).then(
      (value) => settle(seat, job, () => options.onDone(job.key, value)),
      (reason) => settle(seat, job, () => options.onFailed(job.key, reason)),
    );
  }

  function vacate(seat: Seat<Engine>): void {
    seat.running = null;
    seat.handle?.stop();
    seat.handle = null;
  }

  /** A free seat, or for a quick job one that a slow job has to leave; undefined when there is none. */
  function seatFor(job: Job<Engine>): Seat<Engine> | undefined {
    const free = seats.find((seat) => seat.running === null);
    if (free || job.slow) return free;
    const taken = seats.findLast((seat) => seat.running?.slow);
    if (taken?.running) {
      waiting = [...waiting, taken.running];
      vacate(taken);
    }
    return taken;
  }

  function fill(): void {
    for (const job of [...waiting].sort((a, b) => Number(a.slow) - Number(b.slow))) {
      const seat = seatFor(job);
      if (!seat) return;
      waiting = waiting.filter((other) => other !== job);
      begin(seat, job);
    }
  }

  function want(jobs: readonly Job<Engine>[]): void {
    const wanted = new Set(jobs.map((job) => job.key));
    for (const seat of seats) if (seat.running && !wanted.has(seat.running.key)) vacate(seat);
    const running = new Set(seats.map((seat) => seat.running?.key));
    waiting = jobs.filter((job) => !running.has(job.key));
    fill();
  }

  function close(): void {
    waiting = [];
    for (const seat of seats) vacate(seat);
  }

  return { want, close };
}
