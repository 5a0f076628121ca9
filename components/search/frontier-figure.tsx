import { memo } from 'react';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import type { FrontierView } from '../../lib/views/search/frontier-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { FrontierChart } from '../charts/frontier-chart.tsx';
import { FigureFrame } from '../evidence/figure-frame.tsx';

interface Props {
  readonly view: FrontierView;
  readonly shown: ShownAs;
  readonly isStale: boolean;
}

const LEGEND = [
  { key: 'line', label: 'nothing is both cheaper and better', colour: 'var(--series-1)', mark: 'line' },
  { key: 'others', label: 'other ways within your limits', colour: 'var(--ink-faint)', mark: 'block' },
] as const;

/** Money needed against the cash it brings. */
export const FrontierFigure = memo(function FrontierFigure({ view, shown, isStale }: Props) {
  return (
    <FigureFrame
      name="Options"
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={<ChartLegend items={LEGEND} />}
    >
      <FrontierChart
        view={view}
        shown={shown}
        title={view.finding}
        description="Money needed to get going against yearly cash beyond today’s, one dot for each way to set up the shop."
      />
    </FigureFrame>
  );
});
