import { type ReactNode, useId, useRef } from 'react';
import type { DataSeries } from '../../lib/views/data-series.ts';
import type { DataTable } from '../../lib/views/data-table.ts';
import { figureFileName } from '../../lib/views/figure-file-name.ts';
import { DataTableView } from '../ui/data-table-view.tsx';
import styles from './figure-frame.module.css';
import { SaveButtons } from './save-buttons.tsx';

interface Props {
  /** Short name of the figure, such as "Payback". */
  readonly name: string;
  /** Name of the scenario it speaks of, for saved files; empty when it speaks of all. */
  readonly about?: string;
  readonly finding: string;
  readonly summary: string;
  readonly table: DataTable;
  /** Unrounded numbers behind the chart; the table's when not given. */
  readonly series?: DataSeries;
  /** How the table is drawn, where it is more than plain rows. */
  readonly tableView?: ReactNode;
  /** The table stands open, because it says more than the chart. */
  readonly isTableOpen?: boolean;
  /** Shown greyed because the figures belong to an earlier state of the plan. */
  readonly stale: boolean;
  /** Legend above the chart. */
  readonly tools?: ReactNode;
  /** Controls beside the name. */
  readonly corner?: ReactNode;
  readonly children: ReactNode;
}

/** A chart with the finding as its title, the finding's words under it, its figures as a table, and ways to save it. */
export function FigureFrame(props: Props) {
  const { name, about = '', finding, summary, table, series = table, stale, tools, corner, children } = props;
  const { isTableOpen = false, tableView } = props;
  const titleId = useId();
  const figure = useRef<HTMLElement>(null);
  return (
    <figure ref={figure} className={styles.figure} aria-labelledby={titleId} data-figure={name} data-stale={stale}>
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
      <div className={styles.chart} data-chart>
        {children}
      </div>
      <p className={styles.summary}>{summary}</p>
      <div className={styles.bottom}>
        <details className={styles.details} open={isTableOpen}>
          <summary>The figures as a table</summary>
          {tableView ?? <DataTableView table={table} />}
        </details>
        <SaveButtons
          figure={figure}
          name={name}
          title={finding}
          fileName={figureFileName(name, about)}
          series={series}
        />
      </div>
    </figure>
  );
}
