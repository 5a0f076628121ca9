import { memo, useMemo } from 'react';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { PlantReport } from '../../lib/plant/report-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { weekPicture } from '../../lib/views/week-picture.ts';
import { weekView } from '../../lib/views/week-view.ts';
import { WeekChart, WeekLegend } from '../charts/week-chart.tsx';
import { useElementWidth } from '../ui/use-element-width.ts';
import { FigureFrame } from './figure-frame.tsx';

interface Props {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly plant: PlantReport;
  readonly shown: ShownAs;
  readonly isStale: boolean;
}

/** A typical week: what every chamber, pump and pair of hands does from Monday to Sunday. */
export const WeekFigure = memo(function WeekFigure({ plan, scenario, plant, shown, isStale }: Props) {
  const [box, width] = useElementWidth<HTMLDivElement>();
  const view = useMemo(() => weekView(plan, scenario, plant, shown), [plan, scenario, plant, shown]);
  const picture = useMemo(() => (width === 0 ? null : weekPicture({ ...view.picture, width })), [view, width]);
  return (
    <FigureFrame
      name="A typical week"
      about={scenario.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={<WeekLegend kinds={view.legend.map((entry) => entry.kind)} />}
    >
      <div ref={box}>
        {picture ? <WeekChart picture={picture} title={view.finding} description={view.summary} /> : null}
      </div>
    </FigureFrame>
  );
});
