import { useMemo } from 'react';
import { type Study, spreadStudy } from '../../lib/io/studies.ts';
import type { StudyState } from '../../lib/io/study-desk.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { useStudy } from '../state/study-desk.ts';

/** Draws of a study: a power of two covers the inputs evenly. */
export const SPREAD_DRAWS = 64;
const SEED = 1126;

interface SpreadUse {
  readonly state: StudyState<'spread'>;
  readonly study: Study<'spread'>;
}

/** The draws of a scenario's uncertain inputs: one study, whichever figure begins it or shows it. */
export function useSpreadStudy(plan: Plan, scenarioId: string): SpreadUse {
  const state = useStudy('spread');
  const study = useMemo(() => spreadStudy(plan, scenarioId, SPREAD_DRAWS, SEED), [plan, scenarioId]);
  return { state, study };
}
