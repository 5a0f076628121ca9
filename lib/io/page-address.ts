import { carriesPlan } from './plan-link.ts';

/**
 * The plan that the page's address carries after #, taken out of the address so that loading the page again does not bring
 * it back; null when there is none.
 */
export function takeLinkFragment(): string | null {
  const { hash, pathname, search } = location;
  if (!carriesPlan(hash)) return null;
  history.replaceState(history.state, '', `${pathname}${search}`);
  return hash;
}

/** Tells when a link with a plan is opened in this tab. */
export function onLinkFragment(hear: (fragment: string) => void): void {
  addEventListener('hashchange', () => {
    const fragment = takeLinkFragment();
    if (fragment) hear(fragment);
  });
}

/** The address of this page with a fragment of its own. */
export function addressWith(fragment: string): string {
  const { origin, pathname } = location;
  return `${origin}${pathname}${fragment}`;
}
