import { type ReactNode, useId } from 'react';
import styles from './log-form.module.css';

interface FieldProps {
  readonly label: string;
  readonly unit?: string;
  readonly fault: string | undefined;
  readonly wide?: boolean;
  /** Draws the control; it must carry the attributes given. */
  readonly children: (attributes: {
    readonly id: string;
    readonly 'aria-invalid': boolean;
    readonly 'aria-describedby': string;
  }) => ReactNode;
}

/** One field of the form with its label, unit, and what is wrong with it. */
export function LogField({ label, unit = '', fault, wide = false, children }: FieldProps) {
  const id = useId();
  const faultId = `${id}-fault`;
  return (
    <div className={styles.field} data-wide={wide}>
      <label htmlFor={id}>
        {label}
        {unit === '' ? null : <span className={styles.unit}> {unit}</span>}
      </label>
      {children({ id, 'aria-invalid': fault !== undefined, 'aria-describedby': faultId })}
      <p id={faultId} className={styles.fault}>
        {fault}
      </p>
    </div>
  );
}
