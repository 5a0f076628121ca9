import type { LogImport } from '../../lib/plan/log-text/import-log.ts';
import type { DateOrder } from '../../lib/plan/log-text/read-date.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { importView } from '../../lib/views/batch-log/import-view.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { DataTableView } from '../ui/data-table-view.tsx';
import styles from './import-dialog.module.css';

interface Props {
  readonly plan: Plan;
  readonly found: LogImport;
  readonly onOrder: (order: DateOrder) => void;
}

const ORDERS = [
  { value: 'month', label: 'month first' },
  { value: 'day', label: 'day first' },
] as const;

/** What will be taken, what stays out and why, and what was taken for granted. */
export function ImportPreview({ plan, found, onOrder }: Props) {
  const view = importView(found, plan);
  return (
    <div className={styles.preview}>
      <p className={styles.summary} aria-live="polite" data-testid="import-summary">
        {view.summary}
      </p>
      {found.twoWayDate === null ? null : (
        <div className={styles.order}>
          <span>Dates such as {found.twoWayDate} can be read two ways. Here they are</span>
          <ChoiceBar label="Order of day and month" options={ORDERS} value={found.dateOrder} onChange={onOrder} />
        </div>
      )}
      {view.leftOut.length === 0 ? null : (
        <section aria-label="Left out">
          <h3>Left out</h3>
          <ul className={styles.faults}>
            {view.leftOut.map(({ line, faults }) => (
              <li key={line}>
                <strong>Line {line}</strong>
                {faults.map((fault) => (
                  <span key={fault}>{fault}</span>
                ))}
              </li>
            ))}
          </ul>
        </section>
      )}
      {view.known === '' ? null : <p>{view.known}</p>}
      {view.notes.length === 0 ? null : (
        <ul className={styles.notes}>
          {view.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {view.tables.map((table) => (
        <DataTableView key={table.caption} table={table} />
      ))}
    </div>
  );
}
