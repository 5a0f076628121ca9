// The service worker, as a browser runs it. The build puts two lines in front of it: VERSION, a hash over all files, and
// FILES, the hash of each by its address. It serves every file of one build from a store of its own, so that the planner
// opens without a network. A newer build is fetched beside the one in use and waits: until every tab is closed, or until a
// page asks for it. Nothing is ever changed under a page that is in use.
/* global VERSION, FILES */

const PREFIX = 'rimeplan-';
const STORE = PREFIX + VERSION;

/** Names under here hold a hash of the content, so a file of that name in an older store is the same file. */
const HASHED = '/_next/static/';

async function hashOf(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** One file of this build. A host that is half-way through an update may send another build's file; then this build waits. */
async function fetched(address) {
  const older = address.startsWith(HASHED) ? await caches.match(address) : undefined;
  const response = older ?? (await fetch(address, { cache: 'no-cache' }));
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  const found = await hashOf(await response.clone().arrayBuffer());
  if (found !== FILES[address]) throw new Error(`${address} is of another build`);
  return response;
}

async function fill() {
  const store = await caches.open(STORE);
  await Promise.all(Object.keys(FILES).map(async (address) => store.put(address, await fetched(address))));
}

/** Removes the stores of other builds, unless a second window is open, which may still need files of its build. */
async function tidy() {
  const windows = await clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (windows.length > 1) return;
  const names = await caches.keys();
  const others = names.filter((name) => name.startsWith(PREFIX) && name !== STORE);
  await Promise.all(others.map((name) => caches.delete(name)));
}

/** The stored answer to a request: this build's first, then for hashed names that of any build still kept. */
async function stored(address) {
  const own = await (await caches.open(STORE)).match(address);
  if (own || !address.startsWith(HASHED)) return own;
  return caches.match(address);
}

/** The parts of a worker are named in the fragment of its address, which a stored answer would replace with its own. */
function withoutAddress(response) {
  return new Response(response.body, { status: response.status, headers: response.headers });
}

async function answer(request, address) {
  const found = await stored(address);
  if (!found) return fetch(request);
  return request.destination === 'worker' ? withoutAddress(found) : found;
}

self.addEventListener('install', (event) => event.waitUntil(fill()));

self.addEventListener('activate', (event) => event.waitUntil(tidy().then(() => clients.claim())));

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin) return;
  if (request.mode === 'navigate') event.waitUntil(tidy());
  event.respondWith(answer(request, pathname));
});

self.addEventListener('message', (event) => {
  if (event.data === 'take over') event.waitUntil(skipWaiting());
});
