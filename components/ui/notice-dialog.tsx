import { type ReactNode, useEffect, useId, useRef } from 'react';
import styles from './notice-dialog.module.css';

interface Props {
  readonly title: string;
  readonly children: ReactNode;
  readonly onClose: () => void;
  /** Buttons beside the one that closes. */
  readonly actions?: ReactNode;
  readonly closeLabel?: string;
}

/** A window over the page that must be answered or closed; Escape closes it. */
export function NoticeDialog({ title, children, onClose, actions, closeLabel = 'Close' }: Props) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const dialog = ref.current;
    dialog?.showModal();
    return () => dialog?.close();
  }, []);
  return (
    <dialog ref={ref} className={styles.dialog} aria-labelledby={titleId} onCancel={onClose}>
      <h2 id={titleId}>{title}</h2>
      <div className={styles.body}>{children}</div>
      <div className={styles.actions}>
        {actions}
        <button type="button" onClick={onClose}>
          {closeLabel}
        </button>
      </div>
    </dialog>
  );
}
