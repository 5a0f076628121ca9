import { memo } from 'react';
import { batchCostView, COST_PART_LABELS, COST_PARTS } from '../../lib/views/batch-cost-view.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { BatchCostChart } from '../charts/batch-cost-chart.tsx';
import { COST_PART_COLOURS } from '../charts/cost-part-colours.ts';
import { FigureFrame } from './figure-frame.tsx';
import styles from './legend.module.css';

interface Props {
  readonly views: readonly ScenarioView[];
  readonly currentId: string;
  readonly shown: ShownAs;
  readonly isStale: boolean;
}

/** What a batch costs, part by part and scenario by scenario. */
export const BatchCostFigure = memo(function BatchCostFigure({ views, currentId, shown, isStale }: Props) {
  const view = batchCostView(views, currentId, shown);
  const tools = (
    <ul className={styles.legend}>
      {COST_PARTS.map((part) => (
        <li key={part}>
          <span className={styles.swatch} style={{ background: COST_PART_COLOURS[part] }} />
          {COST_PART_LABELS[part]}
        </li>
      ))}
    </ul>
  );
  return (
    <FigureFrame
      name="What a batch costs"
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      stale={isStale}
      tools={tools}
    >
      <BatchCostChart view={view} shown={shown} title={view.finding} description="Running cost per batch by part." />
    </FigureFrame>
  );
});
