import type { Progress } from '../../lib/io/engine-desk.ts';
import styles from './progress-line.module.css';

/** How much has been worked out; it holds its place when there is nothing left to do. */
export function ProgressLine({ progress }: { readonly progress: Progress }) {
  const isDone = progress.done >= progress.all;
  return (
    <div className={styles.line} data-done={isDone} data-testid="progress">
      <progress max={progress.all || 1} value={progress.done} aria-label="Working out the figures" hidden={isDone} />
      <span>{isDone ? 'All worked out' : `${progress.done} of ${progress.all} worked out`}</span>
    </div>
  );
}
