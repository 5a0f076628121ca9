/** Takes up the newer build that waits, and opens the page again with it. */
export type TakeOver = () => void;

const WORKER = '/service-worker.js';

/** What the service worker understands; see there. */
const TAKE_OVER = 'take over';

/** Only a finished build has the worker, and only over the web can a page have one. */
function canBeOffline(): boolean {
  return process.env.NODE_ENV === 'production' && 'serviceWorker' in navigator && /^https?:$/.test(location.protocol);
}

function takeOver(waiting: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting.postMessage(TAKE_OVER);
}

/** Tells of a worker that has been fetched and waits while an older one serves the page. */
function tellWhenWaiting(worker: ServiceWorker, onNewer: (take: TakeOver) => void): void {
  const look = () => {
    if (worker.state === 'installed' && navigator.serviceWorker.controller) onNewer(() => takeOver(worker));
  };
  worker.addEventListener('statechange', look);
  look();
}

function watch(registration: ServiceWorkerRegistration, onNewer: (take: TakeOver) => void): void {
  const { waiting, installing } = registration;
  if (waiting) tellWhenWaiting(waiting, onNewer);
  if (installing) tellWhenWaiting(installing, onNewer);
  registration.addEventListener('updatefound', () => {
    if (registration.installing) tellWhenWaiting(registration.installing, onNewer);
  });
}

/**
 * Has the browser keep the whole planner, so that it opens without a network from the second visit on. A newer build is
 * fetched beside the one in use; `onNewer` is told how to take it up. Otherwise it is taken up when all tabs have been closed.
 * A browser that refuses goes on without.
 */
export async function startOffline(onNewer: (take: TakeOver) => void): Promise<void> {
  if (!canBeOffline()) return;
  try {
    watch(await navigator.serviceWorker.register(WORKER, { updateViaCache: 'none' }), onNewer);
  } catch {
    // Private windows and blocked site data refuse; the planner then needs the network, as any page does.
  }
}
