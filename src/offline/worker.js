/**
 * The service worker: keeps the whole site for use without a network. `integration.mjs` puts `files`, `visited` and
 * `version` before this text: every file's path below the site's address (a page's ends in a slash) with its SHA-256.
 * Those of `visited`, the figures alone, are kept one by one, once a reader of the site opens them.
 *
 * What is kept is only ever what was built: a file whose hash does not fit is not kept, and then neither is the
 * version it belongs to. A new version waits until a reader asks for it or has closed every page of the old one.
 */
const root = new URL('./', self.location.href).href;
// Caches belong to the whole host, on which there may be other sites, this one among them at another path.
const prefix = `keenfold ${root} `;
const kept = prefix + version;
const hashes = new Map(files);
const alone = new Map(visited);

/** The names of this site's caches, oldest first. */
const ours = async () => (await caches.keys()).filter((name) => name.startsWith(prefix));

async function find(address, names) {
  for (const name of names) {
    const found = await (await caches.open(name)).match(address, { ignoreVary: true });
    if (found) return found;
  }
  return undefined;
}

async function fits(response, hash) {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer()));
  return btoa(String.fromCharCode(...digest)) === hash;
}

/** As the host sent it, less what is only true of the way it was sent. */
async function unpacked(response) {
  const headers = new Headers(response.headers);
  for (const name of ['content-encoding', 'content-length', 'vary']) headers.delete(name);
  return new Response(await response.arrayBuffer(), { headers });
}

async function keep(path, hash) {
  const address = root + path;
  const cache = await caches.open(kept);
  // Newest first: most files are as they were.
  for (const name of (await ours()).reverse()) {
    const earlier = await find(address, [name]);
    if (!earlier || !(await fits(earlier, hash))) continue;
    if (name !== kept) await cache.put(address, earlier);
    return;
  }
  const fresh = await fetch(address, { cache: 'no-cache', credentials: 'omit' });
  if (!(await fits(fresh, hash))) throw new Error(`${path} is not as it was built`);
  await cache.put(address, await unpacked(fresh));
}

async function install() {
  // One after another: the page this comes with has the network first.
  for (const [path, hash] of hashes) await keep(path, hash);
}

async function activate() {
  // Pages still open may ask for a part of the version before; three are kept, should one have been passed over.
  for (const name of (await ours()).slice(0, -3)) await caches.delete(name);
  await self.clients.claim();
}

/** A figure alone, opened by itself: the host's where there is one, and kept; in a frame nothing of it ever is. */
async function opened(request, path) {
  const fresh = await fetch(request).catch(() => undefined);
  if (!fresh) return (await find(root + path, (await ours()).reverse())) ?? missing();
  if (await fits(fresh, alone.get(path))) {
    const cache = await caches.open(kept);
    // Where there is no room it is read all the same.
    await cache.put(root + path, await unpacked(fresh.clone())).catch(() => undefined);
  }
  return fresh;
}

const missing = async () => {
  const page = await find(`${root}404.html`, [kept]);
  return page ? new Response(page.body, { status: 404, headers: page.headers }) : Response.error();
};

async function answer(request, path) {
  if (alone.has(path)) return request.destination === 'document' ? opened(request, path) : fetch(request);
  if (hashes.has(path)) return (await find(root + path, [kept])) ?? fetch(request);
  if (hashes.has(`${path}/`)) return Response.redirect(`${root}${path}/${new URL(request.url).search}`);
  const earlier = await find(root + path, (await ours()).reverse());
  if (earlier) return earlier;
  return fetch(request).catch(() => (request.mode === 'navigate' ? missing() : Response.error()));
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));
self.addEventListener('message', ({ data }) => data === 'take over' && self.skipWaiting());
self.addEventListener('fetch', (event) => {
  const { origin, pathname } = new URL(event.request.url);
  if (event.request.method !== 'GET' || !(origin + pathname).startsWith(root)) return;
  const path = (origin + pathname).slice(root.length).replace(/(^|\/)index\.html$/, '$1');
  event.respondWith(answer(event.request, path));
});
