'use client';

import { memo, useMemo } from 'react';
import { turningStudy } from '../../lib/io/studies.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { turningView } from '../../lib/views/turning-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { COVER_COLOUR, TurningChart, WORTH_COLOUR } from '../charts/turning-chart.tsx';
import { getStudyDesk, useStudy } from '../state/study-desk.ts';
import { FigureFrame } from './figure-frame.tsx';
import { StudyBar } from './study-bar.tsx';
import { StudyInvitation } from './study-invitation.tsx';

interface Props {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly shown: ShownAs;
}

const NAME = 'What must be true';

const LEGEND = [
  { key: 'worth', label: 'worth its money until (net present value 0)', colour: WORTH_COLOUR, mark: 'block' },
  { key: 'cover', label: 'lowest DSCR meets the lender’s line', colour: COVER_COLOUR, mark: 'block' },
] as const;

const WORDS =
  'Prices, market, wages, energy, interest, load and drying are turned one at a time until the purchase is worth nothing, and until the lender’s line is met. Where an input changes the week it is run anew, which takes a while.';

/** How far each input may go until the purchase is worth nothing, or until the lender's line is met. */
export const TurningFigure = memo(function TurningFigure({ plan, scenario, shown }: Props) {
  const state = useStudy('turning');
  const study = useMemo(() => turningStudy(plan, scenario.id), [plan, scenario.id]);
  const bar = (
    <StudyBar
      kind="turning"
      state={state}
      wantedKey={study.key}
      label="Turn every input"
      onStart={() => getStudyDesk().start(study)}
    />
  );
  if (scenario.id === plan.scenarios[0]?.id) {
    return (
      <StudyInvitation
        name={NAME}
        words="Today is judged against nothing. Choose another row to see what must be true for it."
        bar={null}
      />
    );
  }
  if (!state.answer) return <StudyInvitation name={NAME} words={WORDS} bar={bar} />;
  const { points, dscrLine } = state.answer.value;
  const view = turningView(plan, points, dscrLine, shown);
  return (
    <FigureFrame
      name={NAME}
      about={scenario.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      isTableOpen
      stale={state.answer.key !== study.key}
      tools={
        <>
          {bar}
          <ChartLegend items={LEGEND} />
        </>
      }
    >
      <TurningChart
        view={view}
        title={view.finding}
        description="How far each input may go from today’s, in per cent, for the purchase to be worth its money and for the lender’s line."
      />
    </FigureFrame>
  );
});
