// Unpacks the module that the single file carries, in place of loading it. Stands behind
// the script of the bindings, whose functions it hands on.
async function unpacked() {
  if (typeof DecompressionStream !== 'function') {
    throw new Error('DecompressionStream is missing: this browser cannot unpack the single file.');
  }
  const packed = atob(document.getElementById('packed-module').textContent);
  const bytes = Uint8Array.from(packed, (character) => character.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  const module = await new Response(stream).arrayBuffer();
  return {
    default: () => __wbg_init({ module_or_path: module }),
    start() {
      start();
      // It lies on this computer already.
      document.documentElement.dataset.offline = 'ready';
      document.dispatchEvent(new CustomEvent('noseward-offline', { detail: 'ready' }));
    },
  };
}
