/// <reference lib="webworker" />
import { expose } from 'comlink';
import { type CalibrationProgress, calibrate } from '../insight/calibration/calibrate.ts';
import type { Calibration } from '../insight/calibration/calibration.ts';
import type { Plan } from '../plan/plan-types.ts';

/** What the page may ask of the thread that fits the model to the batch log. */
const api = {
  calibrate: (plan: Plan, onProgress: (progress: CalibrationProgress) => void): Calibration =>
    calibrate(plan, onProgress),
};

export type CalibrationApi = typeof api;

expose(api);
