// Offline use: the files of one build are kept in one cache, named after that build.
//
// An open page keeps the build it was loaded with: a newer worker waits until the last tab
// is closed, or until somebody says 'take-over'. The scope is part of the caches' names,
// since several copies of the page may lie in folders of one host.
const BUILD = '{{build}}';
const FILES = [{{files}}];
const OURS = `noseward ${registration.scope} `;
const CACHE = OURS + BUILD;
const SCOPE = new URL(registration.scope);
// Stands in the cache of every build that was ever in use.
const USED = new URL('used', SCOPE).href;

// The index has a lasting name, so what arrives may belong to another build: older from a
// cache on the way, or newer. Such a mixture is refused; the browser tries again later.
async function fetchIndex() {
  const response = await fetch(new Request(SCOPE, { cache: 'no-cache' }));
  const text = await response.text();
  if (!response.ok || !text.includes(`<meta name="build" content="${BUILD}">`)) {
    throw new Error(`the page that arrived is not of build ${BUILD}`);
  }
  // Made anew, because a response that was redirected cannot answer a navigation.
  return new Response(text, { headers: response.headers });
}

async function fill() {
  const index = await fetchIndex();
  const cache = await caches.open(CACHE);
  // The names are made from the content: what the first visit loaded is taken as it is.
  await cache.addAll(FILES);
  await cache.put(SCOPE, index);
}

async function isComplete() {
  const cache = await caches.open(CACHE);
  const found = await Promise.all([SCOPE, ...FILES].map((file) => cache.match(file, { ignoreVary: true })));
  return found.every(Boolean);
}

async function ours() {
  return (await caches.keys()).filter((name) => name.startsWith(OURS));
}

// Keeps the build that was in use before: an old tab may still be loading its files.
async function tidy() {
  const others = (await ours()).filter((name) => name !== CACHE);
  const used = [];
  for (const name of others) {
    if (await (await caches.open(name)).match(USED)) used.push(name);
  }
  const previous = used.pop();
  await Promise.all(others.filter((name) => name !== previous).map((name) => caches.delete(name)));
  await (await caches.open(CACHE)).put(USED, new Response(''));
}

async function answer(request, file, names) {
  for (const name of names) {
    const cache = await caches.open(name);
    const response = await cache.match(file, { ignoreVary: true });
    if (response) return response;
  }
  return fetch(request);
}

async function whichBuild() {
  let complete = await isComplete();
  if (!complete) {
    // The browser may have thrown the cache away to make room.
    complete = await fill().then(isComplete, () => false);
  }
  return { build: BUILD, complete };
}

addEventListener('install', (event) => {
  // Opened afresh, so that the names stand in the order in which the builds came.
  event.waitUntil(caches.delete(CACHE).then(fill));
});

addEventListener('activate', (event) => event.waitUntil(tidy()));

addEventListener('message', (event) => {
  if (event.data === 'take-over') skipWaiting();
  if (event.data === 'which-build') {
    event.waitUntil(whichBuild().then((found) => event.ports[0].postMessage(found)));
  }
});

addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== SCOPE.origin) return;
  const { pathname } = SCOPE;
  const isIndex = url.pathname === pathname || url.pathname === `${pathname}index.html`;
  if (request.mode === 'navigate' && isIndex) {
    event.respondWith(answer(request, SCOPE, [CACHE]));
  } else if (url.pathname.startsWith(pathname) && /-[0-9a-f]{16}\.\w+$/.test(url.pathname)) {
    // Files of every build: the content is in the name, so builds cannot be mixed.
    event.respondWith(ours().then((names) => answer(request, request, names)));
  }
});
