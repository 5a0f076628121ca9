/**
 * Gas load from a pressure-rise test, valve shut [Pa·m³/s]: Q = V·Δp/Δt.
 * Source: pressure-rise-monograph. A steady rise is a leak; one that levels off is vapour or outgassing.
 * Throws RangeError unless volume and time are positive.
 * @param volume [m³]
 * @param rise Δp [Pa]
 * @param time Δt [s]
 */
export function leakRate(volume: number, rise: number, time: number): number {
  if (!(volume > 0 && time > 0)) {
    throw new RangeError(`a pressure-rise test needs volume and time, got ${volume} m³ and ${time} s`);
  }
  return (volume * rise) / time;
}
