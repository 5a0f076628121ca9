import { memo } from 'react';
import type { KneeCurve } from '../../lib/insight/insight-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { kneeView } from '../../lib/views/knee-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { KneeChart } from '../charts/knee-chart.tsx';
import { FigureFrame } from './figure-frame.tsx';
import { FigurePending } from './figure-pending.tsx';

interface Props {
  readonly curve: KneeCurve | null;
  readonly about: string;
  readonly isStale: boolean;
  readonly shown: ShownAs;
}

const NAME = 'Chambers against output';

const LEGEND = [
  { key: 'shared', label: 'one shared pump', colour: 'var(--series-1)', mark: 'line' },
  { key: 'own', label: 'a pump each', colour: 'var(--series-2)', mark: 'dashed' },
] as const;

/** Output as chambers are added, on one pump and on a pump each. */
export const KneeFigure = memo(function KneeFigure({ curve, about, isStale, shown }: Props) {
  if (!curve) return <FigurePending name={NAME} words="Trying this set-up with one chamber, two, three …" />;
  const view = kneeView(curve, shown);
  return (
    <FigureFrame
      name={NAME}
      about={about}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={<ChartLegend items={LEGEND} />}
    >
      <KneeChart view={view} title={view.finding} description={`Dried product, ${view.unit}, by number of chambers.`} />
    </FigureFrame>
  );
});
