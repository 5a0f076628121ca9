import { memo, useMemo } from 'react';
import type { Calibration } from '../../lib/insight/calibration/calibration.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { comparedView } from '../../lib/views/batch-log/compared-view.ts';
import { ComparedChart } from '../charts/compared-chart.tsx';
import { seriesColour } from '../charts/series-colour.ts';
import { FigureFrame } from '../evidence/figure-frame.tsx';
import styles from '../evidence/legend.module.css';

interface Props {
  readonly plan: Plan;
  readonly calibration: Calibration;
  readonly isStale: boolean;
}

/** Logged hours against those the model expects. */
export const ComparedFigure = memo(function ComparedFigure({ plan, calibration, isStale }: Props) {
  const view = useMemo(() => comparedView(plan, calibration), [plan, calibration]);
  const tools = (
    <ul className={styles.legend}>
      {view.groups.map((group, place) => (
        <li key={group.product}>
          <span className={styles.swatch} style={{ background: seriesColour(place) }} />
          {group.name}
        </li>
      ))}
    </ul>
  );
  return (
    <FigureFrame
      name="Logged and expected hours"
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      stale={isStale}
      tools={tools}
    >
      <ComparedChart view={view} title={view.finding} description="Expected hours over logged hours, batch by batch." />
    </FigureFrame>
  );
});
