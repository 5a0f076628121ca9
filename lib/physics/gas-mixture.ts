import { exp, log, pow } from '../numeric/portable-math.ts';
import { AIR_MOLAR_MASS, GAS_CONSTANT, WATER_MOLAR_MASS } from './constants.ts';

/** Ratio of heat capacities of air and of water vapour at room temperature [-]. Both from memory; they only enter the sonic limit. */
const AIR_GAMMA = 1.4;
const VAPOUR_GAMMA = 1.33;

/** Temperatures at which both viscosity fits are smooth and physical [K]. */
const COLDEST = 200;
const HOTTEST = 500;

function checkTemperature(T: number): void {
  if (!(T >= COLDEST && T <= HOTTEST)) throw new RangeError(`gas viscosity needs ${COLDEST}–${HOTTEST} K, got ${T} K`);
}

/**
 * Viscosity of dilute air [Pa·s].
 * η = 0.0266958·√(M·T)/(σ²·Ω(T/ε)) [µPa·s].
 * Source: lemmon-jacobsen-2004, eq. 2. Used 200–500 K, throws RangeError outside; uncertainty 1 %.
 * @param T temperature [K]
 */
export function airViscosity(T: number): number {
  checkTemperature(T);
  const x = log(T / 103.3);
  const omega = exp(0.431 + x * (-0.4623 + x * (0.08406 + x * (0.005341 - 0.00331 * x))));
  return (0.0266958e-6 * Math.sqrt(28.9586 * T)) / (0.36 * 0.36 * omega);
}

/**
 * Viscosity of dilute water vapour [Pa·s].
 * η = 100·√θ/Σ H_i·θ^−i [µPa·s], θ = T/647.096 K.
 * Source: iapws-r12-08, eq. 11. Stated from 273 K; used 200–500 K, throws RangeError outside.
 * @param T temperature [K]
 */
export function vapourViscosity(T: number): number {
  checkTemperature(T);
  const inverse = 647.096 / T;
  const sum = 1.67752 + inverse * (2.20462 + inverse * (0.6366564 - 0.241605 * inverse));
  return 1e-4 / (Math.sqrt(inverse) * sum);
}

/**
 * Wilke's interaction factor Φ_ab of gas a with gas b [-].
 * Φ = [1 + √(η_a/η_b)·(M_b/M_a)^¼]²/√(8·(1 + M_a/M_b)).
 * Source: wilke-1950, eq. 14.
 */
export function wilkeFactor(viscosityA: number, viscosityB: number, massA: number, massB: number): number {
  const root = 1 + Math.sqrt(viscosityA / viscosityB) * pow(massB / massA, 0.25);
  return (root * root) / Math.sqrt(8 * (1 + massA / massB));
}

/** What the viscosity of air with water vapour needs at one temperature: made once, used often. */
export interface GasMixture {
  /** Temperature [K]. */
  readonly temperature: number;
  /** Viscosity of the pure gases [Pa·s]. */
  readonly air: number;
  readonly vapour: number;
  /** Wilke factors of air with vapour and of vapour with air [-]. */
  readonly airWithVapour: number;
  readonly vapourWithAir: number;
}

/** Viscosities and Wilke factors of air and water vapour at a temperature [K]. */
export function gasMixture(temperature: number): GasMixture {
  const air = airViscosity(temperature);
  const vapour = vapourViscosity(temperature);
  return {
    temperature,
    air,
    vapour,
    airWithVapour: wilkeFactor(air, vapour, AIR_MOLAR_MASS, WATER_MOLAR_MASS),
    vapourWithAir: wilkeFactor(vapour, air, WATER_MOLAR_MASS, AIR_MOLAR_MASS),
  };
}

/**
 * Viscosity of air with water vapour [Pa·s].
 * η = Σ x_i·η_i/Σ x_j·Φ_ij.
 * Source: wilke-1950, eq. 13; about 2 % for such a pair.
 * @param vapourFraction mole fraction of vapour, 0–1
 */
export function mixtureViscosity(gas: GasMixture, vapourFraction: number): number {
  const airFraction = 1 - vapourFraction;
  return (
    (airFraction * gas.air) / (airFraction + vapourFraction * gas.airWithVapour) +
    (vapourFraction * gas.vapour) / (vapourFraction + airFraction * gas.vapourWithAir)
  );
}

/** Mean molar mass of air with water vapour [kg/mol]. @param vapourFraction mole fraction of vapour, 0–1 */
export function mixtureMolarMass(vapourFraction: number): number {
  return AIR_MOLAR_MASS + (WATER_MOLAR_MASS - AIR_MOLAR_MASS) * vapourFraction;
}

/**
 * Mean speed of molecules [m/s]: √(8·R·T/(π·M)), M the mean molar mass.
 * Source: kinetic-theory. In molecular flow each gas really has its own speed; taking one mean is at most 2 % low.
 * @param vapourFraction mole fraction of vapour, 0–1
 * @param temperature [K]
 */
export function meanMolecularSpeed(vapourFraction: number, temperature: number): number {
  return Math.sqrt((8 * GAS_CONSTANT * temperature) / (Math.PI * mixtureMolarMass(vapourFraction)));
}

/**
 * Mean free path times pressure [Pa·m]: η·√(π·R·T/(2·M)).
 * Source: kinetic-theory.
 */
export function freePathPressure(gas: GasMixture, vapourFraction: number): number {
  const mass = mixtureMolarMass(vapourFraction);
  return mixtureViscosity(gas, vapourFraction) * Math.sqrt((Math.PI * GAS_CONSTANT * gas.temperature) / (2 * mass));
}

/**
 * Fastest that gas can stream through an opening [m/s]: throughput per area and upstream pressure when the flow is sonic.
 * √(γ·R·T/M)·(2/(γ+1))^((γ+1)/(2(γ−1))).
 * Source: kinetic-theory (isentropic nozzle). The heat capacities of the two gases mix by mole fraction.
 * @param vapourFraction mole fraction of vapour, 0–1
 * @param temperature [K]
 */
export function chokedSpeed(vapourFraction: number, temperature: number): number {
  const inverse = (1 - vapourFraction) / (AIR_GAMMA - 1) + vapourFraction / (VAPOUR_GAMMA - 1);
  const gamma = 1 + 1 / inverse;
  const nozzle = pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
  return nozzle * Math.sqrt((gamma * GAS_CONSTANT * temperature) / mixtureMolarMass(vapourFraction));
}
