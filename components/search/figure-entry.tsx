import { useId } from 'react';
import type { TextFault } from '../../lib/views/mix-text.ts';
import styles from './search-panel.module.css';

interface Props {
  readonly label: string;
  readonly unit?: string;
  /** Shown while it is empty, such as "no limit". */
  readonly hint?: string;
  readonly value: string;
  readonly fault: TextFault | undefined;
  readonly onChange: (text: string) => void;
}

/** A figure with its unit, and what is wrong with it. */
export function FigureEntry({ label, unit = '', hint, value, fault, onChange }: Props) {
  const id = useId();
  return (
    <div className={styles.figureEntry}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.entry}>
        <input
          id={id}
          value={value}
          placeholder={hint}
          autoComplete="off"
          aria-invalid={fault ? true : undefined}
          aria-describedby={`${id}-unit ${id}-fault`}
          onChange={(event) => onChange(event.target.value)}
        />
        <span id={`${id}-unit`} className={styles.aside}>
          {unit}
        </span>
      </span>
      <span id={`${id}-fault`} className={styles.fault}>
        {fault ? `${fault.problem} ${fault.remedy}` : ''}
      </span>
    </div>
  );
}
