import { useId } from 'react';
import type { TextFault } from '../../lib/views/mix-text.ts';
import type { CountTexts } from '../../lib/views/search/search-form.ts';
import styles from './search-panel.module.css';

interface Props {
  readonly label: string;
  readonly counts: CountTexts;
  readonly fault: TextFault | undefined;
  readonly onChange: (counts: CountTexts) => void;
}

/** From how many to how many. */
export function CountRange({ label, counts, fault, onChange }: Props) {
  const id = useId();
  const entry = (key: keyof CountTexts, words: string) => (
    <input
      className={styles.count}
      value={counts[key]}
      inputMode="numeric"
      autoComplete="off"
      aria-label={`${label}, ${words}`}
      aria-invalid={fault ? true : undefined}
      aria-describedby={`${id}-fault`}
      onChange={(event) => onChange({ ...counts, [key]: event.target.value })}
    />
  );
  return (
    <div className={styles.range}>
      <span className={styles.rangeLabel}>{label}</span>
      <span className={styles.rangeEntry}>
        {entry('least', 'at least')} to {entry('most', 'at most')}
      </span>
      <span id={`${id}-fault`} className={styles.fault}>
        {fault ? `${fault.problem} ${fault.remedy}` : ''}
      </span>
    </div>
  );
}
