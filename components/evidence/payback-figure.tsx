import { memo, useState } from 'react';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { type PaybackView, paybackMonthNumber, paybackView } from '../../lib/views/payback-view.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { ChartLegend, type LegendItem } from '../charts/chart-legend.tsx';
import { PaybackChart } from '../charts/payback-chart.tsx';
import { seriesColour } from '../charts/series-colour.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { FigureFrame } from './figure-frame.tsx';
import styles from './payback-figure.module.css';
import { SpreadStudyBar } from './spread-study-bar.tsx';
import { SPREAD_DRAWS, useSpreadStudy } from './use-spread-study.ts';

interface Props {
  readonly plan: Plan;
  readonly views: readonly ScenarioView[];
  readonly currentId: string;
  readonly selectedIds: readonly string[];
  readonly shown: ShownAs;
  readonly isStale: boolean;
}

type Scope = 'some' | 'all' | 'selected';

/** More lines than these are neither told apart nor drawn quickly: then all rows are drawn only when somebody asks for them. */
const MOST_LINES = 12;

const SCOPES = [
  { value: 'all', label: 'All rows' },
  { value: 'selected', label: 'Selected rows' },
] as const;

const SCOPES_OF_MANY = [{ value: 'some', label: `First ${MOST_LINES} and selected` }, ...SCOPES] as const;

function legendOf(view: PaybackView, currentId: string): LegendItem[] {
  const lines = view.lines.map((line) => ({
    key: line.scenarioId,
    label: line.name,
    colour: seriesColour(line.place),
    mark: 'line' as const,
    aside: line.paybackMonth === null ? 'no payback' : `month ${paybackMonthNumber(line.paybackMonth)}`,
    isCurrent: line.scenarioId === currentId,
  }));
  const place = view.lines.find((line) => line.scenarioId === currentId)?.place ?? 0;
  const band = { key: 'band', label: 'eight in ten draws', colour: seriesColour(place), mark: 'band' as const };
  return view.hasBand ? [...lines, band] : lines;
}

function viewsIn(
  scope: Scope,
  views: readonly ScenarioView[],
  selectedIds: readonly string[],
): readonly ScenarioView[] {
  if (scope === 'all') return views;
  const first = scope === 'some' ? MOST_LINES : 0;
  return views.filter((view, at) => at < first || selectedIds.includes(view.id));
}

/** Payback: cumulative cash against today, with the band in which it lies when the uncertain inputs take their chances. */
export const PaybackFigure = memo(function PaybackFigure(props: Props) {
  const { plan, views, currentId, selectedIds, shown, isStale } = props;
  const [wanted, setWanted] = useState<Scope | null>(null);
  const isMany = views.length > MOST_LINES;
  const scope = wanted && (isMany || wanted !== 'some') ? wanted : isMany ? 'some' : 'all';
  const { state, study } = useSpreadStudy(plan, currentId);
  const draws = state.answer?.key === study.key ? state.answer.value.summary.cash : null;
  const chosen = viewsIn(scope, views, selectedIds);
  const view = paybackView(chosen, currentId, shown, draws);
  const canSpread = view.lines.some((line) => line.scenarioId === currentId);
  return (
    <FigureFrame
      name="Payback"
      about={views.find((candidate) => candidate.id === currentId)?.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={
        <div className={styles.tools}>
          <ChartLegend items={legendOf(view, currentId)} />
          {canSpread ? (
            <SpreadStudyBar state={state} study={study} label={`Draw ${SPREAD_DRAWS} times for the band`} />
          ) : null}
        </div>
      }
      corner={
        <ChoiceBar
          label="Which scenarios are drawn"
          options={isMany ? SCOPES_OF_MANY : SCOPES}
          value={scope}
          onChange={setWanted}
        />
      }
    >
      <PaybackChart
        view={view}
        currentId={currentId}
        shown={shown}
        title={view.finding}
        description="Cumulative cash against today by month."
      />
    </FigureFrame>
  );
});
