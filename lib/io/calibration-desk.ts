import type { CalibrationProgress } from '../insight/calibration/calibrate.ts';
import type { Calibration } from '../insight/calibration/calibration.ts';
import type { Plan } from '../plan/plan-types.ts';
import { calibrationKey } from '../views/batch-log/calibration-key.ts';
import type { EngineHandle } from './job-board.ts';

export interface CalibrationEngine {
  readonly calibrate: (plan: Plan, onProgress: (progress: CalibrationProgress) => void) => Promise<Calibration>;
}

/** How far the fit has come; the last answer stays until there is another. */
export interface CalibrationState {
  readonly status: 'idle' | 'running' | 'failed';
  readonly progress: CalibrationProgress;
  readonly answer: { readonly key: string; readonly value: Calibration } | null;
}

const NOTHING_DONE: CalibrationProgress = { passes: 0, dryings: 0 };

/** Fits the model to the log in a thread of its own, one fit at a time; the latest wins. */
export class CalibrationDesk {
  readonly #spawn: () => EngineHandle<CalibrationEngine>;
  readonly #listeners = new Set<() => void>();
  #running: EngineHandle<CalibrationEngine> | null = null;
  #state: CalibrationState = { status: 'idle', progress: NOTHING_DONE, answer: null };

  constructor(spawn: () => EngineHandle<CalibrationEngine>) {
    this.#spawn = spawn;
  }

  readonly state = (): CalibrationState => this.#state;

  /** @returns how to stop listening */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** Begins to fit the model to this plan's log; a fit that runs gives way to it. */
  start(plan: Plan): void {
    this.#stop();
    const handle = this.#spawn();
    this.#running = handle;
    this.#set({ status: 'running', progress: NOTHING_DONE });
    const key = calibrationKey(plan);
    const isCurrent = () => this.#running === handle;
    handle.engine
      .calibrate(plan, (progress) => {
        if (isCurrent()) this.#set({ progress });
      })
      .then(
        (value) => {
          if (isCurrent()) this.#finish({ status: 'idle', answer: { key, value } });
        },
        () => {
          if (isCurrent()) this.#finish({ status: 'failed' });
        },
      );
  }

  /** Stops the fit, if one runs; the last answer stays. */
  cancel(): void {
    if (this.#running) this.#finish({ status: 'idle' });
  }

  #finish(change: Partial<CalibrationState>): void {
    this.#stop();
    this.#set(change);
  }

  #stop(): void {
    this.#running?.stop();
    this.#running = null;
  }

  #set(change: Partial<CalibrationState>): void {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener();
  }
}
