import { describe, expect, it } from 'vitest';
import { advanceGroup, type GroupRun, groupRun } from '../../lib/plant/group-advance.ts';
import { GAS, pumpGroup, setValue, stateValue } from '../../lib/plant/group-state.ts';
import type { ChamberSpec, ChamberUnitSpec, PumpSpec } from '../../lib/plant/types.ts';
import { COLD_TRAP } from './ideal-chamber.ts';
import { CHAMBER, GOOD_PUMP } from './sample-shop.ts';

/*
 * Two leaking chambers on one pump through hoses of constant conductance. In gas so thin that molecules meet only the wall a
 * hose conducts the same at every pressure, so the engine's own hoses serve, a million times below the pressures of the shop.
 * Derivation: V_i·dp_i/dt = Q_i − C_i·(p_i − p_m), S·p_m = Σ C_i·(p_i − p_m), so dp/dt = A·p + Q/V with p_m = (C1·p1 + C2·p2)/G,
 * G = S + C1 + C2. V = 0.3, 0.5 m³; C = 0.040, 0.025 m³/s; S = 0.020 m³/s; from 1 with leaks of 0.2e-3 and 0.5e-3 /s the exact
 * solution by eigenvalues −0.08807152 and −0.01781084 1/s is below.
 */
const EXACT: readonly (readonly [seconds: number, first: number, second: number])[] = [
  [10, 0.7615776, 0.8822933],
  [30, 0.5029092, 0.6532855],
  [60, 0.3041943, 0.4087995],
  [120, 0.130411, 0.1766683],
  [300, 0.0436633, 0.0599301],
];

/** The pressure that stands for 1 [Pa]: the viscous part of a hose is then 1e-6 of the molecular part. */
const SCALE = 1e-4;
/** Steps far below the fast time constant of 11 s; the usual ones look at half a pascal and would not see these pressures. */
const FINE = { tolerance: 1e-3, longest: 0.1 };
const DIAMETER = 0.1;

/** Molecular conductance of a long tube, π/12·√(8·R·T/(π·M))·D³/L [m³/s], solved for the length [m]; air at 20 °C. */
function lengthFor(conductance: number): number {
  const meanSpeed = Math.sqrt((8 * 8.314462618 * CHAMBER.gasTemperature) / (Math.PI * 0.0289652));
  return ((Math.PI / 12) * meanSpeed * DIAMETER ** 3) / conductance;
}

function unit(volume: number, conductance: number, leak: number): ChamberUnitSpec {
  const chamber: ChamberSpec = { ...CHAMBER, volume, leak: leak * SCALE, outgassing: 0, trap: COLD_TRAP };
  return { chamber, hose: { diameter: DIAMETER, length: lengthFor(conductance) } };
}

function openPair(): GroupRun {
  const pump: PumpSpec = { ...GOOD_PUMP, speed: 0.02, ultimate: 0 };
  const group = pumpGroup({ pump, chambers: [unit(0.3, 0.04, 0.2e-3), unit(0.5, 0.025, 0.5e-3)] });
  group.units.forEach((open, i) => {
    open.mode = 'hold';
    open.valveOpen = true;
    setValue(group, i, GAS, SCALE);
  });
  const run = groupRun(group, FINE);
  run.nextLength = FINE.longest;
  return run;
}

describe('two chambers on one pump through hoses of constant conductance', () => {
  const run = openPair();
  it.each(EXACT)('after %d s stand where the exact solution puts them', (seconds, first, second) => {
    advanceGroup(run, seconds, seconds);
    // Half a thousandth: the two-step formula with steps of 0.1 s, the viscous remainder, the trap's last vapour.
    expect(Math.abs(stateValue(run.group, 0, GAS) / SCALE / first - 1)).toBeLessThan(5e-4);
    expect(Math.abs(stateValue(run.group, 1, GAS) / SCALE / second - 1)).toBeLessThan(5e-4);
  });
});
