import type { CustomHeaderProps } from 'ag-grid-react';
import { seriesNumber } from '../../lib/views/scenario-view.ts';
import styles from './sheet.module.css';

interface Props extends CustomHeaderProps {
  readonly place: number;
  readonly isToday: boolean;
}

/** The head of a scenario's column: its name with the colour of its lines in the charts. */
export function SideHead({ displayName, place, isToday }: Props) {
  return (
    <span className={styles.head}>
      <span className={styles.sideSwatch} style={{ background: `var(--series-${seriesNumber(place)})` }} />
      <span>{displayName}</span>
      {isToday ? <span className={styles.headUnit}>as it is</span> : null}
    </span>
  );
}
