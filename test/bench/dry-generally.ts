import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import type { ChamberUnit } from '../../lib/plant/chamber-unit.ts';
import { type GroupRates, groupRates, groupRatesRecord } from '../../lib/plant/group-rates.ts';
import {
  DRIED,
  GAS,
  HEAT,
  MOISTURE,
  PUMPED,
  type PumpGroup,
  pumpGroup,
  STATE_SIZE,
  setValue,
  TEMPERATURE,
} from '../../lib/plant/group-state.ts';
import type { LoadLaw } from '../../lib/plant/load-law.ts';
import { ATMOSPHERE, pumpDown } from '../../lib/plant/pump-down.ts';
import type { SharedStart } from '../plant/dry-together.ts';
import { integrate, type Rates, type Settings } from './dormand-prince.ts';

/**
 * Relative tolerance at which every load ends within 0.1 % of the independent reference. Ten times more misses that and saves
 * no steps: what holds them short is not accuracy but the seconds in which a chamber's gas settles.
 */
const RELATIVE = 1e-4;
const ABSOLUTE: Readonly<Record<number, number>> = {
  [DRIED]: 1e-5,
  [MOISTURE]: 1e-6,
  [TEMPERATURE]: 1e-2,
  [GAS]: 1e-3,
  [PUMPED]: 1e-6,
  [HEAT]: 1e3,
};

function loadedGroup({ pump, units, products }: SharedStart): PumpGroup {
  const down = pumpDown(
    units,
    pump,
    units.map(() => ATMOSPHERE),
  );
  if (down.kind === 'stalls') throw new Error(`the pump stalls at ${down.pressure} Pa`);
  const group = pumpGroup({ pump, chambers: units });
  group.units.forEach((unit, i) => {
    const product = products[i];
    if (!product) throw new Error(`chamber ${i} has no product`);
    const load = chamberLoad(product, unit.spec);
    Object.assign(unit, {
      load,
      mode: load.ice > 0 ? 'primary' : 'secondary',
      valveOpen: true,
      vacuumSince: -down.duration,
    });
    setValue(group, i, DRIED, load.ice > 0 ? 0 : 1);
    setValue(group, i, MOISTURE, load.boundMoisture);
    setValue(group, i, TEMPERATURE, product.loadingTemperature);
    setValue(group, i, GAS, down.gas[i] as number);
  });
  return group;
}

function ratesOf(group: PumpGroup, record: GroupRates): Rates {
  return (time, state, out) => {
    if (group.units.some((_, i) => !((state[i * STATE_SIZE + GAS] as number) >= 0))) {
      out.fill(Number.NaN);
      return;
    }
    groupRates(group, time, state, record);
    record.chambers.forEach((chamber, i) => {
      const at = i * STATE_SIZE;
      out[at + DRIED] = chamber.dried;
      out[at + MOISTURE] = chamber.moisture;
      out[at + TEMPERATURE] = chamber.temperature;
      out[at + GAS] = record.gas[i] as number;
      out[at + PUMPED] = record.pumped[i] as number;
      out[at + HEAT] = chamber.heat;
    });
  };
}

/** What is left of a chamber's stage: of the ice, or of the moisture above its target. */
function leftIn(unit: ChamberUnit, state: Float64Array, i: number): number {
  if (unit.mode === 'primary') return 1 - (state[i * STATE_SIZE + DRIED] as number);
  if (unit.mode !== 'secondary') return Number.POSITIVE_INFINITY;
  return (state[i * STATE_SIZE + MOISTURE] as number) - (unit.load as LoadLaw).product.desorption.target;
}

function endStages(group: PumpGroup, state: Float64Array, ends: number[], time: number, record: GroupRates): void {
  groupRates(group, time, state, record);
  group.units.forEach((unit, i) => {
    if (leftIn(unit, state, i) > 1e-8) return;
    if (unit.mode === 'primary') {
      state[i * STATE_SIZE + TEMPERATURE] = unit.drying.iceTemperature;
      unit.mode = 'secondary';
    } else {
      ends[i] = time;
      unit.mode = 'hold';
    }
  });
}

export interface GeneralDrying {
  /** When each load is dry, from the end of the pump-down [s]. */
  readonly ends: readonly number[];
  readonly steps: number;
}

/** The loads of a shared start dried by a general-purpose solver that is given the engine's own rates. */
export function dryGenerally(start: SharedStart): GeneralDrying {
  const group = loadedGroup(start);
  const record = groupRatesRecord(group.units.length);
  const rates = ratesOf(group, record);
  const absolute = group.state.map((_, place) => ABSOLUTE[place % STATE_SIZE] as number);
  const settings: Settings = { relative: RELATIVE, absolute, firstStep: 1 };
  const ends: number[] = group.units.map(() => 0);
  const left = (state: Float64Array) => Math.min(...group.units.map((unit, i) => leftIn(unit, state, i)));
  let state: Float64Array = group.state.slice();
  let time = 0;
  let steps = 0;
  while (ends.some((end) => end === 0)) {
    const reached = integrate(rates, time, state, left, settings);
    ({ time, state } = reached);
    steps += reached.steps;
    endStages(group, state, ends, time, record);
  }
  return { ends, steps };
}
