import type { Phase } from '../../plant/report-types.ts';

/** What a chamber is doing in each phase, in the order of a batch. */
export const PHASE_WORDS: Readonly<Record<Phase, string>> = {
  waitingToLoad: 'waiting to be loaded',
  loading: 'loading',
  waitingForFreezer: 'waiting for the freezer',
  freezing: 'freezing',
  waitingForPump: 'waiting for the pump',
  pumpDown: 'pumping down',
  primary: 'drying the ice off',
  secondary: 'in last drying',
  hold: 'held under vacuum until someone comes',
  unloading: 'unloading',
  defrost: 'defrosting',
  waitingToClean: 'waiting to be cleaned',
  cleaning: 'cleaning',
  idleNoDemand: 'with nothing left to make',
};

/** Phases in which a chamber works on a batch; waiting, holding and idling are not among them. */
export const WORKING_PHASES: readonly Phase[] = [
  'loading',
  'freezing',
  'pumpDown',
  'primary',
  'secondary',
  'unloading',
  'defrost',
  'cleaning',
];

export const WAITS_FOR_PEOPLE: readonly Phase[] = ['waitingToLoad', 'hold', 'waitingToClean'];
