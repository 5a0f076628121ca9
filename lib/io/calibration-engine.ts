import { proxy, type Remote, wrap } from 'comlink';
import type { CalibrationApi } from './calibration.worker.ts';
import type { CalibrationEngine } from './calibration-desk.ts';
import type { EngineHandle } from './job-board.ts';

/** Starts a thread that fits the model to a log; what it tells on the way comes through a channel of its own. */
export function spawnCalibrationEngine(): EngineHandle<CalibrationEngine> {
  const worker = new Worker(new URL('./calibration.worker.ts', import.meta.url), {
    type: 'module',
    name: 'calibration',
  });
  const remote: Remote<CalibrationApi> = wrap<CalibrationApi>(worker);
  return {
    engine: { calibrate: (plan, onProgress) => remote.calibrate(plan, proxy(onProgress)) },
    stop: () => worker.terminate(),
  };
}
