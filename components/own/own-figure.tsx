import { useId } from 'react';
import type { TextFault } from '../../lib/views/mix-text.ts';
import styles from './own-plan-dialog.module.css';

interface Props {
  readonly label: string;
  readonly unit: string;
  readonly value: string;
  readonly fault: TextFault | undefined;
  readonly onChange: (text: string) => void;
}

/** A figure that is asked for, with its unit and what is wrong with it. */
export function OwnFigure({ label, unit, value, fault, onChange }: Props) {
  const id = useId();
  return (
    <div className={styles.figure}>
      <label htmlFor={id}>{label}</label>
      <span className={styles.entry}>
        <input
          id={id}
          value={value}
          autoComplete="off"
          aria-invalid={fault ? true : undefined}
          aria-describedby={`${id}-unit ${id}-fault`}
          onChange={(event) => onChange(event.target.value)}
        />
        <span id={`${id}-unit`}>{unit}</span>
      </span>
      <span id={`${id}-fault`} className={styles.fault}>
        {fault ? `${fault.problem} ${fault.remedy}` : ''}
      </span>
    </div>
  );
}
