/** How long the page may be busy before the work is done all the same [ms]. */
const PATIENCE = 2000;

/** How long to wait in a browser that does not tell when it is idle [ms]. */
const GUESS = 300;

/** Does some work once the page has nothing more urgent to do. The function it returns calls the work off. */
export function whenIdle(work: () => void): () => void {
  if (typeof window.requestIdleCallback !== 'function') {
    const timer = setTimeout(work, GUESS);
    return () => clearTimeout(timer);
  }
  const turn = window.requestIdleCallback(work, { timeout: PATIENCE });
  return () => window.cancelIdleCallback(turn);
}
