/** Hands are at work until this long after a key [ms]. */
const REST = 400;
/** The longest that work waits for hands to rest [ms]. */
const MOST = 1500;
/** Left to the page between two pieces of work [ms]. */
const GAP = 20;

interface Waiting {
  readonly work: () => void;
  /** [ms] */
  readonly since: number;
}

/** Work that waits, by whose it is. */
const waiting = new Map<object, Waiting>();
let isRunning = false;
let lastHand = Number.NEGATIVE_INFINITY;

function watchHands(): void {
  const note = () => {
    lastHand = performance.now();
  };
  window.addEventListener('keydown', note, { capture: true, passive: true });
}

function runNext(): void {
  const [next] = waiting;
  if (!next) {
    isRunning = false;
    return;
  }
  const [owner, { work, since }] = next;
  const left = Math.min(lastHand + REST, since + MOST) - performance.now();
  if (left <= 0) {
    waiting.delete(owner);
    work();
  }
  setTimeout(runNext, Math.max(GAP, left));
}

let isWatching = false;

/**
 * Does pieces of work one at a time while hands rest, so that no key has to wait for more than one of them. Work gives way to later work of
 * the same owner, which takes its place in the row.
 */
export function inTurn(owner: object, work: () => void): void {
  if (!isWatching) watchHands();
  isWatching = true;
  waiting.set(owner, { work, since: waiting.get(owner)?.since ?? performance.now() });
  if (isRunning) return;
  isRunning = true;
  setTimeout(runNext, GAP);
}

/** Drops whatever waits of this owner. */
export function leaveRow(owner: object): void {
  waiting.delete(owner);
}
