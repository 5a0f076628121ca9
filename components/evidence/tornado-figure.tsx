'use client';

import { memo, useMemo, useState } from 'react';
import { tornadoStudy } from '../../lib/io/studies.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { TORNADO_LABELS, type TornadoMeasure, tornadoView } from '../../lib/views/tornado-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { HIGH_COLOUR, LOW_COLOUR, TornadoChart } from '../charts/tornado-chart.tsx';
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

const NAME = 'What moves the answer';

const MEASURES = (Object.keys(TORNADO_LABELS) as TornadoMeasure[]).map((value) => ({
  value,
  label: TORNADO_LABELS[value],
}));

const LEGEND = [
  { key: 'low', label: 'input at its low', colour: LOW_COLOUR, mark: 'block' },
  { key: 'high', label: 'input at its high', colour: HIGH_COLOUR, mark: 'block' },
] as const;

const NONE_WORDS: Readonly<Record<TornadoMeasure, string>> = {
  netPresentValue: 'Today is judged against nothing, so it has no present value. Choose another row or another figure.',
  contribution: 'The shop cannot run like that.',
  lowestCover: 'There is no loan to be covered. Choose another row or another figure.',
};

/** What each uncertain input does to the answer, alone. */
export const TornadoFigure = memo(function TornadoFigure({ plan, scenario, shown }: Props) {
  const [measure, setMeasure] = useState<TornadoMeasure>('netPresentValue');
  const state = useStudy('tornado');
  const study = useMemo(() => tornadoStudy(plan, scenario.id), [plan, scenario.id]);
  const choice = <ChoiceBar label="Which figure" options={MEASURES} value={measure} onChange={setMeasure} />;
  const bar = (
    <StudyBar
      kind="tornado"
      state={state}
      wantedKey={study.key}
      label="Try every input"
      onStart={() => getStudyDesk().start(study)}
    />
  );
  const view = state.answer ? tornadoView(plan, state.answer.value[measure], measure, shown) : null;
  if (!view || !state.answer) {
    const words =
      'Every input with a low and a high is taken to both, one after the other, and the scenario worked out anew each time.';
    return (
      <StudyInvitation
        name={NAME}
        words={state.answer ? NONE_WORDS[measure] : words}
        bar={
          <>
            {state.answer ? choice : null}
            {bar}
          </>
        }
      />
    );
  }
  return (
    <FigureFrame
      name={NAME}
      about={scenario.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={state.answer.key !== study.key}
      corner={choice}
      tools={
        <>
          {bar}
          <ChartLegend items={LEGEND} />
        </>
      }
    >
      <TornadoChart
        view={view}
        axis={TORNADO_LABELS[measure]}
        title={view.finding}
        description="The figure with each input at its low and at its high."
      />
    </FigureFrame>
  );
});
