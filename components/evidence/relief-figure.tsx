import { memo } from 'react';
import type { Bottleneck } from '../../lib/insight/insight-types.ts';
import type { Plan, Scenario } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { type ReliefRow, reliefView } from '../../lib/views/relief-view.ts';
import { GainChart, UseChart } from '../charts/relief-chart.tsx';
import { FigureFrame } from './figure-frame.tsx';
import { FigurePending } from './figure-pending.tsx';
import styles from './relief-figure.module.css';

interface Props {
  readonly bottleneck: Bottleneck | null;
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly isStale: boolean;
  readonly shown: ShownAs;
}

const NAME = 'What jams';

function Mends({ rows }: { readonly rows: readonly ReliefRow[] }) {
  if (rows.length === 0) return null;
  return (
    <div className={styles.mends}>
      <h4>What would mend it</h4>
      <ul>
        {rows.map((row) => (
          <li key={row.resource}>
            <span className={styles.what}>{row.label}</span>
            <span>
              {row.mend}
              {row.mendCost === '' ? '' : `, ${row.mendCost}`}
            </span>
            <span className={styles.gain}>{row.gainText} a week</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** How hard each thing works, what a quarter more of it would bring, and what that takes. */
export const ReliefFigure = memo(function ReliefFigure({ bottleneck, plan, scenario, isStale, shown }: Props) {
  if (!bottleneck) return <FigurePending name={NAME} words="Trying a quarter more of one thing after another …" />;
  const view = reliefView(bottleneck, plan, scenario, shown);
  return (
    <FigureFrame
      name={NAME}
      about={scenario.name}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      series={view.series}
      stale={isStale}
      tools={<Mends rows={view.worthMending} />}
    >
      <div className={styles.pair}>
        <GainChart view={view} shown={shown} title={view.finding} />
        <UseChart view={view} title="How hard each works" />
      </div>
    </FigureFrame>
  );
});
