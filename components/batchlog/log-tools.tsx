import { offerBlob } from '../../lib/io/offer-blob.ts';
import { exportLog } from '../../lib/plan/log-text/export-log.ts';
import type { LogEntry, Plan } from '../../lib/plan/plan-types.ts';
import { SignButton } from '../ui/sign-button.tsx';
import styles from './batch-log.module.css';

interface Props {
  readonly plan: Plan;
  readonly onNew: (kind: LogEntry['kind']) => void;
  readonly onImport: () => void;
}

/** What can be done with the log as a whole. */
export function LogTools({ plan, onNew, onImport }: Props) {
  const save = () => offerBlob('batch-log.csv', new Blob(['\uFEFF', exportLog(plan)], { type: 'text/csv' }));
  return (
    <div className={styles.tools}>
      <button type="button" className={styles.main} onClick={() => onNew('batch')}>
        Log a batch
      </button>
      <button type="button" onClick={() => onNew('pressureRise')}>
        Log a pressure-rise test
      </button>
      <SignButton sign="open" label="Bring in a table" wordy onPress={onImport} />
      <SignButton sign="save" label="Save as CSV" wordy disabled={plan.batchLog.length === 0} onPress={save} />
    </div>
  );
}
