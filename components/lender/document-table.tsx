import type { DocumentRow, DocumentTable } from '../../lib/views/lender/document-types.ts';
import styles from './lender-paper.module.css';

function cellClass(column: number, { figuresFrom, wordsIn = [] }: DocumentTable): string | undefined {
  if (wordsIn.includes(column)) return styles.wordCell;
  return column >= figuresFrom ? styles.figureCell : undefined;
}

function widthClass(columns: number): string {
  if (columns > 8) return 'many';
  return columns <= 2 ? 'pair' : 'few';
}

function Row({ row, table }: { readonly row: DocumentRow; readonly table: DocumentTable }) {
  const [first = '', ...rest] = row.cells;
  if (row.kind === 'heading') {
    return (
      <tr className={styles.headingRow}>
        <th scope="colgroup" colSpan={table.head.length}>
          {first}
        </th>
      </tr>
    );
  }
  return (
    <tr data-kind={row.kind}>
      <th scope="row">{first}</th>
      {rest.map((text, k) => (
        <td key={table.head[k + 1]} className={cellClass(k + 1, table)}>
          {text}
        </td>
      ))}
    </tr>
  );
}

/** Rows beyond which a table may run over to the next page. */
const SHORT = 16;

function Columns({ head, widths }: DocumentTable) {
  if (!widths) return null;
  return (
    <colgroup>
      {widths.map((width, column) => (
        <col key={head[column]} style={{ width: `${width}%` }} />
      ))}
    </colgroup>
  );
}

function TableItself({ table }: { readonly table: DocumentTable }) {
  return (
    <table
      className={styles.table}
      data-short={table.rows.length <= SHORT}
      data-columns={widthClass(table.head.length)}
    >
      <caption>{table.caption}</caption>
      <Columns {...table} />
      <thead>
        <tr>
          {table.head.map((text, column) => (
            <th key={text || `column ${column}`} scope="col" className={cellClass(column, table)}>
              {text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {table.rows.map((row, k) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: labels repeat from one heading to the next, and rows keep their places
          <Row key={`${k} ${row.cells[0]}`} row={row} table={table} />
        ))}
      </tbody>
    </table>
  );
}

/** A table of the document; its head is repeated on every page it runs over. On the screen a wide one scrolls sideways. */
export function DocumentTableView({ table }: { readonly table: DocumentTable }) {
  if (!table.isWide) {
    return (
      <div className={styles.tableBox}>
        <TableItself table={table} />
      </div>
    );
  }
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard
    <section className={styles.tableBox} tabIndex={0} aria-label={table.caption}>
      <TableItself table={table} />
    </section>
  );
}
