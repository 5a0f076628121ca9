import { pow } from '../numeric/portable-math.ts';
import { AIR_MOLAR_MASS, GAS_CONSTANT, WATER_MOLAR_MASS } from './constants.ts';
import { chokedSpeed, type GasMixture, gasMixture, mixtureMolarMass, mixtureViscosity } from './gas-mixture.ts';

/** Knudsen's numbers for a round tube: his factor goes from 1 in the thinnest gas to 2.507/3.095 = 0.81 in dense gas. */
const KNUDSEN_TOP = 2.507;
const KNUDSEN_BOTTOM = 3.095;

/** A hose made ready for the inner loop: everything that depends on its size and the gas temperature only. */
export interface HoseLaw {
  /** π·D⁴/(128·L) [m³]; over viscosity, times mean pressure, it is the viscous conductance. */
  readonly viscous: number;
  /** (π/12)·D³/L·√(8·R·T/π) [m³/s·√(kg/mol)]; over √M it is the molecular conductance. */
  readonly molecular: number;
  /** (D/2)/√(π·R·T/2) [√(kg/mol)·s]; times p/(η·√…) it is the radius in mean free paths. */
  readonly radius: number;
  /** Sonic limit of air and of vapour, bore area × choked speed × √M [m³/s·√(kg/mol)]; over √M of the mixture it is the limit. */
  readonly chokedAir: number;
  readonly chokedVapour: number;
  readonly gas: GasMixture;
}

/** Flow of a hose and its slopes; written in place so that the inner loop allocates nothing. */
export interface HoseThroughput {
  /** Throughput from the first pressure to the second, negative when it runs back [Pa·m³/s]. */
  flow: number;
  /** Slopes with the first and with the second pressure, gas composition held [m³/s]. */
  byUpstream: number;
  byDownstream: number;
}

/**
 * Everything about a hose that does not change with pressure.
 * Throws RangeError unless diameter and length are positive and finite.
 * @param diameter inner diameter [m]
 * @param length length with the equivalent length of fittings and valves [m]
 * @param temperature gas temperature [K]
 */
export function hoseLaw(diameter: number, length: number, temperature: number): HoseLaw {
  if (!(diameter > 0 && length > 0 && Number.isFinite(diameter + length))) {
    throw new RangeError(`hose needs positive diameter and length, got ${diameter} m and ${length} m`);
  }
  const area = (Math.PI / 4) * diameter * diameter;
  const thermal = GAS_CONSTANT * temperature;
  return {
    viscous: (Math.PI * pow(diameter, 4)) / (128 * length),
    molecular: (Math.PI / 12) * (pow(diameter, 3) / length) * Math.sqrt((8 * thermal) / Math.PI),
    radius: (0.5 * diameter) / Math.sqrt(0.5 * Math.PI * thermal),
    chokedAir: area * chokedSpeed(0, temperature) * Math.sqrt(AIR_MOLAR_MASS),
    chokedVapour: area * chokedSpeed(1, temperature) * Math.sqrt(WATER_MOLAR_MASS),
    gas: gasMixture(temperature),
  };
}

/** Conductance [m³/s], its slope with mean pressure [m³/(s·Pa)] and the sonic limit per upstream pressure [m³/s]. */
const conductance = { value: 0, slope: 0, choked: 0 };

function setConductance(law: HoseLaw, meanPressure: number, vapourFraction: number): void {
  const viscosity = mixtureViscosity(law.gas, vapourFraction);
  const rootMass = Math.sqrt(mixtureMolarMass(vapourFraction));
  const viscous = law.viscous / viscosity;
  const molecular = law.molecular / rootMass;
  const paths = (law.radius * rootMass) / viscosity;
  const bottom = 1 + KNUDSEN_BOTTOM * paths * meanPressure;
  conductance.value = viscous * meanPressure + (molecular * (1 + KNUDSEN_TOP * paths * meanPressure)) / bottom;
  conductance.slope = viscous - (molecular * (KNUDSEN_BOTTOM - KNUDSEN_TOP) * paths) / (bottom * bottom);
  conductance.choked = (law.chokedAir + (law.chokedVapour - law.chokedAir) * vapourFraction) / rootMass;
}

/**
 * Throughput of a hose between two pressures [Pa·m³/s] and its slopes [m³/s], into `out`:
 * Q = C(p̄)·(p1 − p2), p̄ = (p1 + p2)/2, never above the sonic limit A·c·p of the higher pressure (the smaller of the two is taken,
 * so below the limit the law is untouched and at the limit its slope jumps). The nozzle factor of a mixture is a straight line
between those of air and vapour, 0.02 % off.
 * Source: knudsen-1909 for C; kinetic-theory for the limit. Laminar: turbulence, which only matters during the first seconds
 * from atmosphere, and the entry loss of short tubes are left out.
 * @param upstream pressure at the chamber [Pa], not negative
 * @param downstream pressure at the manifold [Pa], not negative
 * @param vapourFraction mole fraction of water vapour in the hose, 0–1
 */
export function hoseThroughput(
  law: HoseLaw,
  upstream: number,
  downstream: number,
  vapourFraction: number,
  out: HoseThroughput,
): void {
  const difference = upstream - downstream;
  setConductance(law, 0.5 * (upstream + downstream), vapourFraction);
  const bend = 0.5 * conductance.slope * difference;
  out.flow = conductance.value * difference;
  out.byUpstream = bend + conductance.value;
  out.byDownstream = bend - conductance.value;
  const { choked } = conductance;
  if (out.flow > choked * upstream) {
    out.flow = choked * upstream;
    out.byUpstream = choked;
    out.byDownstream = 0;
  } else if (-out.flow > choked * downstream) {
    out.flow = -choked * downstream;
    out.byUpstream = 0;
    out.byDownstream = -choked;
  }
}

/**
 * Conductance of a long round hose [m³/s]: Poiseuille + Knudsen's transition × molecular flow,
 * C = π·D⁴·p̄/(128·η·L) + Z·(π/12)·v·D³/L, Z = (1 + 2.507·r/λ)/(1 + 3.095·r/λ).
 * Source: knudsen-1909 (from memory; the textbook numbers for air agree within 1 %). Throws RangeError on a hose of no size.
 * @param diameter [m]
 * @param length [m]
 * @param meanPressure mean of both ends [Pa]
 * @param vapourFraction mole fraction of water vapour, 0–1
 * @param temperature [K]
 */
export function hoseConductance(
  diameter: number,
  length: number,
  meanPressure: number,
  vapourFraction: number,
  temperature: number,
): number {
  setConductance(hoseLaw(diameter, length, temperature), meanPressure, vapourFraction);
  return conductance.value;
}
