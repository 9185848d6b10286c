// Keeps the page for use without a network, and tells of a newer one. Follows boot.js in
// one script; the single file does without. Where a browser, a frame or a policy forbids
// it, the page works as before: no failure is told but by `data-offline="no"`.
const newVersion = document.getElementById('new-version');
const build = document.querySelector('meta[name=build]').content;
// Whether another build than ours must be a newer one. A page fresh from the network may
// be newer than the worker that is still active.
let settled = false;

ready.then((works) => works && afterLoad()).then((works) => works && afterParts()).then((works) => {
  if (works) keepForLater().catch(() => setOffline('no'));
});

function afterLoad() {
  if (document.readyState === 'complete') return true;
  return new Promise((resolve) => addEventListener('load', () => resolve(true), { once: true }));
}

// All that the module fetches ahead is here: what a worker fetches is in the browser's cache
// then, and no request is under way, for which a newer worker would have to wait. A line that
// falls silent is not waited for.
function afterParts() {
  if (root.dataset.parts) return true;
  return new Promise((resolve) => {
    new MutationObserver(() => root.dataset.parts && resolve(true))
      .observe(root, { attributes: true, attributeFilter: ['data-parts'] });
    setTimeout(resolve, 20000, true);
  });
}

function setOffline(state) {
  if (root.dataset.offline === state) return;
  root.dataset.offline = state;
  document.dispatchEvent(new CustomEvent('noseward-offline', { detail: state }));
}

async function keepForLater() {
  // Absent where the page is not served securely; in some frames it throws.
  const workers = navigator.serviceWorker;
  if (!workers) throw new Error('no service workers');
  // Where nothing may be stored this fails quietly; registering would fail on the console.
  await caches.keys();
  settled = Boolean(workers.controller);
  const registration = await workers.register('sw.js', { updateViaCache: 'none' });
  document.getElementById('load-new').addEventListener('click', () => loadNew(registration));
  follow(registration, registration.installing);
  registration.addEventListener('updatefound', () => follow(registration, registration.installing));
  document.addEventListener('noseward-table', () => look(registration));
  // What only whoever leads needs may come later.
  new MutationObserver(() => look(registration)).observe(root, { attributeFilter: ['data-parts'] });
  // Another tab may let the newer version take over: this one stays as it is.
  workers.addEventListener('controllerchange', () => look(registration));
  await look(registration);
}

function follow(registration, worker) {
  if (worker) worker.addEventListener('statechange', () => look(registration));
}

async function look(registration) {
  const [active, waiting] = await Promise.all([ask(registration.active), ask(registration.waiting)]);
  if (active && active.build === build) {
    setOffline(active.complete ? 'ready' : 'no');
    settled = true;
  } else if (!registration.installing && !waiting && root.dataset.offline !== 'ready') {
    setOffline('no');
  }
  if (settled && [active, waiting].some((one) => one && one.build !== build)) {
    newVersion.hidden = false;
  }
}

// What a worker says of its build; nothing when it does not answer.
function ask(worker) {
  if (!worker || worker.state === 'redundant') return null;
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = (event) => resolve(event.data);
    setTimeout(resolve, 20000, null);
    // With the language in which the page is read, and whose parts it has: both are to be kept too.
    worker.postMessage(`which-build ${root.dataset.table ?? ''} ${root.dataset.parts ?? ''}`, [port2]);
  });
}

function loadNew(registration) {
  const worker = registration.waiting;
  if (!worker) {
    location.reload();
    return;
  }
  worker.addEventListener('statechange', () => location.reload(), { once: true });
  worker.postMessage('take-over');
}
