'use client';

import { memo, useMemo, useState } from 'react';
import { spreadStudy } from '../../lib/io/studies.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { SPREAD_LABELS, type SpreadMeasure, spreadView } from '../../lib/views/spread-view.ts';
import { SpreadChart } from '../charts/spread-chart.tsx';
import { getStudyDesk, useStudy } from '../state/study-desk.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { FigureFrame } from './figure-frame.tsx';
import { StudyBar } from './study-bar.tsx';
import { StudyInvitation } from './study-invitation.tsx';

interface Props {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly shown: ShownAs;
}

const NAME = 'Spread';
const DRAWS = 64;
const SEED = 1126;

const MEASURES = (Object.keys(SPREAD_LABELS) as SpreadMeasure[]).map((value) => ({
  value,
  label: SPREAD_LABELS[value],
}));

/** How payback, present value and debt cover spread when the uncertain inputs take their chances. */
export const SpreadFigure = memo(function SpreadFigure({ plan, scenario, shown }: Props) {
  const [measure, setMeasure] = useState<SpreadMeasure>('payback');
  const state = useStudy('spread');
  const study = useMemo(() => spreadStudy(plan, scenario.id, DRAWS, SEED), [plan, scenario.id]);
  const bar = (
    <StudyBar
      kind="spread"
      state={state}
      wantedKey={study.key}
      label={`Draw ${DRAWS} times`}
      onStart={() => getStudyDesk().start(study)}
    />
  );
  if (!state.answer) {
    const words = `Every input with a low and a high is drawn between them, ${DRAWS} times, and the whole scenario is worked out anew each time. It may take a minute or more; the page stays free meanwhile.`;
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
