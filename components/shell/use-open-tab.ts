import { useSyncExternalStore } from 'react';
import { TABS, type Tab } from './tabs.ts';

function subscribe(onChange: () => void): () => void {
  window.addEventListener('hashchange', onChange);
  return () => window.removeEventListener('hashchange', onChange);
}

function idInAddress(): string {
  return window.location.hash.slice(1);
}

/** Opens a tab; the address remembers it, so that reload, bookmarks and the way back lead there. */
export function openTab(id: string): void {
  if (idInAddress() !== id) window.location.hash = id;
}

/** The tab that is open: the one named in the address, or the first. */
export function useOpenTab(): Tab {
  const id = useSyncExternalStore(subscribe, idInAddress);
  const open = TABS.find((tab) => tab.id === id) ?? TABS[0];
  if (!open) throw new RangeError('the page has no tabs');
  return open;
}
