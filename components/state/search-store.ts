import { useSyncExternalStore } from 'react';
import { SearchDesk, type SearchState } from '../../lib/io/search-desk.ts';
import { familiesAtOnce, searchBoard } from '../../lib/io/search-engines.ts';
import type { SearchForm } from '../../lib/views/search/search-form.ts';

let desk: SearchDesk | null = null;

/** The one desk of the page that looks for options; its threads start with the first search. */
export function getSearchDesk(): SearchDesk {
  desk ??= new SearchDesk(searchBoard, familiesAtOnce());
  return desk;
}

/** How the search stands. */
export function useSearch(): SearchState {
  const { subscribe, state } = getSearchDesk();
  return useSyncExternalStore(subscribe, state);
}

let form: SearchForm | null = null;
const listeners = new Set<() => void>();

function subscribeToForm(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Keeps what was filled in while other parts of the page are open. */
export function setSearchForm(next: SearchForm): void {
  form = next;
  for (const listener of listeners) listener();
}

/** The form as it was filled in last; null before it was touched. */
export function useKeptSearchForm(): SearchForm | null {
  return useSyncExternalStore(subscribeToForm, () => form);
}
