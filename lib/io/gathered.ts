/** The longest that gathered calls wait while the page is out of sight, where there are no frames [ms]. */
const UNSEEN = 250;

/** A call that comes this long after the last work is not one of many [ms]. */
const ALONE = 100;

/** Does the work at once for a call that comes alone, and once for all calls of a crowd that come before the next frame is drawn. */
export function gathered(work: () => void): () => void {
  let waits = false;
  let last = Number.NEGATIVE_INFINITY;
  const run = () => {
    waits = false;
    last = performance.now();
    work();
  };
  return () => {
    if (waits) return;
    if (performance.now() - last > ALONE) {
      run();
      return;
    }
    waits = true;
    if (document.visibilityState === 'visible') requestAnimationFrame(run);
    else setTimeout(run, UNSEEN);
  };
}
