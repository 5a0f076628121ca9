'use client';

import { memo, type ReactNode, useEffect, useMemo, useState } from 'react';
import { pumpSidesStudy } from '../../lib/io/studies.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import { axisMoney, quantityWithUnit, type ShownAs } from '../../lib/views/format-quantity.ts';
import { pumpSidesPicture } from '../../lib/views/pump-sides-picture.ts';
import {
  FAILURE_PART_LABELS,
  type FailurePart,
  firstPumps,
  type PumpSidesView,
  pumpSidesView,
  sideFault,
} from '../../lib/views/pump-sides-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { PumpSidesChart } from '../charts/pump-sides-chart.tsx';
import { StackedBarsChart } from '../charts/stacked-bars-chart.tsx';
import { getStudyDesk, useStudy } from '../state/study-desk.ts';
import { useElementWidth } from '../ui/use-element-width.ts';
import { FigureFrame } from './figure-frame.tsx';
import styles from './pump-sides-figure.module.css';
import { PumpSidesTable } from './pump-sides-table.tsx';
import { StudyBar } from './study-bar.tsx';
import { StudyInvitation } from './study-invitation.tsx';

interface Props {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly shown: ShownAs;
}

const NAME = 'Shared pump or own pumps';

const COLOURS: Readonly<Record<FailurePart, string>> = {
  spoiled: 'var(--bad)',
  idle: 'var(--series-2)',
  repairs: 'var(--series-8)',
};

const FAILURE_PARTS = (Object.keys(FAILURE_PART_LABELS) as FailurePart[]).map((key) => ({
  key,
  label: FAILURE_PART_LABELS[key],
  colour: COLOURS[key],
}));

interface PickProps {
  readonly label: string;
  readonly plan: Plan;
  readonly value: string;
  readonly onPick: (pumpId: string) => void;
}

function PumpPick({ label, plan, value, onPick }: PickProps) {
  return (
    <label className={styles.pick}>
      <span>{label}</span>
      <select value={value} onChange={(event) => onPick(event.target.value)}>
        {plan.pumps.map((pump) => (
          <option key={pump.id} value={pump.id}>
            {pump.name}
          </option>
        ))}
      </select>
    </label>
  );
}

interface FailureProps {
  readonly view: PumpSidesView;
  readonly about: string;
  readonly shown: ShownAs;
  readonly isStale: boolean;
}

function FailureFigure({ view, about, shown, isStale }: FailureProps) {
  return (
    <FigureFrame
      name="Pump failures"
      about={about}
      finding={view.failureFinding}
      summary={view.failureSummary}
      table={view.failureTable}
      series={view.failureSeries}
      stale={isStale}
      tools={<ChartLegend items={FAILURE_PARTS.map((part) => ({ ...part, mark: 'block' }))} />}
    >
      <StackedBarsChart
        rows={view.failures}
        parts={FAILURE_PARTS}
        ticks={view.failureTicks}
        axis="cost of failing pumps in a mean year"
        axisText={(value) => axisMoney(value, shown)}
        figure={(value) => quantityWithUnit(value, 'money', shown)}
        title={view.failureFinding}
        description="Mean yearly cost of failing pumps by part."
      />
    </FigureFrame>
  );
}

interface SidesProps extends Omit<FailureProps, 'shown'> {
  readonly picks: ReactNode;
}

function SidesFigure({ view, about, isStale, picks }: SidesProps) {
  const [box, width] = useElementWidth<HTMLDivElement>();
  const picture = useMemo(() => (width === 0 ? null : pumpSidesPicture(view.panels, width)), [view, width]);
  const legend = [
    { key: 'own', label: 'a pump each', aside: view.ownName, colour: 'var(--series-2)', mark: 'block' as const },
    { key: 'shared', label: 'one for all', aside: view.sharedName, colour: 'var(--series-1)', mark: 'block' as const },
  ];
  return (
    <FigureFrame
      name={NAME}
      about={about}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      tableView={<PumpSidesTable view={view} />}
      series={view.series}
      stale={isStale}
      tools={
        <>
          {picks}
          <ChartLegend items={legend} />
        </>
      }
    >
      <div ref={box}>
        {picture ? <PumpSidesChart picture={picture} title={view.finding} description={view.summary} /> : null}
      </div>
    </FigureFrame>
  );
}

/** The same chambers with a pump each and on one pump, side by side, and what failing pumps do to both. */
export const PumpSidesFigure = memo(function PumpSidesFigure({ plan, scenario, shown }: Props) {
  const first = useMemo(() => firstPumps(plan, scenario), [plan, scenario]);
  const [picked, setPicked] = useState<Partial<typeof first>>({});
  const has = (id: string | undefined) => plan.pumps.some((pump) => pump.id === id);
  const own = has(picked.own) ? (picked.own ?? first.own) : first.own;
  const shared = has(picked.shared) ? (picked.shared ?? first.shared) : first.shared;
  const state = useStudy('pumpSides');
  const study = useMemo(() => pumpSidesStudy(plan, scenario.id, own, shared), [plan, scenario.id, own, shared]);
  // Two weeks are quick: they are run as soon as the figure is looked at, and again when a pump or the plan changes.
  useEffect(() => {
    if (getStudyDesk().states().pumpSides.answer?.key !== study.key) getStudyDesk().start(study);
  }, [study]);
  const answer = state.answer?.value;
  const view = answer ? pumpSidesView(answer, plan, shown) : null;
  const isStale = state.answer?.key !== study.key;
  const picks = (
    <div className={styles.picks}>
      <PumpPick label="A pump each:" plan={plan} value={own} onPick={(id) => setPicked({ ...picked, own: id })} />
      <PumpPick label="One for all:" plan={plan} value={shared} onPick={(id) => setPicked({ ...picked, shared: id })} />
      <StudyBar
        kind="pumpSides"
        state={state}
        wantedKey={study.key}
        label="Compare"
        onStart={() => getStudyDesk().start(study)}
      />
    </div>
  );
  if (!answer || !view) {
    const faults = answer ? [sideFault(answer.own), sideFault(answer.shared)].join(' ') : '';
    return <StudyInvitation name={NAME} words={faults.trim() || 'Running both weeks …'} bar={picks} />;
  }
  return (
    <div className={styles.screen}>
      <SidesFigure view={view} about={scenario.name} isStale={isStale} picks={picks} />
      <FailureFigure view={view} about={scenario.name} shown={shown} isStale={isStale} />
    </div>
  );
});
