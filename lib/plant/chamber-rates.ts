import { GAS_CONSTANT } from '../physics/constants.ts';
import { desorptionRate } from '../physics/desorption.ts';
import { driedConductivity, shelfTransfer } from '../physics/heat-transfer.ts';
import { fastSublimationHeat } from '../physics/ice-fast.ts';
import type { ChamberUnit } from './chamber-unit.ts';
import { dryingRate } from './drying-rate.ts';
import { DRIED, iceOnTrap, MOISTURE } from './group-state.ts';
import type { LoadLaw } from './load-law.ts';
import { type TrapVapour, trapVapour } from './trap-law.ts';

/** What one chamber does at given gas and load temperature; written in place by `chamberRates`. */
export interface ChamberRates {
  /** Total and permanent-gas pressure [Pa]. */
  pressure: number;
  gas: number;
  /** 1 when the total rises with the gas, 0 when the ceiling holds it. */
  followsGas: number;
  /** Vapour leaving the load [kg/s]. */
  flow: number;
  /** Heat into the load [W]. */
  heat: number;
  /** Rate of the dried fraction [1/s], of the moisture [1/s] and of the load temperature [K/s]. */
  dried: number;
  moisture: number;
  temperature: number;
  /** Rate constant of desorption [1/s]: moisture falls toward its equilibrium as exp(−∫k·dt). */
  desorption: number;
  /** ∂(dT/dt)/∂T [1/s]. */
  temperatureSlope: number;
}

export function chamberRatesRecord(): ChamberRates {
  return {
    pressure: 0,
    gas: 0,
    followsGas: 1,
    flow: 0,
    heat: 0,
    dried: 0,
    moisture: 0,
    temperature: 0,
    desorption: 0,
    temperatureSlope: 0,
  };
}

/** Heating fades out over this share of the ceiling pressure: a proportional controller, as a shelf controller would. */
const CONTROL_BAND = 0.05;

const vapour: TrapVapour = { pressure: 0, slope: 0, load: 0 };

/** Heat to free a kilogram of bound water [J/kg]: taken as the heat of sublimation, which covers evaporation and binding. */
function desorptionHeat(temperature: number): number {
  return fastSublimationHeat(Math.min(273.15, temperature));
}

/** Resistance between shelf and the mean of a dried load [m²·K/W]: film + a third of the bed, as for a slab heated from one face. */
function shelfToLoad(unit: ChamberUnit, load: LoadLaw, pressure: number): number {
  const { product } = load;
  const dried = driedConductivity(product.driedConductivity, product.driedConductivitySlope, pressure);
  return 1 / shelfTransfer(unit.spec.heat, pressure) + load.depth / (3 * dried);
}

function primaryRates(unit: ChamberUnit, load: LoadLaw, state: Float64Array, at: number, out: ChamberRates): void {
  const { drying } = unit;
  const dried = Math.min(1, state[at + DRIED] as number);
  dryingRate(unit.spec, unit.trap, load, dried, iceOnTrap(unit, state, at), out.gas, drying);
  out.pressure = out.gas + drying.vapourPressure;
  out.followsGas = drying.followsGas;
  out.flow = drying.flow;
  out.heat = drying.heat;
  out.dried = drying.flow / load.ice;
}

function secondaryRates(
  unit: ChamberUnit,
  load: LoadLaw,
  state: Float64Array,
  at: number,
  temperature: number,
  out: ChamberRates,
): void {
  const { desorption } = load.product;
  const moisture = state[at + MOISTURE] as number;
  out.desorption = desorptionRate(desorption.rate, desorption.activationEnergy, temperature);
  const rate = out.desorption * (moisture - desorption.equilibrium);
  out.flow = rate * load.dryMatter;
  out.moisture = -rate;
  restingPressure(unit, state, at, out);
  const resistance = shelfToLoad(unit, load, out.pressure);
  const { pressureCeiling } = unit.spec;
  const room = Math.min(1, Math.max(0, (pressureCeiling - out.pressure) / (CONTROL_BAND * pressureCeiling)));
  const wanted = (load.area * (load.shelfSecondary - temperature)) / resistance;
  unit.drying.limit = wanted > unit.spec.heaterPower ? 'heaterPower' : 'desorption';
  out.heat = Math.min(wanted, unit.spec.heaterPower) * room;
  const cooling = out.flow * desorptionHeat(temperature);
  const coolingSlope = (cooling * desorption.activationEnergy) / (GAS_CONSTANT * temperature * temperature);
  out.temperature = (out.heat - cooling) / load.dryHeatCapacity;
  out.temperatureSlope = -((load.area * room) / resistance + coolingSlope) / load.dryHeatCapacity;
}

function restingPressure(unit: ChamberUnit, state: Float64Array, at: number, out: ChamberRates): void {
  trapVapour(unit.trap, out.flow, iceOnTrap(unit, state, at), vapour);
  unit.drying.vapourPressure = vapour.pressure;
  out.pressure = out.gas + vapour.pressure;
}

/**
 * Pressure, flow, heat and rates of one chamber under vacuum, into `out`, at the slow values in `state` and the gas pressure
 * [Pa] and load temperature [K] given.
 */
export function chamberRates(
  unit: ChamberUnit,
  state: Float64Array,
  at: number,
  gas: number,
  temperature: number,
  out: ChamberRates,
): void {
  out.gas = gas;
  out.followsGas = 1;
  out.flow = 0;
  out.heat = 0;
  out.dried = 0;
  out.moisture = 0;
  out.temperature = 0;
  out.desorption = 0;
  out.temperatureSlope = 0;
  if (unit.mode === 'primary' && unit.load) primaryRates(unit, unit.load, state, at, out);
  else if (unit.mode === 'secondary' && unit.load) secondaryRates(unit, unit.load, state, at, temperature, out);
  else restingPressure(unit, state, at, out);
}
