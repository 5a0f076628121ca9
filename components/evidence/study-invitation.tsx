import type { ReactNode } from 'react';
import styles from './figure-frame.module.css';

interface Props {
  readonly name: string;
  /** What the work is and how long it may take. */
  readonly words: string;
  readonly bar: ReactNode;
}

/** Stands where the figure of a long study will be, with the button that begins it. */
export function StudyInvitation({ name, words, bar }: Props) {
  return (
    <div className={styles.figure} data-figure={name} data-pending="true">
      <p className={styles.name}>{name}</p>
      <p className={styles.summary}>{words}</p>
      {bar}
    </div>
  );
}
