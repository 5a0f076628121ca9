'use client';

import { memo, useState } from 'react';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { SPREAD_LABELS, type SpreadMeasure, spreadView } from '../../lib/views/spread-view.ts';
import { SpreadChart } from '../charts/spread-chart.tsx';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { FigureFrame } from './figure-frame.tsx';
import { SpreadStudyBar } from './spread-study-bar.tsx';
import { StudyInvitation } from './study-invitation.tsx';
import { SPREAD_DRAWS, useSpreadStudy } from './use-spread-study.ts';

interface Props {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly shown: ShownAs;
}

const NAME = 'Spread';

const MEASURES = (Object.keys(SPREAD_LABELS) as SpreadMeasure[]).map((value) => ({
  value,
  label: SPREAD_LABELS[value],
}));

/** How payback, present value and debt cover spread when the uncertain inputs take their chances. */
export const SpreadFigure = memo(function SpreadFigure({ plan, scenario, shown }: Props) {
  const [measure, setMeasure] = useState<SpreadMeasure>('payback');
  const { state, study } = useSpreadStudy(plan, scenario.id);
  const bar = <SpreadStudyBar state={state} study={study} label={`Draw ${SPREAD_DRAWS} times`} />;
  if (!state.answer) {
    const words = `Every input with a low and a high is drawn between them, ${SPREAD_DRAWS} times, and the whole scenario is worked out anew each time. It may take a minute or more; the page stays free meanwhile.`;
    return <StudyInvitation name={NAME} words={words} bar={bar} />;
  }
  const view = spreadView(state.answer.value, measure, shown);
  return (
    <FigureFrame
      name={NAME}
      about={scenario.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={state.answer.key !== study.key}
      corner={<ChoiceBar label="Which figure" options={MEASURES} value={measure} onChange={setMeasure} />}
      tools={bar}
    >
      <SpreadChart view={view} title={view.finding} description="Share of draws by outcome." />
    </FigureFrame>
  );
});
