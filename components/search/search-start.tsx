import { useMemo } from 'react';
import { countWays, MOST_WAYS, type SearchStatus } from '../../lib/io/search-desk.ts';
import type { Result } from '../../lib/result.ts';
import { countOf } from '../../lib/views/format-number.ts';
import type { SearchAsked, SearchFaults } from '../../lib/views/search/search-form.ts';
import { getSearchDesk } from '../state/search-store.ts';
import styles from './search-panel.module.css';

interface Props {
  /** Id of the form it sends off. */
  readonly formId: string;
  readonly read: Result<SearchAsked, SearchFaults>;
  readonly status: SearchStatus;
}

/** What stands beside the button: how large the search would be, or why it cannot begin. */
function wordsFor(read: Props['read'], ways: number): string {
  if (!read.ok) return 'Some entries cannot be read: they are marked.';
  if (ways > MOST_WAYS)
    return `These are more than ${countOf(MOST_WAYS, 'way')}. Allow fewer chambers, pumps or hours.`;
  if (ways === 0) return 'There is no way at all to combine these. Allow more.';
  return `${countOf(ways, 'way')} to set up the shop.`;
}

/** Begins the search, or stops the one that runs. */
export function SearchStart({ formId, read, status }: Props) {
  const ways = useMemo(() => (read.ok ? countWays(read.value.space) : 0), [read]);
  const isBusy = status === 'listing' || status === 'running';
  return (
    <div className={styles.start}>
      {isBusy ? (
        <button type="button" onClick={() => getSearchDesk().stop()}>
          Stop
        </button>
      ) : (
        <button type="submit" form={formId} className={styles.go} disabled={!read.ok || ways === 0 || ways > MOST_WAYS}>
          Find options
        </button>
      )}
      <p role="status" className={read.ok ? styles.aside : styles.fault}>
        {wordsFor(read, ways)}
      </p>
    </div>
  );
}
