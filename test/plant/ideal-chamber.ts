import { iceTemperature } from '../../lib/physics/ice-temperature.ts';
import type { ChamberSpec, ProductSpec, TrapSpec } from '../../lib/plant/types.ts';
import { CHAMBER, FRUIT } from './sample-shop.ts';

/** So cold (120 K) that its vapour, 1e-9 Pa, is nothing beside the gas. */
export const COLD_TRAP: TrapSpec = {
  ...CHAMBER.trap,
  parasiticLoad: 0,
  curve: [
    { load: 0, temperature: 120 },
    { load: 1e9, temperature: 120.001 },
  ],
};

/** A trap that keeps its vapour at one pressure [Pa] whatever comes: endless surface, endless cold. */
export function steadyTrap(pressure: number): TrapSpec {
  const temperature = iceTemperature(pressure);
  return {
    area: 1e6,
    capacity: 1e9,
    iceConductivity: 2.4,
    iceDensity: 917,
    parasiticLoad: 0,
    vapourConductance: 1e6,
    curve: [
      { load: 0, temperature },
      { load: 1e9, temperature: temperature + 1e-6 },
    ],
  };
}

/** One square metre of shelf in a tight chamber that stays at `pressure` [Pa], with more heat than any load takes. */
export function steadyChamber(pressure: number, change: Partial<ChamberSpec> = {}): ChamberSpec {
  return {
    ...CHAMBER,
    shelfArea: 1,
    leak: 0,
    outgassing: 0,
    heaterPower: 1e6,
    shelfLimit: 400,
    // Above the pressure the trap keeps, so that it never throttles the heat.
    pressureCeiling: 1.1 * pressure,
    trap: steadyTrap(pressure),
    ...change,
  };
}

/**
 * A load without limits of its own, 10 mm deep with 700 kg of ice per m³, all of its water freezable and dry enough when the
 * ice is gone. Each test sets the one limit it is about.
 */
export const PLAIN_LOAD: ProductSpec = {
  ...FRUIT,
  id: 'plain',
  name: 'Plain slab',
  form: 'pieces',
  composition: { water: 0.7, protein: 0, fat: 0, carbohydrate: 0.3, fibre: 0, ash: 0 },
  unfreezable: 0,
  load: 10,
  bulkDensity: 1000,
  faceShare: 1,
  spread: 1,
  driedConductivity: 1e6,
  driedConductivitySlope: 0,
  permeability: 1e6,
  surfaceResistance: 0,
  frozenLimit: 273.1,
  scorchLimit: 1e6,
  shelfPrimary: 1e6,
};
