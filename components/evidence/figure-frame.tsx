import { type ReactNode, useId } from 'react';
import type { DataTable } from '../../lib/views/data-table.ts';
import { DataTableView } from '../ui/data-table-view.tsx';
import styles from './figure-frame.module.css';

interface Props {
  /** Short name of the figure, such as "Payback". */
  readonly name: string;
  readonly finding: string;
  readonly summary: string;
  readonly table: DataTable;
  /** Shown greyed because the figures belong to an earlier state of the plan. */
  readonly stale: boolean;
  readonly wide?: boolean;
  /** Legend above the chart. */
  readonly tools?: ReactNode;
  /** Controls beside the name. */
  readonly corner?: ReactNode;
  readonly children: ReactNode;
}

/** A chart with the finding as its title, the finding's words under it, and its figures as a table. */
export function FigureFrame({ name, finding, summary, table, stale, wide = false, tools, corner, children }: Props) {
  const titleId = useId();
  return (
    <figure
      className={wide ? styles.wide : styles.figure}
      aria-labelledby={titleId}
      data-figure={name}
      data-stale={stale}
    >
      <figcaption className={styles.caption}>
        <div className={styles.top}>
          <p className={styles.name}>{name}</p>
          {corner}
        </div>
        <h3 id={titleId} className={styles.finding}>
          {finding}
        </h3>
      </figcaption>
      {tools}
      <div className={styles.chart}>{children}</div>
      <p className={styles.summary}>{summary}</p>
      <details className={styles.details}>
        <summary>The figures as a table</summary>
        <DataTableView table={table} />
      </details>
    </figure>
  );
}
