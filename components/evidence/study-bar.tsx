import type { StudyKind } from '../../lib/io/studies.ts';
import type { StudyState } from '../../lib/io/study-desk.ts';
import { formatPercent } from '../../lib/views/format-number.ts';
import { getStudyDesk } from '../state/study-desk.ts';
import styles from './study-bar.module.css';

interface Props {
  readonly kind: StudyKind;
  readonly state: StudyState;
  /** Key of the study as the plan stands. */
  readonly wantedKey: string;
  /** What the button says before anything has been worked out. */
  readonly label: string;
  readonly onStart: () => void;
}

/** Begins long work, shows how far it is, and stops it; says when what is shown is of an earlier state. */
export function StudyBar({ kind, state, wantedKey, label, onStart }: Props) {
  const { status, progress, answer } = state;
  if (status === 'waiting' || status === 'running') {
    return (
      <div className={styles.bar}>
        <progress max={1} value={status === 'waiting' ? undefined : progress} aria-label={label} />
        <span>{status === 'waiting' ? 'waiting for its turn' : formatPercent(progress)}</span>
        <button type="button" onClick={() => getStudyDesk().cancel(kind)}>
          Stop
        </button>
      </div>
    );
  }
  const isOld = answer !== null && answer.key !== wantedKey;
  if (answer && !isOld && status !== 'failed') return null;
  return (
    <div className={styles.bar}>
      <button type="button" onClick={onStart}>
        {answer ? 'Work it out again' : label}
      </button>
      {status === 'failed' ? <span className={styles.bad}>It broke off. Try again, or change an entry.</span> : null}
      {isOld ? <span>The plan or the scenario has changed since.</span> : null}
    </div>
  );
}
