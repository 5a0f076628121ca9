import { memo } from 'react';
import type { LogRow, LogTable } from '../../lib/views/batch-log/log-tables.ts';
import styles from './log-table-view.module.css';

interface Props {
  readonly title: string;
  readonly empty: string;
  readonly table: LogTable;
  readonly onEdit: (id: string) => void;
  readonly onForget: (id: string) => void;
}

interface RowProps {
  readonly row: LogRow;
  readonly onEdit: (id: string) => void;
  readonly onForget: (id: string) => void;
}

function EntryRow({ row, onEdit, onForget }: RowProps) {
  return (
    <tr data-entry={row.id}>
      <td className={styles.date}>{row.date}</td>
      <th scope="row">
        {row.what}
        {row.what === row.chamber ? null : <span className={styles.chamber}>{row.chamber}</span>}
      </th>
      {row.cells.map((cell) => (
        <td key={cell.column} className={styles.figure} data-head={cell.head}>
          {cell.text}
        </td>
      ))}
      <td className={styles.note}>{row.note}</td>
      <td className={styles.acts}>
        <button type="button" aria-label={`Change ${row.words}`} onClick={() => onEdit(row.id)}>
          Change
        </button>
        <button type="button" aria-label={`Delete ${row.words}`} onClick={() => onForget(row.id)}>
          Delete
        </button>
      </td>
    </tr>
  );
}

/** Logged entries, latest first; on a narrow screen each is a small card. */
export const LogTableView = memo(function LogTableView({ title, empty, table, onEdit, onForget }: Props) {
  const { heads, rows } = table;
  return (
    <section className={styles.section} aria-label={title}>
      <h2>
        {title} <span className={styles.count}>{rows.length}</span>
      </h2>
      {rows.length === 0 ? (
        <p className={styles.empty}>{empty}</p>
      ) : (
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Date</th>
              <th scope="col">{heads[0]?.column === 'wet' ? 'Product and chamber' : 'Chamber'}</th>
              {heads.map((head) => (
                <th key={head.column} scope="col" className={styles.figure}>
                  {head.words}
                </th>
              ))}
              <th scope="col">Note</th>
              <th scope="col">
                <span className="visually-hidden">Change or delete</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <EntryRow key={row.id} row={row} onEdit={onEdit} onForget={onForget} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
});
