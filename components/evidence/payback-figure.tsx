import { memo, useState } from 'react';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { paybackMonthNumber, paybackView } from '../../lib/views/payback-view.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { PaybackChart } from '../charts/payback-chart.tsx';
import { seriesColour } from '../charts/series-colour.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { FigureFrame } from './figure-frame.tsx';
import styles from './legend.module.css';

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
  const tools = (
    <ul className={styles.legend}>
      {view.lines.map((line) => (
        <li key={line.scenarioId} data-current={line.scenarioId === currentId}>
          <span className={styles.swatch} style={{ background: seriesColour(line.place) }} />
          {line.name}
          <span className={styles.aside}>
            {line.paybackMonth === null ? 'no payback' : `month ${paybackMonthNumber(line.paybackMonth)}`}
          </span>
        </li>
      ))}
    </ul>
  );
  return (
    <FigureFrame
      name="Payback"
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      stale={isStale}
      tools={tools}
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
