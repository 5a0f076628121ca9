import { memo } from 'react';
import type { KneeCurve } from '../../lib/insight/insight-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { kneeView } from '../../lib/views/knee-view.ts';
import { KneeChart } from '../charts/knee-chart.tsx';
import { FigureFrame } from './figure-frame.tsx';
import { FigurePending } from './figure-pending.tsx';
import styles from './legend.module.css';

interface Props {
  readonly curve: KneeCurve | null;
  readonly isStale: boolean;
  readonly shown: ShownAs;
}

const NAME = 'Chambers against output';

/** Output as chambers are added, on one pump and on a pump each. */
export const KneeFigure = memo(function KneeFigure({ curve, isStale, shown }: Props) {
  if (!curve) return <FigurePending name={NAME} words="Trying this set-up with one chamber, two, three …" />;
  const view = kneeView(curve, shown);
  const tools = (
    <ul className={styles.legend}>
      <li>
        <span className={styles.swatch} style={{ background: 'var(--series-1)' }} />
        one shared pump
      </li>
      <li>
        <span className={styles.swatch} data-dashed />a pump each
      </li>
      <li className={styles.aside}>{view.unit}, by number of chambers</li>
    </ul>
  );
  return (
    <FigureFrame
      name={NAME}
      finding={view.finding}
      summary={view.summary}
      table={view.table}
      stale={isStale}
      tools={tools}
    >
      <KneeChart view={view} title={view.finding} description={`Dried product, ${view.unit}, by number of chambers.`} />
    </FigureFrame>
  );
});
