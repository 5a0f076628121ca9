import { useMemo } from 'react';
import type { SearchState } from '../../lib/io/search-desk.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { frontierView } from '../../lib/views/search/frontier-view.ts';
import {
  fallenOut,
  proofWords,
  safetyWords,
  searchProgress,
  statusWords,
} from '../../lib/views/search/search-words.ts';
import { isOvertaken } from '../../lib/views/search/send-option.ts';
import { FrontierFigure } from './frontier-figure.tsx';
import { OptionsTable } from './options-table.tsx';
import styles from './search-panel.module.css';

interface Props {
  readonly plan: Plan;
  readonly state: SearchState;
  readonly shown: ShownAs;
}

/** How far the search is, and what has become of the options. */
function Standing({ state, shown }: Omit<Props, 'plan'>) {
  const isBusy = state.status === 'listing' || state.status === 'running';
  const out = state.search ? fallenOut(state.search) : [];
  const safe = state.search && state.status !== 'listing' ? safetyWords(state.search) : '';
  return (
    <div className={styles.standing}>
      {isBusy ? <progress max={1} value={searchProgress(state)} aria-label="How much of the search is done" /> : null}
      <p role="status" className={styles.status}>
        {statusWords(state)}
      </p>
      {state.search && state.status !== 'listing' ? <p className={styles.aside}>{proofWords(state, shown)}</p> : null}
      {safe === '' ? null : <p className={styles.aside}>{safe}</p>}
      {out.length > 0 ? (
        <ul className={styles.out}>
          {out.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

/** What a search has found so far: how it stands, the picture, and the best ways as a table. */
export function SearchResults({ plan, state, shown }: Props) {
  const { request, search } = state;
  const view = useMemo(
    () => (request && search ? frontierView(request.plan, request.space, search, shown) : null),
    [request, search, shown],
  );
  if (!request) {
    return (
      <p className={styles.aside}>
        What is found will stand here: a line of money needed against yearly cash, and the ways on it as a table, each
        of which can be sent to the sheet.
      </p>
    );
  }
  const overtaken = isOvertaken(plan, request.plan, request.baseId);
  return (
    <>
      <Standing state={state} shown={shown} />
      {overtaken ? (
        <p className={styles.warn}>The plan has changed since this search. Look again for figures that fit it.</p>
      ) : null}
      {view && search && search.fit.length > 0 ? (
        <>
          <FrontierFigure view={view} shown={shown} isStale={overtaken} />
          <OptionsTable
            rows={view.rows}
            columns={view.columns}
            plan={plan}
            baseId={request.baseId}
            worthMost={view.worthMost}
          />
        </>
      ) : null}
    </>
  );
}
