import { useSyncExternalStore } from 'react';
import { getPlanner } from './planner.ts';
import type { PlannerState } from './planner-state.ts';

/** A part of the planner's state, followed as it changes. The part must be the same object while it is unchanged. */
export function usePlanner<Part>(part: (state: PlannerState) => Part): Part {
  const planner = getPlanner();
  return useSyncExternalStore(planner.subscribe, () => part(planner.getState()));
}
