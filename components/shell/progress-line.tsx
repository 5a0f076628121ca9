import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import styles from './progress-line.module.css';

/** How much has been worked out, with a button that stops the work or goes on with it; it holds its place when nothing is left. */
export function ProgressLine() {
  const progress = usePlanner((state) => state.desk.progress);
  const isStopped = usePlanner((state) => state.desk.isStopped);
  const { stopWork, goOnWorking } = getPlanner();
  const isDone = progress.done >= progress.all;
  const words = `${progress.done} of ${progress.all} worked out`;
  return (
    <div className={styles.line} data-done={isDone} data-testid="progress">
      <progress
        max={progress.all || 1}
        value={progress.done}
        aria-label="Working out the figures"
        hidden={isDone || isStopped}
      />
      <span>{isDone ? 'All worked out' : isStopped ? `Stopped: ${words}` : words}</span>
      {isDone ? null : (
        <button type="button" className={styles.stop} onClick={isStopped ? goOnWorking : stopWork}>
          {isStopped ? 'Go on' : 'Stop'}
        </button>
      )}
    </div>
  );
}
