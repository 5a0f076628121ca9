/** The longest that gathered calls wait while the page is out of sight, where there are no frames [ms]. */
const UNSEEN = 250;

/** Does the work once for all calls that come before the next frame is drawn. */
export function gathered(work: () => void): () => void {
  let waits = false;
  const run = () => {
    waits = false;
    work();
  };
  return () => {
    if (waits) return;
    waits = true;
    if (document.visibilityState === 'visible') requestAnimationFrame(run);
    else setTimeout(run, UNSEEN);
  };
}
