import { useMemo } from 'react';
import type { DeskSnapshot } from '../../lib/io/engine-desk.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { BatchCostFigure } from './batch-cost-figure.tsx';
import { BatchHoursFigure } from './batch-hours-figure.tsx';
import styles from './evidence-panel.module.css';
import { FigurePending } from './figure-pending.tsx';
import { FigureSlot } from './figure-slot.tsx';
import { KneeFigure } from './knee-figure.tsx';
import { KneeMapFigure } from './knee-map-figure.tsx';
import { PaybackFigure } from './payback-figure.tsx';
import { PumpSidesFigure } from './pump-sides-figure.tsx';
import { ReliefFigure } from './relief-figure.tsx';
import { SpreadFigure } from './spread-figure.tsx';
import { StressFigure } from './stress-figure.tsx';
import { TornadoFigure } from './tornado-figure.tsx';
import { TurningFigure } from './turning-figure.tsx';
import { WeekFigure } from './week-figure.tsx';

interface Props {
  readonly plan: Plan;
  readonly rows: readonly ScenarioRow[];
  readonly desk: DeskSnapshot;
  readonly views: readonly ScenarioView[];
  readonly currentId: string;
  readonly selectedIds: readonly string[];
}

/** All figures in the order of the index; each is drawn when its place comes near the window. */
export function Figures({ plan, rows, desk, views, currentId, selectedIds }: Props) {
  const { currency, unitSystem: system } = plan.site;
  const shown = useMemo(() => ({ system, currency }), [system, currency]);
  const row = rows.find((candidate) => candidate.id === currentId);
  const scenario = plan.scenarios.find((candidate) => candidate.id === currentId);
  const computed = desk.computed.get(currentId);
  const isStale = row?.state !== 'fresh';
  const isAnyStale = rows.some((candidate) => candidate.state !== 'fresh');
  const plant = computed?.lastResult?.plant;
  const bottleneck = computed?.lastBottleneck ?? null;
  if (!scenario) return null;
  const ofAll = { views, currentId, shown, isStale: isAnyStale };
  const ofOne = { plan, scenario, shown };
  return (
    <div className={styles.figures}>
      <FigureSlot name="Payback">
        {() =>
          views.length === 0 ? (
            <FigurePending name="Payback" words="Working out the weeks of each scenario …" />
          ) : (
            <PaybackFigure plan={plan} {...ofAll} selectedIds={selectedIds} />
          )
        }
      </FigureSlot>
      <FigureSlot name="What a batch costs">{() => <BatchCostFigure {...ofAll} />}</FigureSlot>
      <FigureSlot name="A typical week" wide>
        {() =>
          plant ? (
            <WeekFigure {...ofOne} plant={plant} isStale={isStale} />
          ) : (
            <FigurePending name="A typical week" words="Running the week …" />
          )
        }
      </FigureSlot>
      <FigureSlot name="Where a batch’s hours go">
        {() => <BatchHoursFigure views={views} currentId={currentId} isStale={isAnyStale} />}
      </FigureSlot>
      <FigureSlot name="Chambers against output">
        {() => <KneeFigure curve={desk.knee.curve} about={scenario.name} isStale={desk.knee.isStale} shown={shown} />}
      </FigureSlot>
      <FigureSlot name="What jams" wide>
        {() => <ReliefFigure {...ofOne} bottleneck={bottleneck} isStale={!row?.isFlagFresh} />}
      </FigureSlot>
      <FigureSlot name="Shared pump or own pumps" wide>
        {() => <PumpSidesFigure {...ofOne} />}
      </FigureSlot>
      <FigureSlot name="Knee and pump speed">{() => <KneeMapFigure {...ofOne} />}</FigureSlot>
      <FigureSlot name="When things go wrong">{() => <StressFigure {...ofOne} />}</FigureSlot>
      <FigureSlot name="What must be true" wide>
        {() => <TurningFigure {...ofOne} />}
      </FigureSlot>
      <FigureSlot name="What moves the answer">{() => <TornadoFigure {...ofOne} />}</FigureSlot>
      <FigureSlot name="Spread">{() => <SpreadFigure {...ofOne} />}</FigureSlot>
    </div>
  );
}
