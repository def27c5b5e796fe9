// Keeps /call in both languages, with all that it shows, so that it opens without a network. Answers for nothing else.

const CACHE = 'hearthway-call-' + new URL(location.href).searchParams.get('v');
const PAGE = '/call';
const PAGES = [PAGE, PAGE + '?lang=en', PAGE + '?lang=es'];
const FILES = ['/look/styles.css', '/look/icons.svg', '/look/mark.svg', '/offline/call.js', '/offline/aloud.js'];
const PATIENCE_MS = 3000;

// The language of the browser decides here, not the one chosen before: a page kept for later must not change that choice.
async function fetchPlain(url) {
  const answer = await fetch(url, { cache: 'no-store', credentials: 'omit' });
  if (!answer.ok) throw new Error('no ' + url);
  return answer;
}

async function keepFile(cache, url, seen) {
  if (seen.has(url)) return;
  seen.add(url);
  const answer = await fetchPlain(url);
  await cache.put(url, answer.clone());
  if (!url.endsWith('.css')) return;
  const named = (await answer.text()).matchAll(/@import\s+['"]([^'"]+)['"]|url\(['"]?([^'")]+)['"]?\)/g);
  const next = [...named].map((found) => found[1] || found[2]).filter((path) => !/^(data:|#)/.test(path));
  await Promise.all(next.map((path) => keepFile(cache, new URL(path, location.origin + url).pathname, seen)));
}

async function keepAll() {
  const cache = await caches.open(CACHE);
  const seen = new Set();
  await Promise.all([
    ...PAGES.map(async (page) => cache.put(page, await fetchPlain(page))),
    ...FILES.map((file) => keepFile(cache, file, seen)),
  ]);
}

async function dropOthers() {
  const names = await caches.keys();
  const old = names.filter((name) => name.startsWith('hearthway-call-') && name !== CACHE);
  await Promise.all(old.map((name) => caches.delete(name)));
}

function keyOf(url) {
  const lang = url.searchParams.get('lang');
  return PAGES.find((page) => page === PAGE + '?lang=' + lang) || PAGE;
}

// The newest page if the network gives it soon, else the kept one: numbers may change, but nobody waits for them.
async function page(request, url, fresh) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(keyOf(url), { ignoreVary: true });
  if (!kept) return fresh;
  const late = new Promise((resolve) => setTimeout(resolve, PATIENCE_MS));
  const answer = await Promise.race([fresh, late]).catch(() => undefined);
  return answer && answer.ok ? answer : kept;
}

async function file(request, url) {
  const cache = await caches.open(CACHE);
  return (await cache.match(url.pathname, { ignoreVary: true })) || fetch(request);
}

async function renew(url, fresh) {
  const answer = await fresh;
  if (!answer.ok || answer.redirected) return;
  const copy = answer.clone();
  const cache = await caches.open(CACHE);
  await cache.put(keyOf(url), copy);
}

self.addEventListener('install', (event) => {
  event.waitUntil(keepAll().then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOthers().then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin) return;
  if (event.request.mode === 'navigate' && url.pathname === PAGE) {
    const fresh = fetch(event.request);
    event.waitUntil(renew(url, fresh).catch(() => undefined));
    event.respondWith(page(event.request, url, fresh));
  } else if (url.pathname.startsWith('/look/') || FILES.includes(url.pathname)) {
    event.respondWith(file(event.request, url));
  }
});
