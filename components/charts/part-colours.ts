import type { DryingLimit } from '../../lib/plant/report-types.ts';
import type { PhaseKind } from '../../lib/views/phase-kinds.ts';

/** CSS colour of what a chamber is doing, as in the picture of the week. */
export const PHASE_COLOURS: Readonly<Record<PhaseKind, string>> = {
  hands: 'light-dark(#c77f2a, #e9b06a)',
  freezing: 'light-dark(#a9cfe6, #46687e)',
  pumpDown: 'light-dark(#5b4a9e, #b7a6f0)',
  primary: 'light-dark(#1f7590, #5bb3cc)',
  secondary: 'light-dark(#6fb3c4, #2f7a90)',
  waitingForPeople: 'light-dark(#e2c48a, #7d6a3c)',
  waitingForPump: 'var(--bad)',
  waitingForFreezer: 'var(--series-7)',
  defrost: 'light-dark(#c9c1ae, #6d6757)',
  idle: 'light-dark(#d5dee3, #33434d)',
};

/** CSS colour of what holds drying back: blues for the food and its programme, warm colours for what can be bought. */
export const LIMIT_COLOURS: Readonly<Record<DryingLimit, string>> = {
  shelfTemperature: 'light-dark(#1f7590, #5bb3cc)',
  heaterPower: 'var(--series-2)',
  frozenLimit: 'var(--series-7)',
  scorchLimit: 'var(--series-3)',
  ceilingByTrap: 'var(--series-6)',
  ceilingByGas: 'var(--bad)',
  flooded: 'var(--series-5)',
  desorption: 'light-dark(#a9cfe6, #46687e)',
};

/** CSS colour by key of a part of a batch's hours. */
export const HOUR_COLOURS: Readonly<Record<string, string>> = { ...PHASE_COLOURS, ...LIMIT_COLOURS };
