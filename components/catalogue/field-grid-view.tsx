import type { ReactNode } from 'react';
import { type CellPlace, type CellRange, isSamePlace, rangeHolds } from '../../lib/views/cell-range.ts';
import { type FieldGrid, type GridLine, rowGroups } from '../../lib/views/fields/field-grid.ts';
import { FieldCellView } from './field-cell-view.tsx';
import styles from './field-grid.module.css';
import type { FieldGridWork } from './use-field-grid.ts';

interface Props {
  readonly grid: FieldGrid;
  readonly work: FieldGridWork;
  /** Id of the heading that names it. */
  readonly titleId: string;
  /** What the grid has only one column of: its rows then say what they mean. */
  readonly isSingle: boolean;
}

function Head({ line }: { readonly line: GridLine }) {
  return (
    <>
      <span className={styles.label}>{line.label}</span>
      {line.unit === '' ? null : <span className={styles.unit}> {line.unit}</span>}
    </>
  );
}

function isOpenAt(work: FieldGridWork, at: CellPlace): string | null | undefined {
  return work.open && isSamePlace(work.open, at) ? work.open.text : undefined;
}

function headOf(range: CellRange | null): CellPlace {
  return range?.head ?? { row: 0, column: 0 };
}

function Row({ grid, work, row, isSingle }: Omit<Props, 'titleId'> & { readonly row: number }) {
  const line = grid.rows[row];
  return (
    <tr>
      <th scope="row" className={styles.rowHead}>
        {line ? <Head line={line} /> : null}
      </th>
      {grid.cells[row]?.map((cell, column) => (
        <FieldCellView
          key={cell.place}
          cell={cell}
          row={row}
          column={column}
          isSelected={work.range !== null && rangeHolds(work.range, { row, column })}
          isHead={isSamePlace(headOf(work.range), { row, column })}
          open={isOpenAt(work, { row, column })}
          hands={work.worker.hands}
        />
      ))}
      {isSingle ? <td className={styles.meaning}>{line?.meaning}</td> : null}
    </tr>
  );
}

function GroupTitle({ title, columns }: { readonly title: string; readonly columns: number }): ReactNode {
  if (title === '') return null;
  return (
    <tr>
      <th scope="rowgroup" colSpan={columns} className={styles.group}>
        <span>{title}</span>
      </th>
    </tr>
  );
}

/** Fields of the plan as a table that is worked like a spreadsheet. */
export function FieldGridView({ grid, work, titleId, isSingle }: Props) {
  const { worker, table } = work;
  const columns = grid.columns.length + (isSingle ? 2 : 1);
  return (
    <div className={styles.scroller} data-single={isSingle}>
      <table
        ref={table}
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: worked cell by cell, as a grid is
        role="grid"
        className={styles.grid}
        aria-labelledby={titleId}
        onKeyDown={worker.onKeyDown}
        onFocus={worker.onFocus}
        onCopy={worker.onCopy}
        onCut={worker.onCut}
        onPaste={worker.onPaste}
      >
        <thead hidden={isSingle}>
          <tr>
            <td className={styles.corner} />
            {grid.columns.map((line) => (
              <th key={line.key} scope="col" className={styles.columnHead}>
                <Head line={line} />
              </th>
            ))}
          </tr>
        </thead>
        {rowGroups(grid.rows).map((group) => (
          <tbody key={group.rows[0]}>
            <GroupTitle title={group.title} columns={columns} />
            {group.rows.map((row) => (
              <Row key={grid.rows[row]?.key} grid={grid} work={work} row={row} isSingle={isSingle} />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}
