import { Fragment, type ReactNode, useId, useRef } from 'react';
import { figureFileName } from '../../lib/views/figure-file-name.ts';
import type { PumpSideRow, PumpSidesView } from '../../lib/views/pump-sides-view.ts';
import frame from './figure-frame.module.css';
import styles from './pump-sides-figure.module.css';
import { SaveButtons } from './save-buttons.tsx';

interface Props {
  readonly view: PumpSidesView;
  readonly name: string;
  readonly about: string;
  readonly isStale: boolean;
  readonly picks: ReactNode;
}

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
export function PumpSidesTable({ view, name, about, isStale, picks }: Props) {
  const titleId = useId();
  const ref = useRef<HTMLElement>(null);
  return (
    <section ref={ref} className={frame.figure} aria-labelledby={titleId} data-figure={name} data-stale={isStale}>
      <p className={frame.name}>{name}</p>
      <h3 id={titleId} className={frame.finding}>
        {view.finding}
      </h3>
      {picks}
      <div className={frame.chart}>
        <table className={styles.table}>
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
      </div>
      <p className={frame.summary}>{view.summary}</p>
      <SaveButtons
        figure={ref}
        name={name}
        title={view.finding}
        fileName={figureFileName(name, about)}
        series={view.series}
        isTable
      />
    </section>
  );
}
