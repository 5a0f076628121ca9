import { memo } from 'react';
import type { Bottleneck } from '../../lib/insight/insight-types.ts';
import { reliefView } from '../../lib/views/bottleneck-flag.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { FigureFrame } from './figure-frame.tsx';
import { FigurePending } from './figure-pending.tsx';
import styles from './relief-figure.module.css';

interface Props {
  readonly bottleneck: Bottleneck | null;
  readonly isStale: boolean;
  readonly shown: ShownAs;
}

const NAME = 'What jams';

/** What a quarter more of each thing would bring, and how hard each works now. */
export const ReliefFigure = memo(function ReliefFigure({ bottleneck, isStale, shown }: Props) {
  if (!bottleneck) return <FigurePending name={NAME} words="Trying a quarter more of one thing after another …" />;
  const view = reliefView(bottleneck, shown);
  return (
    <FigureFrame name={NAME} finding={view.finding} summary={view.summary} table={view.table} stale={isStale}>
      <div className={styles.rows} aria-hidden="true">
        <span />
        <span className={styles.head}>in use</span>
        <span className={styles.head}>a quarter more brings, a week</span>
        {view.rows.map((row) => (
          <ReliefRowView key={row.resource} row={row} most={view.mostGain} />
        ))}
      </div>
    </FigureFrame>
  );
});

interface RowProps {
  readonly row: ReturnType<typeof reliefView>['rows'][number];
  readonly most: number;
}

function ReliefRowView({ row, most }: RowProps) {
  return (
    <>
      <span>{row.label}</span>
      <meter className={styles.use} min={0} max={1} value={row.utilisation ?? 0} />
      <span className={styles.value}>{row.utilisationText}</span>
      <meter className={styles.gain} min={0} max={most} value={row.gain ?? 0} />
      <span className={styles.value}>{row.gainText}</span>
    </>
  );
}
