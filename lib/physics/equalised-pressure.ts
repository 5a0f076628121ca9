/**
 * Pressure after the valve between vessels of one temperature opens [Pa]: Σ V·p/Σ V.
 * Source: derived. Throws RangeError on no vessels or lists of different length.
 * @param volumes [m³]
 * @param pressures [Pa]
 */
export function equalisedPressure(volumes: readonly number[], pressures: readonly number[]): number {
  const total = volumes.reduce((sum, volume) => sum + volume, 0);
  if (volumes.length !== pressures.length || !(total > 0)) {
    throw new RangeError(`equalising needs a pressure for every volume, got ${volumes.length} and ${pressures.length}`);
  }
  return volumes.reduce((sum, volume, i) => sum + volume * (pressures[i] as number), 0) / total;
}
