import type { RowState, ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { seriesNumber } from '../../lib/views/scenario-view.ts';
import styles from './sheet.module.css';

const STATE_WORDS: Readonly<Record<RowState, string>> = {
  fresh: '',
  working: 'being worked out',
  stopped: 'stopped before it was worked out',
  held: 'held up: see what is marked',
};

/** The scenario's name with the colour its lines have in the charts, and signs for what is up with the row. */
export function NameCell({ row }: { readonly row: ScenarioRow }) {
  const warnings = row.messages.filter((message) => message.severity === 'warning');
  return (
    <span className={styles.name}>
      <span className={styles.swatch} style={{ background: `var(--series-${seriesNumber(row.place)})` }} />
      <span className={styles.nameText}>{row.entries.name?.text}</span>
      {row.isToday ? <span className={styles.todayTag}>as it is</span> : null}
      {row.state === 'working' ? <span className={styles.working} title={STATE_WORDS.working} /> : null}
      {row.state === 'held' ? <Mark kind="bad" words={STATE_WORDS.held} /> : null}
      {row.state !== 'held' && warnings.length > 0 ? (
        <Mark kind="warn" words={warnings.map((warning) => warning.problem).join(' ')} />
      ) : null}
    </span>
  );
}

function Mark({ kind, words }: { readonly kind: 'bad' | 'warn'; readonly words: string }) {
  return (
    <span className={kind === 'bad' ? styles.badMark : styles.warnMark} title={words}>
      <span aria-hidden="true">!</span>
      <span className="visually-hidden">{words}</span>
    </span>
  );
}
