import { useState } from 'react';
import { KEY_HELP } from '../../lib/views/key-help.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import styles from './keys-button.module.css';

/** A button that shows what the keys do. */
export function KeysButton() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <button type="button" className={styles.button} onClick={() => setOpen(true)}>
        Keys
      </button>
      {isOpen ? (
        <NoticeDialog title="Keys on the sheet" onClose={() => setOpen(false)}>
          <dl className={styles.list}>
            {KEY_HELP.map(({ keys, does }) => (
              <div key={keys}>
                <dt>{keys}</dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </NoticeDialog>
      ) : null}
    </>
  );
}
