// Loads the page's module, says so when that fails or when the module stops later, and
// deletes what is kept. Nothing here needs more than a browser that knows modules: what is
// missing is told.
const root = document.documentElement;
const failed = document.getElementById('failed');
// rescue.js speaks where this stands nowhere.
root.dataset.boot = 'runs';

const ready = run();

async function run() {
  try {
    const missing = missingPart();
    if (missing) throw new Error(missing);
    const noseward = await import('./noseward.js');
    await Promise.all([load(noseward), broughtBack()]);
    root.dataset.wished = navigator.languages.join(' ');
    // The module says by its attribute which language it wants.
    const table = () => noseward.table(root.dataset.table).catch((error) => console.error(error));
    document.addEventListener('noseward-table', async () => noseward.tableCame(await table()));
    document.addEventListener('noseward-speak', () => speak(noseward.written));
    noseward.start(noseward.wish() ? await table() : undefined);
    return true;
  } catch (error) {
    console.error(error);
    tellFailure(String(error));
    return false;
  }
}

// Puts what stands in the page from the start into the language in use: each element has the
// number of its sentence.
function speak(written) {
  for (const element of document.querySelectorAll('[data-w]')) {
    element.english ??= element.innerHTML;
    element.innerHTML = written(element.dataset.w) ?? element.english;
  }
  for (const element of document.querySelectorAll('[data-l]')) {
    element.english ??= element.getAttribute('aria-label');
    element.setAttribute('aria-label', written(element.dataset.l) ?? element.english);
  }
}

async function load(noseward) {
  try {
    await noseward.default();
  } catch (error) {
    // What arrived spoilt may lie in the browser's own cache.
    const module = document.querySelector('link[rel=preload]');
    if (!module) throw error;
    await noseward.default({ module_or_path: fetch(module.href, { cache: 'reload' }) });
  }
}

function missingPart() {
  if (typeof WebAssembly !== 'object') return 'WebAssembly is missing or switched off.';
  if (typeof TextDecoder !== 'function') return 'TextDecoder is missing.';
  if (typeof ResizeObserver !== 'function') return 'ResizeObserver is missing.';
  if (typeof IntersectionObserver !== 'function') return 'IntersectionObserver is missing.';
  return '';
}

function tellFailure(reason) {
  root.dataset.state = 'failed';
  document.getElementById('failed-reason').textContent = reason;
  document.getElementById('failed-delete').hidden = false;
  document.getElementById('failed-delete-now').addEventListener('click', async () => {
    const left = await inTurn(deleteEverything);
    const told = document.getElementById('failed-deleted');
    told.textContent = left ? `${told.dataset.left} ${left}` : told.dataset.done;
  });
  document.getElementById('sheet').replaceChildren(failed);
}

// The module asks for it by an event, and hears of the outcome by another.
document.addEventListener('noseward-delete', async () => {
  const detail = await inTurn(deleteEverything);
  document.dispatchEvent(new CustomEvent('noseward-deleted', { detail }));
});

// Deletes everything of this page from this browser: what it keeps, its copy for use
// without a network, and what looks after that copy. Gives how many entries are left.
async function deleteEverything() {
  let left = 0;
  for (const remove of [deleteTexts, deleteDatabases, deleteCopies]) {
    // What a browser bars holds nothing.
    left += await remove().catch(() => 0);
  }
  return left;
}

async function deleteTexts() {
  let left = 0;
  for (const storage of [localStorage, sessionStorage]) {
    for (const key of ourKeys(storage)) storage.removeItem(key);
    left += ourKeys(storage).length;
  }
  return left;
}

async function deleteDatabases() {
  // Some browsers keep no list.
  const all = await indexedDB.databases?.() ?? [{ name: 'noseward' }];
  const ours = all.filter(({ name }) => name.startsWith('noseward'));
  const done = await Promise.all(ours.map(({ name }) => new Promise((resolve) => {
    const request = indexedDB.deleteDatabase(name);
    request.onsuccess = () => resolve(0);
    request.onerror = () => resolve(1);
    // Another tab may hold it open, if not for long.
    request.onblocked = () => setTimeout(resolve, 3000, 1);
  })));
  return done.reduce((sum, one) => sum + one, 0);
}

// Only what belongs to this page: other copies may lie in folders of one server.
async function deleteCopies() {
  const scope = new URL('.', location.href).href;
  const registrations = await navigator.serviceWorker.getRegistrations();
  for (const registration of registrations) {
    if (registration.scope === scope) await registration.unregister();
  }
  // As the service worker names its caches.
  const names = async () => (await caches.keys()).filter((name) => name.startsWith(`noseward ${scope} `));
  for (const name of await names()) await caches.delete(name);
  return (await names()).length;
}

// The module cannot go on after a fault of its own. What the page had in hand stands in
// the element for that, kept up to date while all was well.
addEventListener('error', (event) => tellCrash(event.error));
addEventListener('unhandledrejection', (event) => tellCrash(event.reason));

function tellCrash(error) {
  // Before the page is ready the failure is told above; after the first crash all is said.
  if (root.dataset.state !== 'ready') return;
  // A stack that ran over is an error of another kind, named differently by each engine.
  const ended = error instanceof WebAssembly.RuntimeError || error instanceof RangeError ||
    (error instanceof Error && error.name === 'InternalError');
  if (!ended) return;
  root.dataset.state = 'crashed';
  const crash = document.getElementById('crash');
  offerNotebook();
  lockAllBut(crash);
  crash.hidden = false;
  crash.focus();
  const link = document.getElementById('crash-link');
  try {
    if (link.hash) history.replaceState(history.state, '', link.hash);
  } catch {
    // Some frames forbid it; the link itself is there.
  }
  // To the same address a link only scrolls.
  link.addEventListener('click', (event) => {
    event.preventDefault();
    location.hash = link.hash;
    location.reload();
  });
}

// The file of the open notebook. The module has left its name in the page, and its text
// where that was not kept. Shown is a copy: a module that only stumbled may write there again.
function offerNotebook() {
  const left = document.getElementById('crash-notebook');
  const offer = left.firstElementChild?.cloneNode(true);
  if (!offer) return;
  const link = offer.querySelector('a');
  let text = left.lastElementChild.textContent;
  try {
    text ||= localStorage.getItem(link.dataset.key);
  } catch {
    // Storage is barred.
  }
  if (!text) return;
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));
  left.after(offer);
}

// What stands behind the message does nothing any more; nobody is to write there.
function lockAllBut(element) {
  for (const other of document.body.children) other.inert = other !== element;
  // Older browsers do not know that.
  for (const control of document.querySelectorAll('button, input, select, textarea')) {
    if (!element.contains(control)) control.disabled = true;
  }
}
