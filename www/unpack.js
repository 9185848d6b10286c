// Unpacks the module that the single file carries, in place of loading it. Stands behind
// the script of the bindings, whose functions it hands on.
async function unpacked() {
  const module = await unpack('module');
  return {
    default: () => __wbg_init({ module_or_path: module }),
    wish,
    written,
    table: async (key) => new Uint8Array(await unpack(key)),
    tableCame,
    start(table) {
      start(table);
      // It lies on this computer already.
      document.documentElement.dataset.offline = 'ready';
      document.dispatchEvent(new CustomEvent('noseward-offline', { detail: 'ready' }));
    },
  };
}

async function unpack(name) {
  if (typeof DecompressionStream !== 'function') {
    throw new Error('DecompressionStream is missing: this browser cannot unpack the single file.');
  }
  const packed = atob(document.getElementById(`packed-${name}`).textContent);
  const bytes = Uint8Array.from(packed, (character) => character.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(stream).arrayBuffer();
}
