import { DRIED, iceOnTrap, MOISTURE, PUMPED, type PumpGroup, STATE_SIZE, stateValue } from './group-state.ts';
import { dryOutput, type LoadLaw, waterInLoad } from './load-law.ts';
import type { BatchRecord } from './report-types.ts';
import type { ChamberRun, Shop } from './shop-state.ts';
import { unitOf } from './shop-vacuum.ts';
import {
  chamberValue,
  LOG_DRIED,
  LOG_END,
  LOG_PRESSURE,
  LOG_START,
  type StepLog,
  stepCount,
  stepValue,
} from './step-log.ts';

/** Highest and time-mean chamber pressure over the primary drying of one batch [Pa]. */
function primaryPressures(log: StepLog, from: number, unit: number): { peak: number; mean: number } {
  let peak = 0;
  let sum = 0;
  let time = 0;
  for (let step = from; step < stepCount(log); step += 1) {
    if (chamberValue(log, step, unit, LOG_DRIED) >= 1) break;
    const pressure = chamberValue(log, step, unit, LOG_PRESSURE);
    const length = stepValue(log, step, LOG_END) - stepValue(log, step, LOG_START);
    peak = Math.max(peak, pressure);
    sum += pressure * length;
    time += length;
  }
  return { peak, mean: time > 0 ? sum / time : 0 };
}

/** The water account and the pressures of a batch at the moment its chamber is opened. */
export function closeBatch(shop: Shop, chamber: ChamberRun): Omit<BatchRecord, 'phases'> {
  const run = shop.groups[chamber.group] as Shop['groups'][number];
  const group: PumpGroup = run.group;
  const load = chamber.current?.load as LoadLaw;
  const { peak, mean } = primaryPressures(run.log, chamber.logFrom, chamber.unit);
  const given = waterInLoad(load, 0, load.boundMoisture);
  const left = waterInLoad(load, stateValue(group, chamber.unit, DRIED), stateValue(group, chamber.unit, MOISTURE));
  const onTrap = iceOnTrap(unitOf(shop, chamber), group.state, chamber.unit * STATE_SIZE);
  return {
    chamber: chamber.index,
    productId: load.product.id,
    start: chamber.batchStart,
    wetIn: load.wet,
    dryOut: dryOutput(load),
    waterIn: given,
    waterOnTrap: onTrap,
    // A trap without ice gives off no vapour: the pump cannot have had more than the load gave.
    waterThroughPump: Math.min(stateValue(group, chamber.unit, PUMPED), given - left),
    waterLeft: left,
    iceOnTrap: onTrap,
    pressurePeak: peak,
    pressureMean: mean,
  };
}
