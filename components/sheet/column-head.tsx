import type { CustomHeaderProps } from 'ag-grid-react';
import styles from './sheet.module.css';

interface Props extends CustomHeaderProps {
  readonly unit: string;
}

/** The head of a column: its name, and under it the unit of its figures. */
export function ColumnHead({ displayName, unit }: Props) {
  return (
    <span className={styles.head}>
      <span>{displayName}</span>
      {unit === '' ? null : <span className={styles.headUnit}>{unit}</span>}
    </span>
  );
}
