import { memo, useMemo } from 'react';
import type { Calibration } from '../../lib/insight/calibration/calibration.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { fittedRows } from '../../lib/views/batch-log/fitted-rows.ts';
import { shownAs } from '../../lib/views/entry-columns.ts';
import styles from './fitted-table.module.css';

interface Props {
  readonly plan: Plan;
  readonly calibration: Calibration;
  readonly isStale: boolean;
}

/** Every value the fit has looked at, before and after, and how well the log tells it. */
export const FittedTable = memo(function FittedTable({ plan, calibration, isStale }: Props) {
  const rows = useMemo(() => fittedRows(plan, shownAs(plan), calibration), [plan, calibration]);
  if (rows.length === 0) return null;
  return (
    <table className={styles.table} data-stale={isStale} data-testid="fitted-values">
      <caption>Values before and after the fit; ranges hold the truth 19 times in 20</caption>
      <thead>
        <tr>
          <th scope="col">Value</th>
          <th scope="col" className={styles.figure}>
            In the plan
          </th>
          <th scope="col" className={styles.figure}>
            Fitted
          </th>
          <th scope="col">How well the log tells it</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key} data-value={row.key} data-used={row.isUsed}>
            <th scope="row">
              {row.label} <span className={styles.unit}>{row.unit}</span>
              <span className={styles.owner}>{row.owner}</span>
            </th>
            <td className={styles.figure} data-head="In the plan">
              {row.before}
              <span className={styles.range}>{row.believed}</span>
            </td>
            <td className={styles.figure} data-head="Fitted">
              <span className={styles.after}>{row.after}</span>
              <span className={styles.range}>{row.range}</span>
            </td>
            <td className={styles.verdict}>
              {row.verdict} <span className={styles.advice}>{row.advice}</span>
              <span className={styles.told}>{row.toldBy}</span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
});
