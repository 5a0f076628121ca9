'use client';

import { memo, useMemo } from 'react';
import type { DeskSnapshot } from '../../lib/io/engine-desk.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { type ScenarioView, seriesNumber } from '../../lib/views/scenario-view.ts';
import { getPlanner } from '../state/planner.ts';
import { useKeptSame } from '../ui/use-kept-same.ts';
import { BatchCostFigure } from './batch-cost-figure.tsx';
import styles from './evidence-panel.module.css';
import { FigurePending } from './figure-pending.tsx';
import { KneeFigure } from './knee-figure.tsx';
import { PaybackFigure } from './payback-figure.tsx';
import { ReliefFigure } from './relief-figure.tsx';
import { WeekFigure } from './week-figure.tsx';

interface Props {
  readonly plan: Plan;
  readonly rows: readonly ScenarioRow[];
  readonly desk: DeskSnapshot;
  readonly currentId: string;
  readonly selectedIds: readonly string[];
}

function viewsOf(rows: readonly ScenarioRow[], desk: DeskSnapshot): readonly ScenarioView[] {
  return rows.flatMap(({ id, name, place }) => {
    const result = desk.computed.get(id)?.lastResult;
    return result ? [{ id, name, place, result }] : [];
  });
}

function isSameView(a: ScenarioView, b: ScenarioView): boolean {
  return a.id === b.id && a.name === b.name && a.place === b.place && a.result === b.result;
}

/** The evidence for the chosen scenario: how it pays, what it makes, how its week goes, what a batch costs, what jams. */
export const EvidencePanel = memo(function EvidencePanel({ plan, rows, desk, currentId, selectedIds }: Props) {
  const { currency, unitSystem: system } = plan.site;
  const shown = useMemo(() => ({ system, currency }), [system, currency]);
  const views = useKeptSame(
    useMemo(() => viewsOf(rows, desk), [rows, desk]),
    isSameView,
  );
  const row = rows.find((candidate) => candidate.id === currentId);
  const scenario = plan.scenarios.find((candidate) => candidate.id === currentId);
  const computed = desk.computed.get(currentId);
  const isStale = row?.state !== 'fresh';
  const isAnyStale = rows.some((candidate) => candidate.state !== 'fresh');
  const result = computed?.lastResult;
  return (
    <section className={styles.panel} aria-labelledby="evidence-title">
      <div className={styles.heading}>
        <h2 id="evidence-title">The evidence for</h2>
        <select
          className={styles.pick}
          aria-label="Scenario the evidence is for"
          value={currentId}
          style={{ borderLeftColor: `var(--series-${seriesNumber(row?.place ?? 0)})` }}
          onChange={(event) => getPlanner().lookAt(event.target.value)}
        >
          {rows.map((option) => (
            <option key={option.id} value={option.id}>
              {option.name}
            </option>
          ))}
        </select>
      </div>
      <div className={styles.figures}>
        {views.length === 0 ? (
          <FigurePending name="Payback" words="Working out the weeks of each scenario …" />
        ) : (
          <PaybackFigure
            views={views}
            currentId={currentId}
            selectedIds={selectedIds}
            shown={shown}
            isStale={isAnyStale}
          />
        )}
        <KneeFigure curve={desk.knee.curve} isStale={desk.knee.isStale} shown={shown} />
        {result && scenario ? (
          <WeekFigure plan={plan} scenario={scenario} plant={result.plant} shown={shown} isStale={isStale} />
        ) : (
          <FigurePending name="A typical week" words="Running the week …" wide />
        )}
        {views.length === 0 ? null : (
          <BatchCostFigure views={views} currentId={currentId} shown={shown} isStale={isAnyStale} />
        )}
        <ReliefFigure bottleneck={computed?.lastBottleneck ?? null} isStale={!row?.isFlagFresh} shown={shown} />
      </div>
    </section>
  );
});
