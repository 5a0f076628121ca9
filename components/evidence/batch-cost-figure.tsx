import { memo } from 'react';
import { batchCostView, COST_PART_LABELS, COST_PARTS } from '../../lib/views/batch-cost-view.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { BatchCostChart } from '../charts/batch-cost-chart.tsx';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { COST_PART_COLOURS } from '../charts/cost-part-colours.ts';
import { FigureFrame } from './figure-frame.tsx';

interface Props {
  readonly views: readonly ScenarioView[];
  readonly currentId: string;
  readonly shown: ShownAs;
  readonly isStale: boolean;
}

const LEGEND = COST_PARTS.map((part) => ({
  key: part,
  label: COST_PART_LABELS[part],
  colour: COST_PART_COLOURS[part],
  mark: 'block' as const,
}));

/** What a batch costs, part by part and scenario by scenario. */
export const BatchCostFigure = memo(function BatchCostFigure({ views, currentId, shown, isStale }: Props) {
  const view = batchCostView(views, currentId, shown);
  return (
    <FigureFrame
      name="What a batch costs"
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={<ChartLegend items={LEGEND} />}
    >
      <BatchCostChart view={view} shown={shown} title={view.finding} description="Running cost per batch by part." />
    </FigureFrame>
  );
});
