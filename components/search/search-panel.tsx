'use client';

import { useDeferredValue, useMemo } from 'react';
import { shownAs } from '../../lib/views/entry-columns.ts';
import { formFor, readSearchForm, startForm } from '../../lib/views/search/search-form.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { getSearchDesk, setSearchForm, useKeptSearchForm, useSearch } from '../state/search-store.ts';
import { usePlanner } from '../state/use-planner.ts';
import { SearchFormView } from './search-form-view.tsx';
import styles from './search-panel.module.css';
import { SearchResults } from './search-results.tsx';
import { SearchStart } from './search-start.tsx';

const FORM_ID = 'search-form';

/** The scenario a search begins from: the one that was looked at, but rather an expansion than today. */
function firstBase(ids: readonly string[], currentId: string): string {
  return currentId === ids[0] ? (ids[1] ?? currentId) : currentId;
}

/** Looks for the best ways to set up the shop within the owner's limits. */
export default function SearchPanel() {
  const sheet = usePlanner((state) => state.sheet);
  const currentId = usePlanner((state) => state.currentId);
  const { plan } = presentState(sheet);
  const shown = useMemo(() => shownAs(plan), [plan]);
  const kept = useKeptSearchForm();
  const search = useDeferredValue(useSearch());
  const base = firstBase(
    plan.scenarios.map(({ id }) => id),
    currentId,
  );
  const form = useMemo(
    () => (kept ? formFor(plan, kept, shown) : startForm(plan, base, shown)),
    [plan, kept, shown, base],
  );
  const read = useMemo(() => readSearchForm(form, plan, shown), [form, plan, shown]);
  return (
    <section className={styles.panel} aria-labelledby="search-title">
      <div className={styles.intro}>
        <h2 id="search-title">Find options</h2>
        <p>
          Say what you will not go beyond and what may be combined. Every way to set up the shop within that is looked
          at, the promising ones first, and held against today.
        </p>
      </div>
      <div className={styles.sides}>
        <form
          id={FORM_ID}
          className={styles.form}
          aria-label="What to look for"
          onSubmit={(event) => {
            event.preventDefault();
            if (read.ok) getSearchDesk().start({ plan, ...read.value });
          }}
        >
          <SearchFormView
            plan={plan}
            form={form}
            faults={read.ok ? {} : read.error}
            shown={shown}
            onChange={setSearchForm}
          />
        </form>
        <div className={styles.results}>
          <SearchStart formId={FORM_ID} read={read} status={search.status} />
          <SearchResults plan={plan} state={search} shown={shown} />
        </div>
      </div>
    </section>
  );
}
