import { useEffect, useMemo } from 'react';
import { computedIn } from '../../lib/io/engine-desk.ts';
import { stressStudy } from '../../lib/io/studies.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { LenderSources } from '../../lib/views/lender/document-types.ts';
import type { ComputedScenario } from '../../lib/views/scenario-rows.ts';
import { getStudyDesk, useStudy } from '../state/study-desk.ts';
import { usePlanner } from '../state/use-planner.ts';

interface Found {
  /** Null as long as anything is being worked out, or cannot be. */
  readonly sources: LenderSources | null;
  readonly words: string;
}

function freshResult({ outcome }: ComputedScenario) {
  return outcome?.kind === 'computed' ? outcome.result : null;
}

function wordsFor(states: readonly ComputedScenario[], hasRisk: boolean, hasFailed: boolean): string {
  const refused = states.map(({ outcome }) => outcome).find((outcome) => outcome?.kind === 'refused');
  if (refused?.kind === 'refused') {
    const [first] = refused.findings;
    return `${refused.name} cannot be worked out, so there is nothing to print. ${first?.problem ?? ''} ${first?.remedy ?? ''}`;
  }
  if (states.some(({ outcome }) => outcome === null)) return 'Working out the weeks and the accounts …';
  if (states.some(({ bottleneck }) => bottleneck === undefined)) return 'Looking for what limits the shop …';
  if (hasRisk) return 'Figures are those of the sheet as it stands.';
  return hasFailed
    ? 'What could go wrong could not be worked out. Load the page again.'
    : 'Trying what could go wrong …';
}

/** All that the papers are made from, once every figure is of the plan as it stands. */
export function useLenderSources(plan: Plan, scenarioId: string, date: string): Found {
  const desk = usePlanner((state) => state.desk);
  const stress = useStudy('stress');
  const study = useMemo(() => stressStudy(plan, scenarioId), [plan, scenarioId]);
  const own = computedIn(desk, scenarioId);
  const now = computedIn(desk, plan.scenarios[0]?.id ?? '');
  const isReady = freshResult(own) !== null && freshResult(now) !== null;
  useEffect(() => {
    if (isReady && getStudyDesk().states().stress.answer?.key !== study.key) getStudyDesk().start(study);
  }, [isReady, study]);
  const risk = stress.answer?.key === study.key ? stress.answer.value.risk : null;
  const sources = useMemo((): LenderSources | null => {
    const scenario = plan.scenarios.find((candidate) => candidate.id === scenarioId);
    const [result, today] = [freshResult(own), freshResult(now)];
    if (!scenario || !result || !today || !risk) return null;
    if (own.bottleneck === undefined || now.bottleneck === undefined) return null;
    const shown = { system: plan.site.unitSystem, currency: plan.site.currency };
    const limits = { bottleneck: own.bottleneck, todayBottleneck: now.bottleneck };
    return { plan, scenario, result, today, risk, shown, date, ...limits };
  }, [plan, scenarioId, own, now, risk, date]);
  return { sources, words: wordsFor([own, now], risk !== null, stress.status === 'failed') };
}
