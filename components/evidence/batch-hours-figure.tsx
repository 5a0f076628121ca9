import { memo, useState } from 'react';
import { batchHoursView, type HoursBy } from '../../lib/views/batch-hours-view.ts';
import { formatFixed } from '../../lib/views/format-number.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { HOUR_COLOURS } from '../charts/part-colours.ts';
import { StackedBarsChart } from '../charts/stacked-bars-chart.tsx';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { FigureFrame } from './figure-frame.tsx';

interface Props {
  readonly views: readonly ScenarioView[];
  readonly currentId: string;
  readonly isStale: boolean;
}

const WAYS = [
  { value: 'phase', label: 'By phase' },
  { value: 'limit', label: 'By what holds drying back' },
] as const;

/** Where a batch's hours go, by phase or by what holds the drying back. */
export const BatchHoursFigure = memo(function BatchHoursFigure({ views, currentId, isStale }: Props) {
  const [by, setBy] = useState<HoursBy>('phase');
  const view = batchHoursView(views, currentId, by);
  const parts = view.parts.map((part) => ({ ...part, colour: HOUR_COLOURS[part.key] ?? 'var(--ink-soft)' }));
  return (
    <FigureFrame
      name="Where a batch’s hours go"
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={<ChartLegend items={parts.map((part) => ({ ...part, mark: 'block' }))} />}
      corner={<ChoiceBar label="How the hours are told apart" options={WAYS} value={by} onChange={setBy} />}
    >
      <StackedBarsChart
        rows={view.rows.map(({ name, total, hours }) => ({ name, total, parts: hours }))}
        parts={parts}
        ticks={view.ticks}
        axis="hours of an average batch"
        axisText={(value) => formatFixed(value, 0)}
        figure={(value) => `${formatFixed(value, 1)} h`}
        title={view.finding}
        description="Hours of an average batch, stacked, scenario by scenario."
      />
    </FigureFrame>
  );
});
