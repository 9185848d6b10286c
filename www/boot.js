// Loads the page's module, and says so when that fails or when the module stops later.
// Nothing here needs more than a browser that knows modules: what is missing is told.
const root = document.documentElement;
const failed = document.getElementById('failed');

const ready = run();

async function run() {
  try {
    const missing = missingPart();
    if (missing) throw new Error(missing);
    const noseward = await import('./noseward.js');
    await noseward.default();
    noseward.start();
    return true;
  } catch (error) {
    console.error(error);
    tellFailure(String(error));
    return false;
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
  const paper = document.getElementById('paper');
  const toPaper = document.getElementById('failed-paper');
  toPaper.hidden = !paper;
  // No link: its address would take the place of the rocket's.
  toPaper.addEventListener('click', () => {
    paper.open = true;
    paper.scrollIntoView();
  });
  if (paper) paper.open = true;
  document.getElementById('failed-again').addEventListener('click', () => location.reload());
  failed.hidden = false;
  document.getElementById('sheet').replaceChildren(failed);
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
  crash.hidden = false;
  crash.focus();
  try {
    const { hash } = document.getElementById('crash-link');
    if (hash) history.replaceState(history.state, '', hash);
  } catch {
    // Some frames forbid it; the link itself is there.
  }
}
