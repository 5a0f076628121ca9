'use client';

import { memo, useMemo } from 'react';
import { kneeMapStudy } from '../../lib/io/studies.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { type KneeMapView, kneeMapView } from '../../lib/views/knee-map-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { KneeMapChart } from '../charts/knee-map-chart.tsx';
import { getStudyDesk, useStudy } from '../state/study-desk.ts';
import { useElementWidth } from '../ui/use-element-width.ts';
import { FigureFrame } from './figure-frame.tsx';
import { StudyBar } from './study-bar.tsx';
import { StudyInvitation } from './study-invitation.tsx';

interface Props {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly shown: ShownAs;
}

const NAME = 'Knee and pump speed';
/** The map goes to this many chambers. */
const MOST_CHAMBERS = 8;

const LEGEND = [
  { key: 'pays', label: 'adds 80 % or more of what it could', colour: 'var(--good-ground)', mark: 'block' },
  { key: 'less', label: '40 to 80 %', colour: 'var(--warn-ground)', mark: 'block' },
  { key: 'jams', label: 'less than 40 %', colour: 'var(--bad-ground)', mark: 'block' },
] as const;

/** The map as wide as there is room. */
function FittedMap({ view }: { readonly view: KneeMapView }) {
  const [box, width] = useElementWidth<HTMLDivElement>();
  return (
    <div ref={box}>
      {width === 0 ? null : <KneeMapChart view={view} width={width} title={view.finding} description={view.summary} />}
    </div>
  );
}

/** The knee as a map: how many chambers a pump of some speed carries. */
export const KneeMapFigure = memo(function KneeMapFigure({ plan, scenario, shown }: Props) {
  const state = useStudy('kneeMap');
  const study = useMemo(() => kneeMapStudy(plan, scenario.id, MOST_CHAMBERS), [plan, scenario.id]);
  const bar = (
    <StudyBar
      kind="kneeMap"
      state={state}
      wantedKey={study.key}
      label="Draw the map"
      onStart={() => getStudyDesk().start(study)}
    />
  );
  if (!state.answer) {
    const words = `One to ${MOST_CHAMBERS} chambers on pumps of half to three times the speed of this one: some fifty weeks are run. It may take a minute.`;
    return <StudyInvitation name={NAME} words={words} bar={bar} />;
  }
  const view = kneeMapView(state.answer.value, plan, scenario, shown);
  return (
    <FigureFrame
      name={NAME}
      about={scenario.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={state.answer.key !== study.key}
      tools={
        <>
          {bar}
          <ChartLegend items={LEGEND} />
        </>
      }
    >
      <FittedMap view={view} />
    </FigureFrame>
  );
});
