import { describe, expect, it } from 'vitest';
import { ZERO_CELSIUS } from '../../lib/physics/constants.ts';
import { hoseConductance } from '../../lib/physics/hose-conductance.ts';
import { sublimationHeat } from '../../lib/physics/ice-latent-heat.ts';
import { icePressure } from '../../lib/physics/ice-pressure.ts';
import { iceTemperature } from '../../lib/physics/ice-temperature.ts';
import { hosePumpDownTime, pumpDownTime } from '../../lib/physics/pump-down.ts';
import { frontTime } from '../../lib/physics/retreating-front.ts';
import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import type { ChamberUnit } from '../../lib/plant/chamber-unit.ts';
import { advanceGroup, type GroupRun, groupRun, STANDARD_CONTROL } from '../../lib/plant/group-advance.ts';
import { DRIED, GAS, HEAT, MOISTURE, pumpGroup, setValue, stateValue } from '../../lib/plant/group-state.ts';
import { pumpDown } from '../../lib/plant/pump-down.ts';
import type { ChamberSpec, ChamberUnitSpec, HoseSpec, ProductSpec, PumpSpec } from '../../lib/plant/types.ts';
import { COLD_TRAP, PLAIN_LOAD, steadyChamber } from './ideal-chamber.ts';
import { CHAMBER, GOOD_PUMP, HOSE } from './sample-shop.ts';

/*
 * Cases of the whole solver that have an answer in closed form, derived from the equations.
 */

const HOUR = 3600;

const WIDE: HoseSpec = { diameter: 0.1, length: 1 };

function off(value: number, exact: number): number {
  return Math.abs(value / exact - 1);
}

/** A dry, empty chamber whose trap gives no vapour. */
function emptyChamber(volume: number, leak: number): ChamberSpec {
  return { ...CHAMBER, volume, leak, outgassing: 0, trap: COLD_TRAP };
}

/** Chambers without a load on one pump, valves open, each at a pressure [Pa]. */
function openChambers(units: readonly ChamberUnitSpec[], pump: PumpSpec, pressures: readonly number[]): GroupRun {
  const group = pumpGroup({ pump, chambers: units });
  group.units.forEach((unit, i) => {
    unit.mode = 'hold';
    unit.valveOpen = true;
    setValue(group, i, GAS, pressures[i] as number);
  });
  return groupRun(group, STANDARD_CONTROL);
}

describe('two chambers on one pump, no vapour', () => {
  const pump: PumpSpec = { ...GOOD_PUMP, speed: 0.02, ultimate: 0.5 };

  /** The second leaks so much [Pa·m³/s], the first is on a hose of the given size. */
  function pair(leak: number, hose: HoseSpec): readonly ChamberUnitSpec[] {
    return [
      { chamber: emptyChamber(0.3, 0.02), hose },
      { chamber: emptyChamber(0.5, leak), hose: { diameter: 0.025, length: 2 } },
    ];
  }

  function settled(leak: number, hose: HoseSpec = HOSE): { manifold: number; pressures: readonly number[] } {
    const run = openChambers(pair(leak, hose), pump, [100, 100]);
    advanceGroup(run, 40 * HOUR, 0);
    return { manifold: run.group.manifold, pressures: [stateValue(run.group, 0, GAS), stateValue(run.group, 1, GAS)] };
  }

  it('settle where the pump takes both leaks: p_m = p_b + ΣQ/S', () => {
    expect(off(settled(0.05).manifold, 0.5 + 0.07 / 0.02)).toBeLessThan(1e-6);
  });

  it('stand above the manifold by what each hose costs: Q = C(p̄)·(p − p_m)', () => {
    const { manifold, pressures } = settled(0.05);
    pair(0.05, HOSE).forEach(({ hose, chamber }, i) => {
      const pressure = pressures[i] as number;
      const conductance = hoseConductance(
        hose.diameter,
        hose.length,
        (pressure + manifold) / 2,
        0,
        chamber.gasTemperature,
      );
      expect(off(conductance * (pressure - manifold), chamber.leak)).toBeLessThan(1e-5);
    });
  });

  it('feel each other: a leak in the second raises the first by all of Q/S through a wide hose, by less through a thin one', () => {
    const thin = [settled(0), settled(0.05)] as const;
    const wide = [settled(0, WIDE), settled(0.05, WIDE)] as const;
    const raised = ([tight, leaky]: typeof thin) => (leaky.pressures[0] as number) - (tight.pressures[0] as number);
    expect(off(thin[1].manifold - thin[0].manifold, 0.05 / 0.02)).toBeLessThan(1e-6);
    expect(off(raised(wide), 0.05 / 0.02)).toBeLessThan(0.02);
    // A thin hose passes more at a higher pressure, so it needs less of a difference: today 1.5 of 2.5 Pa.
    expect(raised(thin)).toBeGreaterThan(1.2);
    expect(raised(thin)).toBeLessThan(0.9 * (0.05 / 0.02));
  });
});

describe('pump-down', () => {
  const pump: PumpSpec = { ...GOOD_PUMP, speed: 0.02, ultimate: 1 };

  function time(chamber: ChamberSpec, hose: HoseSpec, by: PumpSpec, ceiling: number): number {
    const down = pumpDown([{ chamber: { ...chamber, pressureCeiling: ceiling }, hose }], by, [101_300]);
    if (down.kind === 'stalls') throw new Error(`stalls at ${down.pressure} Pa`);
    return down.duration;
  }

  it.each([1000, 100, 20])('through a wide hose without a leak takes (V/S)·ln to %d Pa', (ceiling) => {
    const ideal = { ...pump, ultimate: 0 };
    const exact = (0.5 / 0.02) * Math.log(101_300 / ceiling);
    expect(off(time(emptyChamber(0.5, 0), WIDE, ideal, ceiling), exact)).toBeLessThan(0.005);
  });

  it.each([
    // V = 500 L, S = 20 L/s, Q = 0.7 mbar·L/s, p_b = 0.01 mbar: settles at 0.045 mbar.
    [1000, 115.564],
    [100, 174.167],
    [10, 245.526],
    [6, 278.008],
  ])('with a leak to %d Pa takes %d s', (ceiling, exact) => {
    expect(off(time(emptyChamber(0.5, 0.07), WIDE, pump, ceiling), exact)).toBeLessThan(0.01);
    const vessel = { volume: 0.5, speed: 0.02, ultimate: 1, leak: 0.07, start: 101_300 };
    expect(off(pumpDownTime(vessel, ceiling), exact)).toBeLessThan(1e-5);
  });

  it('through a narrow hose follows the viscous law, a little faster where the gas begins to slip', () => {
    const narrow = { diameter: 0.025, length: 2 };
    const vessel = { volume: 0.5, speed: 0.02, ultimate: 0, leak: 0, start: 101_300 };
    const viscous = hoseConductance(0.025, 2, 1e6, 0, CHAMBER.gasTemperature) / 1e6;
    const ideal = { ...pump, ultimate: 0 };
    const chamber = emptyChamber(0.5, 0);
    expect(off(time(chamber, narrow, ideal, 1000), hosePumpDownTime(vessel, viscous, 1000))).toBeLessThan(0.005);
    const deep = time(chamber, narrow, ideal, 30);
    expect(deep).toBeLessThan(hosePumpDownTime(vessel, viscous, 30));
    expect(deep).toBeGreaterThan(0.85 * hosePumpDownTime(vessel, viscous, 30));
    expect(deep).toBeGreaterThan(1.3 * pumpDownTime(vessel, 30));
  });
});

/** A load in a chamber that is at its pressure already. */
function dryingRun(chamber: ChamberSpec, product: ProductSpec): GroupRun {
  const group = pumpGroup({ pump: GOOD_PUMP, chambers: [{ chamber, hose: HOSE }] });
  const unit = group.units[0] as ChamberUnit;
  unit.load = chamberLoad(product, chamber);
  unit.mode = 'primary';
  setValue(group, 0, MOISTURE, unit.load.boundMoisture);
  return groupRun(group, STANDARD_CONTROL);
}

function endOfIce(run: GroupRun): number {
  advanceGroup(run, 1000 * HOUR, 0);
  expect(run.finished).toEqual([0]);
  return run.group.time;
}

describe('drying at a constant heat', () => {
  // 2000 W onto 10 kg of ice at the temperature whose heat of sublimation is 2838.6 kJ/kg.
  const chamber = steadyChamber(30, { heaterPower: 2000, heat: { ...CHAMBER.heat, contact: 1e9 } });
  const product = { ...PLAIN_LOAD, load: 10 / 0.7 };

  it('takes m·L/P and balances its heat', () => {
    const run = dryingRun(chamber, product);
    const latent = sublimationHeat(iceTemperature(30));
    expect(off(endOfIce(run), (10 * latent) / 2000)).toBeLessThan(2e-4);
    // The cap is the power over the largest latent heat there is, so the heat counted falls short of it by 0.01 %.
    expect(off(stateValue(run.group, 0, HEAT), 10 * latent)).toBeLessThan(1e-6);
  });
});

describe('drying through a growing resistance', () => {
  // Ice held at its limit, 60 Pa above the chamber; R = 1e5 + 1.6e8·l m/s; 700 kg/m³ over 10 mm: 29.16667 h.
  const limit = ZERO_CELSIUS - 20;
  const product = { ...PLAIN_LOAD, surfaceResistance: 1e5, permeability: 1 / 1.6e8, frozenLimit: limit };
  const chamber = steadyChamber(icePressure(limit) - 60, { heat: { ...CHAMBER.heat, contact: 1e9 } });

  it('takes c·(R0·L + A·L²/2)/Δp', () => {
    expect(off(endOfIce(dryingRun(chamber, product)), 29.16667 * HOUR)).toBeLessThan(1e-3);
  });

  it.each([
    [0.25, 4.715],
    [0.5, 6.901],
    [0.75, 8.58182],
  ])('has dried at %d of that time to %d mm', (share, thickness) => {
    const run = dryingRun(chamber, product);
    advanceGroup(run, share * 29.16667 * HOUR, 0);
    expect(off(stateValue(run.group, 0, DRIED) * 10, thickness)).toBeLessThan(1e-3);
  });
});

describe('a front fed through its own dried layer', () => {
  // The worked coffee slab of freeze-drying-encyclopedia: 0.035 W/(m·K), 2.6252e-8 s, surface 30 °C, 97 µm of mercury.
  const slab = { conductivity: 0.035, surface: ZERO_CELSIUS + 30 };
  const product = {
    ...PLAIN_LOAD,
    driedConductivity: slab.conductivity,
    permeability: 2.6252e-8,
    scorchLimit: slab.surface,
    load: 6.25,
  };
  const chamber = steadyChamber(97 * 0.133322, { heat: { ...CHAMBER.heat, contact: 1e9 }, heaterPower: 1e9 });

  it('stays at the printed −29.4 °C, whatever its depth', () => {
    const run = dryingRun(chamber, product);
    for (const hours of [0.5, 2, 4]) {
      advanceGroup(run, hours * HOUR, 0);
      const { iceTemperature: front } = (run.group.units[0] as ChamberUnit).drying;
      // The source read its value off a drawing: 0.15 K.
      expect(Math.abs(front - (ZERO_CELSIUS - 29.4))).toBeLessThan(0.15);
    }
  });

  it('takes c·z²·L/(2·k·ΔT): 5.11–5.48 h for 690–740 kg/m³ over 6.25 mm', () => {
    const run = dryingRun(chamber, product);
    const front = ZERO_CELSIUS - 29.317;
    const exact = frontTime({ ...slab, heat: sublimationHeat(front), front }, 700, 0.00625);
    const own = endOfIce(run);
    expect(off(own, exact)).toBeLessThan(2e-3);
    expect(own / HOUR).toBeGreaterThan(5.11);
    expect(own / HOUR).toBeLessThan(5.48);
  });
});
