import { memo, useMemo } from 'react';
import type { Calibration } from '../../lib/insight/calibration/calibration.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { comparedView } from '../../lib/views/batch-log/compared-view.ts';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { ComparedChart } from '../charts/compared-chart.tsx';
import { seriesColour } from '../charts/series-colour.ts';
import { FigureFrame } from '../evidence/figure-frame.tsx';

interface Props {
  readonly plan: Plan;
  readonly calibration: Calibration;
  readonly isStale: boolean;
}

/** Logged hours against those the model expects. */
export const ComparedFigure = memo(function ComparedFigure({ plan, calibration, isStale }: Props) {
  const view = useMemo(() => comparedView(plan, calibration), [plan, calibration]);
  const legend = view.groups.map(({ product, name }, place) => ({
    key: product,
    label: name,
    colour: seriesColour(place),
    mark: 'block' as const,
  }));
  return (
    <FigureFrame
      name="Logged and expected hours"
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      stale={isStale}
      tools={<ChartLegend items={legend} />}
    >
      <ComparedChart view={view} title={view.finding} description="Expected hours over logged hours, batch by batch." />
    </FigureFrame>
  );
});
