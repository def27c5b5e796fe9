// One worker at two doors. At /call it keeps that page in both languages, with all that it shows; at /session the page of
// the session, the same for every child, and the pictures that were shown. So both open without a network. Answers for
// nothing else.

const SESSION = location.pathname.startsWith('/session/');
const PREFIX = SESSION ? 'hearthway-session-page-' : 'hearthway-call-';
const CACHE = PREFIX + new URL(location.href).searchParams.get('v');
const PICTURES = 'hearthway-session-pictures';
const PAGE = SESSION ? '/session' : '/call';
const PAGES = SESSION ? [PAGE] : [PAGE, PAGE + '?lang=en', PAGE + '?lang=es'];
const SCRIPTS = SESSION
  ? ['session', 'session-kept', 'session-send', 'session-parts', 'hold-ring', 'count-ring', 'signal']
  : ['call', 'aloud'];
const FILES = [
  '/look/styles.css',
  '/look/icons.svg',
  '/look/mark.svg',
  ...SCRIPTS.map((name) => `/offline/${name}.js`),
  ...(SESSION ? ['/figure/moving-figure.js'] : []),
];
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
  const old = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
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

/** A picture's address names what is drawn for good. */
async function picture(request) {
  const kept = await caches.match(request.url, { cacheName: PICTURES, ignoreVary: true });
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok) {
    const cache = await caches.open(PICTURES);
    await cache.put(request.url, answer.clone());
  }
  return answer;
}

/** Whether this is the page itself and not a way through signing in. */
const isPage = (path) => path === PAGE || (SESSION && /^\/session\/[0-9a-f-]{36}$/.test(path));

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
  if (event.request.mode === 'navigate' && isPage(url.pathname)) {
    const fresh = fetch(event.request);
    event.waitUntil(renew(url, fresh).catch(() => undefined));
    event.respondWith(page(event.request, url, fresh));
  } else if (url.pathname.startsWith('/look/') || FILES.includes(url.pathname)) {
    event.respondWith(file(event.request, url));
  } else if (SESSION && /^\/figure\/.*\.svg$/.test(url.pathname)) {
    event.respondWith(picture(event.request));
  }
});
