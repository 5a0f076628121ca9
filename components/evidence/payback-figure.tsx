import { memo, useState } from 'react';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { paybackMonthNumber, paybackView } from '../../lib/views/payback-view.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { PaybackChart } from '../charts/payback-chart.tsx';
import { seriesColour } from '../charts/series-colour.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { FigureFrame } from './figure-frame.tsx';

interface Props {
  readonly views: readonly ScenarioView[];
  readonly currentId: string;
  readonly selectedIds: readonly string[];
  readonly shown: ShownAs;
  readonly isStale: boolean;
}

const SCOPES = [
  { value: 'all', label: 'All rows' },
  { value: 'selected', label: 'Selected rows' },
] as const;

/** Payback: cumulative cash against today. */
export const PaybackFigure = memo(function PaybackFigure({ views, currentId, selectedIds, shown, isStale }: Props) {
  const [scope, setScope] = useState<'all' | 'selected'>('all');
  const chosen = scope === 'all' ? views : views.filter((view) => selectedIds.includes(view.id));
  const view = paybackView(chosen, currentId, shown);
  const legend = view.lines.map((line) => ({
    key: line.scenarioId,
    label: line.name,
    colour: seriesColour(line.place),
    mark: 'line' as const,
    aside: line.paybackMonth === null ? 'no payback' : `month ${paybackMonthNumber(line.paybackMonth)}`,
    isCurrent: line.scenarioId === currentId,
  }));
  return (
    <FigureFrame
      name="Payback"
      about={views.find((candidate) => candidate.id === currentId)?.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={<ChartLegend items={legend} />}
      corner={<ChoiceBar label="Which scenarios are drawn" options={SCOPES} value={scope} onChange={setScope} />}
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
