// Offline use: the files of one build are kept in one cache, named after that build.
//
// An open page keeps the build it was loaded with: a newer worker waits until the last tab
// is closed, or until somebody says 'take-over'. The scope is part of the caches' names,
// since several copies of the page may lie in folders of one host.
//
// A network may answer with something else than the file: a page that asks to log in, half
// a file, a changed one. So nothing is kept and nothing kept is used whose SHA-256 is not
// the one that stands here.
const BUILD = '{{build}}';
const INDEX_DIGEST = '{{index-digest}}';
const DIGESTS = {{{files}}};
const FILES = Object.keys(DIGESTS);
// Kept only where they are used: the sentences of other languages, and what only whoever leads needs.
const SOME = {{{some}}};
const OURS = `noseward ${registration.scope} `;
const CACHE = OURS + BUILD;
const SCOPE = new URL(registration.scope);
// Stands in the cache of every build that was ever in use.
const USED = new URL('used', SCOPE).href;
// How a file is named after its content: the first digits of its SHA-256.
const HASHED = /-([0-9a-f]{16})\.\w+$/;
// The use of such a file, in any build: a language, or "leaders".
const USE = /([^/]+)-[0-9a-f]{16}\.words$|(leaders)-\w+-[0-9a-f]{16}\.\w+$/;

function useOf(address) {
  const found = USE.exec(address);
  return found?.[1] ?? found?.[2];
}

async function digest(bytes) {
  const found = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(found, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

// What the SHA-256 of the file at an address begins with, whatever build it is of.
function wanted(address) {
  if (address === SCOPE.href) return INDEX_DIGEST;
  const name = address.slice(SCOPE.href.length);
  return DIGESTS[name] ?? SOME[name] ?? HASHED.exec(name)?.[1];
}

// The response made anew, if it brings what belongs at the address; otherwise nothing. A
// response that was redirected could not answer a navigation.
async function whole(response, address) {
  if (!response?.ok) return undefined;
  const bytes = await response.arrayBuffer();
  if (!(await digest(bytes)).startsWith(wanted(address))) return undefined;
  return new Response(bytes, { headers: response.headers });
}

// The index has a lasting name, so what arrives may belong to another build: older from a
// cache on the way, or newer. Such a mixture is refused like a spoilt file; the browser
// tries again later. The other names are made from the content: what the first visit
// loaded is taken as it is, and asked for anew when it is spoilt.
async function fetchWhole(address) {
  const first = address === SCOPE.href ? 'no-cache' : 'default';
  for (const cache of [first, 'reload']) {
    const found = await whole(await fetch(new Request(address, { cache })), address);
    if (found) return found;
  }
  throw new Error(`what arrived at ${address} is not of build ${BUILD}`);
}

// What a worker that takes this one's place, and this one itself, need without a network.
async function addresses() {
  const here = await usesHere();
  const some = Object.keys(SOME).filter((name) => here.has(useOf(name)));
  return ['', ...FILES, ...some].map((file) => new URL(file, SCOPE).href);
}

// What there is use for here: a page said so, or a build keeps files for it.
async function usesHere() {
  const here = new Set(asked);
  for (const name of await ours()) {
    for (const { url } of await (await caches.open(name)).keys()) here.add(useOf(url));
  }
  return here;
}

async function kept(address, name) {
  const cache = await caches.open(name);
  return whole(await cache.match(address, { ignoreVary: true }), address);
}

// The uses that a page has spoken of.
const asked = new Set();
let filling;

// Fetches what is missing or spoilt, and keeps it once all of it is there.
function fill() {
  filling ??= fillOnce().finally(() => {
    filling = undefined;
  });
  return filling;
}

async function fillOnce() {
  const files = await Promise.all((await addresses()).map(async (address) => {
    return [address, await kept(address, CACHE) ?? await fetchWhole(address)];
  }));
  const cache = await caches.open(CACHE);
  await Promise.all(files.map(([address, response]) => cache.put(address, response)));
}

async function isComplete() {
  const found = await Promise.all((await addresses()).map((address) => kept(address, CACHE)));
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

// The page: this build if all of it is kept and whole, otherwise what the server has.
async function answerPage(event) {
  if (await isComplete()) return kept(SCOPE.href, CACHE);
  event.waitUntil(fill().catch(() => {}));
  return fetch(event.request).catch(() => damaged());
}

// Files of every build: the content is in the name, so builds cannot be mixed. What is not
// of this build may not even be of this page, and comes as the server has it.
async function answerFile(request, address) {
  for (const name of await ours()) {
    const found = await kept(address, name);
    if (found) return found;
  }
  const name = address.slice(SCOPE.href.length);
  if (name in DIGESTS) return fetchWhole(address).catch(() => Response.error());
  if (!(name in SOME)) return fetch(request);
  asked.add(useOf(name));
  // What is being filled already may be without it.
  const filled = fill().then(() => kept(address, CACHE));
  return filled.then((found) => found ?? fetchWhole(address)).catch(() => Response.error());
}

// Shown instead of a page of which a file was damaged or thrown away, without a network.
function damaged() {
  const words = `<!doctype html><html lang="en-GB"><meta charset="utf-8">
<meta name="viewport" content="width=device-width"><title>Noseward</title>
{{damaged}}`;
  return new Response(words, { status: 503, headers: { 'Content-Type': 'text/html; charset=utf-8' } });
}

async function whichBuild(uses) {
  for (const use of uses) asked.add(use);
  // The browser may have thrown the cache away to make room, or a file may be spoilt.
  const complete = await isComplete() || await fill().then(isComplete, () => false);
  return { build: BUILD, complete };
}

addEventListener('install', (event) => {
  // Opened afresh, so that the names stand in the order in which the builds came.
  event.waitUntil(caches.delete(CACHE).then(fill));
});

addEventListener('activate', (event) => event.waitUntil(tidy()));

addEventListener('message', (event) => {
  if (event.data === 'take-over') skipWaiting();
  const [question, ...uses] = event.data.split(' ');
  if (question === 'which-build') {
    event.waitUntil(whichBuild(uses).then((found) => event.ports[0].postMessage(found)));
  }
});

addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== SCOPE.origin) return;
  const { pathname } = SCOPE;
  const isIndex = url.pathname === pathname || url.pathname === `${pathname}index.html`;
  if (request.mode === 'navigate' && isIndex) {
    event.respondWith(answerPage(event));
  } else if (url.pathname.startsWith(pathname) && HASHED.test(url.pathname)) {
    event.respondWith(answerFile(request, url.origin + url.pathname));
  }
});
