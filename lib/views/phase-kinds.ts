import type { Phase } from '../plant/report-types.ts';

/** What a chamber is doing, as the week chart tells it apart: several phases of the engine share a colour. */
export type PhaseKind =
  | 'hands'
  | 'freezing'
  | 'pumpDown'
  | 'primary'
  | 'secondary'
  | 'waitingForPeople'
  | 'waitingForPump'
  | 'waitingForFreezer'
  | 'defrost'
  | 'idle';

const KIND_OF_PHASE: Readonly<Record<Phase, PhaseKind>> = {
  loading: 'hands',
  unloading: 'hands',
  cleaning: 'hands',
  freezing: 'freezing',
  pumpDown: 'pumpDown',
  primary: 'primary',
  secondary: 'secondary',
  hold: 'waitingForPeople',
  waitingToLoad: 'waitingForPeople',
  waitingToClean: 'waitingForPeople',
  waitingForPump: 'waitingForPump',
  waitingForFreezer: 'waitingForFreezer',
  defrost: 'defrost',
  idleNoDemand: 'idle',
};

/** Words of the legend, in the order of a batch. */
export const PHASE_KIND_LABELS: Readonly<Record<PhaseKind, string>> = {
  hands: 'loading, unloading, cleaning',
  freezing: 'freezing',
  pumpDown: 'pumping down',
  primary: 'drying the ice off',
  secondary: 'last drying',
  waitingForPeople: 'waiting for people',
  waitingForPump: 'waiting for the pump',
  waitingForFreezer: 'waiting for the freezer',
  defrost: 'defrosting',
  idle: 'nothing left to make',
};

export const PHASE_KINDS = Object.keys(PHASE_KIND_LABELS) as readonly PhaseKind[];

export function kindOfPhase(phase: Phase): PhaseKind {
  return KIND_OF_PHASE[phase];
}

/** Words for each single phase, for tooltips. */
export const PHASE_LABELS: Readonly<Record<Phase, string>> = {
  waitingToLoad: 'waiting to be loaded',
  loading: 'loading',
  freezing: 'freezing',
  waitingForPump: 'waiting for the pump',
  pumpDown: 'pumping down',
  primary: 'drying the ice off',
  secondary: 'last drying',
  hold: 'held under vacuum until someone comes',
  unloading: 'unloading',
  defrost: 'defrosting',
  waitingToClean: 'waiting to be cleaned',
  cleaning: 'cleaning',
  idleNoDemand: 'nothing left to make',
  waitingForFreezer: 'waiting for the freezer',
};
