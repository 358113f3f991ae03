// Keeps the page in the browser, so that it opens without a network. web/finish.py writes this as
// sw.js, with two constants before it: FILES, the SHA-256 of every file of the page by its address
// from here, and VERSION, a hash over all of those.
//
// Each version has a cache of its own, filled before its worker is installed: an update arrives
// whole or not at all. From then on every page that is opened gets the new version. Pages already
// open have theirs in memory; one still loading finds its files in its version's cache, which stays
// until no page is open that might need it.

const SCOPE = self.registration.scope;
// One origin may hold the page in several folders.
const CACHES = `turns-aloft ${SCOPE} `;
const CACHE = CACHES + VERSION;
// A file is the same whatever headers it was asked for with.
const LIKE = { ignoreVary: true };

self.addEventListener("install", (event) => {
  event.waitUntil(keepAll().then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(self.clients.claim());
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET") return;
  if (request.mode !== "navigate") {
    event.respondWith(answer(request, request.url));
    return;
  }
  const { origin, pathname } = new URL(request.url);
  if ([SCOPE, `${SCOPE}index.html`].includes(origin + pathname)) {
    event.respondWith(answer(request, SCOPE));
    event.waitUntil(tidy());
  }
});

async function answer(request, address) {
  const own = await caches.open(CACHE);
  return (await own.match(address, LIKE)) ?? (await caches.match(address, LIKE)) ?? fetch(request);
}

// Fills this version's cache with what it lacks; fails where that can't be had as it must be.
async function keepAll() {
  const cache = await caches.open(CACHE);
  for (const [name, sum] of Object.entries(FILES)) {
    const address = new URL(name, SCOPE).href;
    if (!(await cache.match(address, LIKE))) {
      await cache.put(address, await verified(address, sum));
    }
  }
}

// A file with just this content: from another version, as the browser remembers it if the server
// agrees, or at last downloaded afresh.
async function verified(address, sum) {
  const sources = [
    () => caches.match(address, LIKE),
    () => fetch(address, { cache: "no-cache" }),
    () => fetch(address, { cache: "reload" }),
  ];
  for (const source of sources) {
    const response = await source();
    if (!response?.ok) continue;
    const body = await response.arrayBuffer();
    if ((await sha256(body)) !== sum) continue;
    // The body is stored as it was decoded, and without any redirection that led to it.
    const headers = new Headers(response.headers);
    headers.delete("Content-Encoding");
    headers.delete("Content-Length");
    return new Response(body, { headers });
  }
  throw new Error(`${address} is not the file of version ${VERSION}`);
}

async function sha256(body) {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", body));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

// While a page is being opened: drops older versions if no other page is open, and makes up for
// files that something else on this origin has deleted.
async function tidy() {
  const open = await self.clients.matchAll({ type: "window" });
  if (open.length === 0) {
    const versions = (await caches.keys()).filter((name) => name.startsWith(CACHES));
    // Caches are listed in the order they were made: what comes later may still be being filled.
    const older = versions.slice(0, Math.max(0, versions.indexOf(CACHE)));
    await Promise.all(older.map((name) => caches.delete(name)));
  }
  // Without a network that has to wait for another time.
  await keepAll().catch(() => {});
}
