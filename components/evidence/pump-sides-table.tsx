import { Fragment } from 'react';
import type { PumpSideRow, PumpSidesView } from '../../lib/views/pump-sides-view.ts';
import styles from './pump-sides-figure.module.css';

function Figure({ text, isBetter }: { readonly text: string; readonly isBetter: boolean }) {
  return (
    <td data-better={isBetter}>
      {text}
      {isBetter ? <span className="visually-hidden"> (better)</span> : null}
    </td>
  );
}

function Row({ row }: { readonly row: PumpSideRow }) {
  return (
    <tr>
      <th scope="row">{row.label}</th>
      <Figure text={row.own} isBetter={row.better === 'own'} />
      <Figure text={row.shared} isBetter={row.better === 'shared'} />
    </tr>
  );
}

/** Two ways to pump the same chambers, figure by figure; the better of each pair is marked. */
export function PumpSidesTable({ view }: { readonly view: PumpSidesView }) {
  return (
    <table className={styles.table}>
      <caption className="visually-hidden">{view.table.caption}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">
            A pump each <span>{view.ownName}</span>
          </th>
          <th scope="col">
            One shared pump <span>{view.sharedName}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {view.blocks.map((block) => (
          <Fragment key={block.name}>
            <tr>
              <th scope="rowgroup" colSpan={3} className={styles.block}>
                {block.name}
              </th>
            </tr>
            {block.rows.map((row) => (
              <Row key={row.label} row={row} />
            ))}
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
