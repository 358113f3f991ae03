// The service worker: caches the page, so that it opens without a network. web/finish.py writes
// this as sw.js, after two constants: FILES, the SHA-256 of every file of the page by its relative
// address, and VERSION, a hash over all of those.
//
// Each version has its own cache, filled before its worker is installed: an update arrives as a
// whole or not at all. From then on every page that is opened gets the new version. Pages already
// open have their version in memory; one still loading finds its files in its version's cache,
// which is deleted only when no other page is open.

const SCOPE = self.registration.scope;
// The page may be in several folders of one origin.
const CACHES = `turns-aloft ${SCOPE} `;
const CACHE = CACHES + VERSION;
// A file is the same whatever the request's headers are.
const MATCH_OPTIONS = { ignoreVary: true };

self.addEventListener("install", (event) => {
  event.waitUntil(cacheAll().then(() => self.skipWaiting()));
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
  const cached =
    (await own.match(address, MATCH_OPTIONS)) ?? (await caches.match(address, MATCH_OPTIONS));
  return cached ?? fetch(request);
}

// Adds the files that this version's cache lacks; fails if one cannot be had with the right
// content.
async function cacheAll() {
  const cache = await caches.open(CACHE);
  for (const [name, sum] of Object.entries(FILES)) {
    const address = new URL(name, SCOPE).href;
    if (!(await cache.match(address, MATCH_OPTIONS))) {
      await cache.put(address, await verified(address, sum));
    }
  }
}

// A file with exactly this content: from another version's cache, from the browser's cache if the
// server confirms it, else downloaded again.
async function verified(address, sum) {
  const sources = [
    () => caches.match(address, MATCH_OPTIONS),
    () => fetch(address, { cache: "no-cache" }),
    () => fetch(address, { cache: "reload" }),
  ];
  for (const source of sources) {
    const response = await source();
    if (!response?.ok) continue;
    const body = await response.arrayBuffer();
    if ((await sha256(body)) !== sum) continue;
    // The body is stored decoded, and as a response of its own, without redirects.
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

// Called while a page is being opened: deletes the caches of older versions if no other page is
// open, and restores files that something else on this origin has deleted.
async function tidy() {
  const open = await self.clients.matchAll({ type: "window" });
  if (open.length === 0) {
    const versions = (await caches.keys()).filter((name) => name.startsWith(CACHES));
    // Caches are listed in order of creation: a later one may still be filling.
    const older = versions.slice(0, Math.max(0, versions.indexOf(CACHE)));
    await Promise.all(older.map((name) => caches.delete(name)));
  }
  // Without a network this is left to the next time.
  await cacheAll().catch(() => {});
}
