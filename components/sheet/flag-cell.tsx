import type { FlagTone } from '../../lib/views/bottleneck-flag.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import styles from './sheet.module.css';

/** A shape for each tone, so that the flag is told without colour: a pinched pipe, a bar, a level line. */
const SHAPES: Readonly<Record<FlagTone, string>> = {
  jam: 'M1 2 8 8 1 14h14L8 8l7-6z',
  limit: 'M2 13V3l12 5z',
  balanced: 'M2 6.500h12v3H2z',
};

/** What holds the scenario back, with the figure behind it. */
export function FlagCell({ row }: { readonly row: ScenarioRow }) {
  if (!row.flag) return <span className={styles.pending}>{row.state === 'working' ? 'looking …' : ''}</span>;
  const { tone, title, figure } = row.flag;
  return (
    <span className={styles.flag} data-tone={tone}>
      <svg width={14} height={14} viewBox="0 0 16 16" aria-hidden="true">
        <path d={SHAPES[tone]} fill="currentColor" />
      </svg>
      <span className={styles.flagWords}>
        <span className={styles.flagTitle}>{title}</span>
        <span className={styles.flagFigure}>{figure}</span>
      </span>
    </span>
  );
}
