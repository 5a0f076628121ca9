import { WEEK } from './crew.ts';
import { overlap, type Window } from './measured-window.ts';
import type { EnergyWeek, Phase } from './report-types.ts';
import type { Shop } from './shop-state.ts';
import { chamberValue, LOG_END, LOG_HEAT, LOG_START, stepCount, stepValue } from './step-log.ts';
import type { ChamberPowerSpec } from './types.ts';

/** Demand is metered as the mean over a quarter of an hour [s]. */
export const QUARTER = 900;

export type Consumer = keyof EnergyWeek;

const COLD_PHASES: readonly Phase[] = ['freezing', 'waitingForPump', 'pumpDown', 'primary', 'secondary', 'hold'];
const EMPTY_PHASES: readonly Phase[] = ['waitingToLoad', 'idleNoDemand', 'waitingForFreezer'];

/** Energy by consumer and by quarter hour over the measured window [J]. */
export interface PowerAccount {
  readonly quarters: Float64Array;
  readonly energy: Record<Consumer, number>;
}

/** Spreads `energy` evenly over [start, end] and adds what falls into the window. */
function addEnergy(
  account: PowerAccount,
  window: Window,
  consumer: Consumer,
  start: number,
  end: number,
  energy: number,
): void {
  const from = Math.max(start, window.start);
  const to = Math.min(end, window.end);
  if (to <= from || energy === 0) return;
  const power = energy / (end - start);
  account.energy[consumer] += power * (to - from);
  const first = Math.floor((from - window.start) / QUARTER);
  const last = Math.min(account.quarters.length - 1, Math.floor((to - window.start) / QUARTER));
  for (let i = first; i <= last; i += 1) {
    const quarter = { start: window.start + i * QUARTER, end: window.start + (i + 1) * QUARTER };
    account.quarters[i] = (account.quarters[i] as number) + power * overlap(quarter, from, to);
  }
}

function phasePower(power: ChamberPowerSpec, phase: Phase): readonly (readonly [Consumer, number])[] {
  const controls = EMPTY_PHASES.includes(phase) ? 0 : power.controls;
  const compressor = COLD_PHASES.includes(phase) ? power.compressor : 0;
  return [
    ['controls', controls],
    ['refrigeration', compressor],
    ['defrost', phase === 'defrost' ? power.defrost : 0],
  ];
}

function addChambers(shop: Shop, window: Window, account: PowerAccount): void {
  for (const span of shop.spans) {
    const power = (shop.chambers[span.chamber] as Shop['chambers'][number]).spec.chamber.power;
    for (const [consumer, watts] of phasePower(power, span.phase)) {
      addEnergy(account, window, consumer, span.start, span.end, watts * (span.end - span.start));
    }
  }
}

function addHeaters(shop: Shop, window: Window, account: PowerAccount): void {
  for (const { group, log } of shop.groups) {
    for (let step = 0; step < stepCount(log); step += 1) {
      let heat = 0;
      for (let unit = 0; unit < group.units.length; unit += 1) heat += chamberValue(log, step, unit, LOG_HEAT);
      addEnergy(account, window, 'heaters', stepValue(log, step, LOG_START), stepValue(log, step, LOG_END), heat);
    }
  }
}

function addPumps(shop: Shop, window: Window, account: PowerAccount): void {
  shop.pumps.forEach((pump, i) => {
    const watts = shop.groups[i]?.group.spec.pump.power ?? 0;
    for (const { start, end } of pump.spans) addEnergy(account, window, 'pumps', start, end, watts * (end - start));
  });
  const roughing = shop.spec.startPractice === 'roughing' ? (shop.spec.roughingPump?.power ?? 0) : 0;
  for (const span of shop.spans) {
    if (span.phase === 'pumpDown')
      addEnergy(account, window, 'pumps', span.start, span.end, roughing * (span.end - span.start));
  }
}

/** All electricity of the measured window; the freezer runs all the time when the shop has one. */
export function powerAccount(shop: Shop, window: Window): PowerAccount {
  const quarters = new Float64Array(Math.round((window.weeks * WEEK) / QUARTER));
  const energy = { heaters: 0, refrigeration: 0, pumps: 0, freezer: 0, defrost: 0, controls: 0 };
  const account = { quarters, energy };
  addChambers(shop, window, account);
  addHeaters(shop, window, account);
  addPumps(shop, window, account);
  const freezer = shop.spec.freezer?.power ?? 0;
  addEnergy(account, window, 'freezer', window.start, window.end, freezer * (window.end - window.start));
  return account;
}
