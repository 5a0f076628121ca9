'use client';

import { memo, useEffect, useMemo } from 'react';
import { stressStudy } from '../../lib/io/studies.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { stressView } from '../../lib/views/stress-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { CoverChart } from '../charts/cover-chart.tsx';
import { getStudyDesk, useStudy } from '../state/study-desk.ts';
import { FigureFrame } from './figure-frame.tsx';
import { StudyBar } from './study-bar.tsx';
import { StudyInvitation } from './study-invitation.tsx';

interface Props {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly shown: ShownAs;
}

const NAME = 'When things go wrong';

const LEGEND = [
  { key: 'meets', label: 'meets the lender’s line (dashed)', colour: 'var(--accent)', mark: 'block' },
  { key: 'below', label: 'below it', colour: 'var(--bad)', mark: 'block' },
] as const;

/** What the customary stresses leave of a scenario, how far sales may fall, and what failing pumps cost. */
export const StressFigure = memo(function StressFigure({ plan, scenario, shown }: Props) {
  const state = useStudy('stress');
  const study = useMemo(() => stressStudy(plan, scenario.id), [plan, scenario.id]);
  // A scenario that has been worked out already needs no week for this: it is quick, and done as soon as it is looked at.
  useEffect(() => {
    if (getStudyDesk().states().stress.answer?.key !== study.key) getStudyDesk().start(study);
  }, [study]);
  const bar = (
    <StudyBar
      kind="stress"
      state={state}
      wantedKey={study.key}
      label="Work it out"
      onStart={() => getStudyDesk().start(study)}
    />
  );
  const answer = state.answer?.value;
  if (!answer?.risk) {
    const words = answer ? 'This scenario cannot run as it is; its row says why.' : 'Trying what could go wrong …';
    return <StudyInvitation name={NAME} words={words} bar={bar} />;
  }
  const view = stressView(answer.risk, answer.dscrLine, shown);
  return (
    <FigureFrame
      name={NAME}
      about={scenario.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={state.answer?.key !== study.key}
      tools={
        <>
          {bar}
          <ChartLegend items={LEGEND} />
        </>
      }
    >
      <CoverChart view={view} title={view.finding} />
    </FigureFrame>
  );
});
