import type { DataTable } from '../../lib/views/data-table.ts';
import styles from './data-table-view.module.css';

/** A small table of figures with its caption; it scrolls sideways on a narrow screen. */
export function DataTableView({ table }: { readonly table: DataTable }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard
    <section className={styles.scroller} tabIndex={0} aria-label={table.caption}>
      <table className={styles.table}>
        <caption>{table.caption}</caption>
        <thead>
          <tr>
            {table.head.map((text, index) => (
              <th key={text || `column ${index}`} scope="col">
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <tr key={row[0]}>
              <th scope="row">{row[0]}</th>
              {row.slice(1).map((text, index) => (
                <td key={table.head[index + 1]}>{text}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
