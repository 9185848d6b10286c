// How the parts of the module are fetched that load later. Stands behind the script of the
// bindings, and before two tables: the files, and which of them a part needs. A line that falls
// silent is given up, so that the page can say so and offer to try again; a slow one is not.
// What arrived spoilt may lie in the browser's own cache, so it is asked for once more. Trying
// again goes past that cache, which may still be waiting for the silent line.
const SILENCE_MS = 4000;
let partCache = 'default';
const started = new Map();

// The function by which the module has a part loaded: it is told how that went, once.
function loader(files) {
  return async (callback, data) => {
    let done = false;
    try {
      await Promise.all(files.map((file) => startOnce(FILES[file])));
      done = true;
    } catch (error) {
      console.error(error);
    } finally {
      initSync().__indirect_function_table.get(callback)(data, done);
    }
  };
}

// What failed is tried again by whoever asks next.
function startOnce(file) {
  if (!started.has(file)) {
    const starts = startPart(new URL(file, import.meta.url));
    starts.catch(() => started.delete(file));
    started.set(file, starts);
  }
  return started.get(file);
}

async function startPart(address) {
  if (address.pathname.endsWith('.css')) return fetchFile(address, useStyles);
  const module = await fetchFile(address, (bytes) => WebAssembly.compile(bytes));
  await WebAssembly.instantiate(module, { __wasm_split: initSync() });
}

// The styles of the places are no link of their own: that would be loaded a second time, could
// not be given up, nor asked for past the cache.
function useStyles(bytes) {
  const styles = new TextDecoder().decode(bytes);
  if (document.adoptedStyleSheets) {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(styles);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  } else {
    // Before Safari 16.4: one rule of the page's own sheet.
    const { sheet } = document.querySelector('link[rel=stylesheet]');
    sheet.insertRule(`@media all{${styles}}`, sheet.cssRules.length);
  }
}

// The sentences of a language; a table behind this says in which file. For boot.js. Whoever asks
// again had no use for what came.
const asked = new Set();
export function table(key) {
  if (asked.has(key)) partCache = 'reload';
  asked.add(key);
  return fetchFile(new URL(TABLES[key], import.meta.url), (bytes) => new Uint8Array(bytes));
}

// What `use` makes of a file. What it cannot use is fetched anew too.
async function fetchFile(address, use) {
  try {
    return await fetchOnce(address, use, partCache);
  } catch (error) {
    partCache = 'reload';
    if (error.name === 'AbortError') throw error;
    return fetchOnce(address, use, partCache);
  }
}

async function fetchOnce(address, use, cache) {
  const stop = new AbortController();
  let silence;
  const listen = () => {
    clearTimeout(silence);
    silence = setTimeout(() => stop.abort(), SILENCE_MS);
  };
  listen();
  try {
    const response = await fetch(address, { cache, signal: stop.signal });
    if (!response.ok) throw new Error(`${address} answers ${response.status}`);
    const pieces = [];
    const reader = response.body.getReader();
    for (;;) {
      listen();
      const { done, value } = await reader.read();
      if (done) break;
      pieces.push(value);
    }
    return await use(await new Blob(pieces).arrayBuffer());
  } finally {
    clearTimeout(silence);
  }
}
