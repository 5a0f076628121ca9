'use client';

import { lazy, memo, Suspense, useMemo } from 'react';
import type { DeskSnapshot } from '../../lib/io/engine-desk.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { type ScenarioView, seriesNumber } from '../../lib/views/scenario-view.ts';
import { getPlanner } from '../state/planner.ts';
import { useIdle } from '../ui/use-idle.ts';
import { useKeptSame } from '../ui/use-kept-same.ts';
import { useSettled } from '../ui/use-settled.ts';
import styles from './evidence-panel.module.css';
import { FigureIndex } from './figure-index.tsx';

/** The figures and what draws them are fetched when the sheet stands. */
const Figures = lazy(async () => ({ default: (await import('./figures.tsx')).Figures }));

interface Evidence {
  readonly plan: Plan;
  readonly rows: readonly ScenarioRow[];
  readonly desk: DeskSnapshot;
  readonly currentId: string;
  readonly selectedIds: readonly string[];
}

const FOLLOWS = <p>The figures follow …</p>;

function viewsOf(rows: readonly ScenarioRow[], desk: DeskSnapshot): readonly ScenarioView[] {
  return rows.flatMap(({ id, name, place }) => {
    const result = desk.computed.get(id)?.lastResult;
    return result ? [{ id, name, place, result }] : [];
  });
}

function isSameView(a: ScenarioView, b: ScenarioView): boolean {
  return a.id === b.id && a.name === b.name && a.place === b.place && a.result === b.result;
}

/** The list by which another scenario can be chosen without the sheet. */
function ScenarioPick({ rows, currentId }: Pick<Evidence, 'rows' | 'currentId'>) {
  const place = rows.find((candidate) => candidate.id === currentId)?.place ?? 0;
  return (
    <select
      className={styles.pick}
      aria-label="Scenario the evidence is for"
      value={currentId}
      style={{ borderLeftColor: `var(--series-${seriesNumber(place)})` }}
      onChange={(event) => getPlanner().lookAt(event.target.value)}
    >
      {rows.map((option) => (
        <option key={option.id} value={option.id}>
          {option.name}
        </option>
      ))}
    </select>
  );
}

const AllFigures = memo(function AllFigures({ shown }: { readonly shown: Evidence }) {
  const { rows, desk } = shown;
  const views = useKeptSame(
    useMemo(() => viewsOf(rows, desk), [rows, desk]),
    isSameView,
  );
  return (
    <Suspense fallback={FOLLOWS}>
      <FigureIndex />
      <Figures {...shown} views={views} />
    </Suspense>
  );
});

/**
 * The evidence for the chosen scenario: how it pays, how its week goes, what jams, what the pump carries, how sure it is. The figures follow a
 * moment after the sheet, which never waits for them.
 */
export function EvidencePanel({ plan, rows, desk, currentId, selectedIds }: Evidence) {
  const shown = useSettled(
    useMemo(() => ({ plan, rows, desk, currentId, selectedIds }), [plan, rows, desk, currentId, selectedIds]),
  );
  const isIdle = useIdle();
  return (
    <section className={styles.panel} aria-labelledby="evidence-title">
      <div className={styles.heading}>
        <h2 id="evidence-title">The evidence for</h2>
        <ScenarioPick rows={rows} currentId={currentId} />
      </div>
      {isIdle ? <AllFigures shown={shown} /> : FOLLOWS}
    </section>
  );
}
