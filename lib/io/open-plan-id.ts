const KEY = 'rimeplan-open';

/** The plan that this tab had open before it was loaded again; null in a new tab or when the browser keeps nothing. */
export function openPlanId(): string | null {
  try {
    return sessionStorage.getItem(KEY);
  } catch {
    return null;
  }
}

/** Remembers for this tab alone which plan is open in it. */
export function rememberOpenPlan(id: string): void {
  try {
    sessionStorage.setItem(KEY, id);
  } catch {
    // The tab then opens the plan that was worked on last.
  }
}

/** An id that no other plan has: 96 random bits. */
export function newPlanId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
