import { segmentIndex } from '../numeric/interpolate.ts';
import { log } from '../numeric/portable-math.ts';

/** What the law of a pump needs to know. */
export interface PumpCurve {
  /** Rated speed S0 [m³/s]. */
  readonly speed: number;
  /** Ultimate pressure [Pa]. */
  readonly ultimate: number;
  /** Measured (pressure [Pa], speed [m³/s]), pressure rising; empty for the law S0·(1 − p_ult/p). */
  readonly table: readonly { readonly pressure: number; readonly speed: number }[];
}

/** A pump made ready for the inner loop. */
export interface PumpLaw {
  readonly speed: number;
  readonly ultimate: number;
  /** Table above the ultimate pressure: ln p and speed; empty for the law. */
  readonly logPressures: Float64Array;
  readonly speeds: Float64Array;
  /** Speed the law needs at infinite pressure so that it meets the first point of the table [m³/s]; S0 without a table. */
  readonly lowSpeed: number;
}

/** Throughput of a pump and its slope; written in place so that the inner loop allocates nothing. */
export interface PumpThroughput {
  /** S·p [Pa·m³/s]. */
  throughput: number;
  /** Its slope with pressure [m³/s]. */
  slope: number;
}

function checkCurve(pump: PumpCurve): void {
  if (!(pump.ultimate >= 0 && pump.ultimate < Infinity)) {
    throw new RangeError(`pump needs an ultimate pressure of 0 Pa or more, got ${pump.ultimate} Pa`);
  }
  if (pump.table.length === 0 && !(pump.speed > 0 && pump.speed < Infinity)) {
    throw new RangeError(`pump needs a positive speed, got ${pump.speed} m³/s`);
  }
}

/** Points rise in pressure and in throughput (a pump that takes less gas at a higher pressure has no steady state). */
function checkTable(points: PumpCurve['table']): void {
  points.forEach((point, i) => {
    const before = points[i - 1];
    const rises = !before || (point.pressure > before.pressure && rising(before, point));
    if (!(point.pressure > 0 && point.speed > 0 && point.speed < Infinity && rises)) {
      throw new RangeError(
        `pump table needs rising pressure and throughput: point ${i + 1} is ${point.speed} m³/s at ${point.pressure} Pa`,
      );
    }
  });
}

/** Is S·p rising all the way between two points, S being linear in ln p? d(S·p)/dp = S + dS/d ln p. */
function rising(low: PumpCurve['table'][number], high: PumpCurve['table'][number]): boolean {
  const slope = (high.speed - low.speed) / log(high.pressure / low.pressure);
  return Math.min(low.speed, high.speed) + slope > 0;
}

/**
 * A pump's speed law made ready for the inner loop.
 * Throws RangeError when the speed or the ultimate pressure is not physical, or a table does not rise in pressure and throughput.
 */
export function pumpLaw(pump: PumpCurve): PumpLaw {
  checkCurve(pump);
  checkTable(pump.table);
  const points = pump.table.filter((point) => point.pressure > pump.ultimate);
  const first = points[0];
  if (pump.table.length > 0 && !first) {
    throw new RangeError(`pump table needs a point above the ultimate pressure of ${pump.ultimate} Pa`);
  }
  return {
    speed: pump.speed,
    ultimate: pump.ultimate,
    logPressures: Float64Array.from(points, (point) => log(point.pressure)),
    speeds: Float64Array.from(points, (point) => point.speed),
    lowSpeed: first ? first.speed / (1 - pump.ultimate / first.pressure) : pump.speed,
  };
}

/**
 * Throughput of a pump [Pa·m³/s] and its slope with pressure [m³/s], into `out`.
 * Law: S·p = S0·(p − p_ult), nothing at or below p_ult. With a table: speed linear in ln p between its points, steady beyond the last;
 * below the first the law is scaled to meet it, so throughput rises without a jump from p_ult on.
 * Source: iso-21360-1 for the meaning of the speed; the law itself is common-practice.
 * @param pressure at the inlet [Pa]
 */
export function pumpThroughput(law: PumpLaw, pressure: number, out: PumpThroughput): void {
  const { logPressures, speeds } = law;
  const last = speeds.length - 1;
  const logPressure = last < 0 ? 0 : log(pressure);
  if (pressure <= law.ultimate) {
    out.throughput = 0;
    out.slope = 0;
  } else if (last < 0 || logPressure <= (logPressures[0] as number)) {
    out.throughput = law.lowSpeed * (pressure - law.ultimate);
    out.slope = law.lowSpeed;
  } else if (logPressure >= (logPressures[last] as number)) {
    out.throughput = (speeds[last] as number) * pressure;
    out.slope = speeds[last] as number;
  } else {
    betweenPoints(law, pressure, logPressure, out);
  }
}

function betweenPoints(law: PumpLaw, pressure: number, logPressure: number, out: PumpThroughput): void {
  const { logPressures, speeds } = law;
  const i = segmentIndex(logPressures, logPressure);
  const left = logPressures[i] as number;
  const bottom = speeds[i] as number;
  const rise = ((speeds[i + 1] as number) - bottom) / ((logPressures[i + 1] as number) - left);
  const speed = bottom + rise * (logPressure - left);
  out.throughput = speed * pressure;
  out.slope = speed + rise;
}

/** Pumping speed [m³/s] at an inlet pressure [Pa]; see `pumpThroughput`. */
export function pumpSpeed(law: PumpLaw, pressure: number): number {
  const out: PumpThroughput = { throughput: 0, slope: 0 };
  pumpThroughput(law, pressure, out);
  return pressure > law.ultimate ? out.throughput / pressure : 0;
}
