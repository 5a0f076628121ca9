import { useEffect, useState } from 'react';
import { startOffline, type TakeOver } from '../../lib/io/offline.ts';
import { whenIdle } from '../../lib/io/when-idle.ts';
import { usePlanner } from '../state/use-planner.ts';
import styles from './newer-version.module.css';

/** Says that a newer version waits, and takes it up when asked. It never comes by itself while the page is in use. */
export function NewerVersion() {
  const [waiting, setWaiting] = useState<{ readonly take: TakeOver } | null>(null);
  const keeping = usePlanner((state) => state.keeping);
  useEffect(() => whenIdle(() => void startOffline((take) => setWaiting({ take }))), []);
  if (!waiting) return null;
  return (
    <p className={styles.line}>
      <span>A newer version of Rimeplan is here. It is taken up when you have closed all its tabs, or now:</span>
      <button type="button" disabled={keeping !== 'kept'} onClick={waiting.take}>
        Open it again with the newer version
      </button>
      {keeping === 'loose' ? <span>Save the plan as a file first; this browser does not keep it.</span> : null}
    </p>
  );
}
