// How a part of the module is fetched that loads later. Stands behind the script of the
// bindings. A line that falls silent is given up, so that the page can say so and offer to
// try again; a slow one is not. What arrived spoilt may lie in the browser's own cache, so
// it is asked for once more. Trying again goes past that cache, which may still be waiting
// for the silent line.
const SILENCE_MS = 4000;
let partCache = 'default';

async function fetchPart(address) {
  try {
    return await compilePart(address, partCache);
  } catch (error) {
    partCache = 'reload';
    if (error.name === 'AbortError') throw error;
    return compilePart(address, partCache);
  }
}

async function compilePart(address, cache) {
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
    return await WebAssembly.compile(await new Blob(pieces).arrayBuffer());
  } finally {
    clearTimeout(silence);
  }
}
