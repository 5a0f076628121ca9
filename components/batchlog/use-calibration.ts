import { useSyncExternalStore } from 'react';
import { CalibrationDesk, type CalibrationState } from '../../lib/io/calibration-desk.ts';
import { spawnCalibrationEngine } from '../../lib/io/calibration-engine.ts';

let desk: CalibrationDesk | null = null;

/** The one desk of the page on which the model is fitted; it outlives the tab, so that a fit goes on while another is open. */
export function getCalibrationDesk(): CalibrationDesk {
  desk ??= new CalibrationDesk(spawnCalibrationEngine);
  return desk;
}

/** The fit as it stands, followed as it changes. */
export function useCalibration(): CalibrationState {
  const { subscribe, state } = getCalibrationDesk();
  return useSyncExternalStore(subscribe, state);
}
