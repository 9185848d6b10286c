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
  const bytes = packedBytes(document.getElementById(`packed-${name}`));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(stream).arrayBuffer();
}

// Two letters of the text are 13 bits: their values, of 91, from `#` on, with `~` for `<`. White
// space means nothing, and neither does what comes after the last byte.
function packedBytes({ textContent, dataset }) {
  const text = textContent.replace(/\s/g, '');
  const bytes = new Uint8Array(Number(dataset.bytes));
  const value = (at) => {
    const letter = text.charCodeAt(at);
    return (letter === 126 ? 60 : letter) - 35;
  };
  let held = 0;
  let bits = 0;
  let at = 0;
  for (let i = 0; i < text.length; i += 2) {
    held = (held << 13) | (value(i) * 91 + value(i + 1));
    for (bits += 13; bits >= 8; at++) {
      bits -= 8;
      bytes[at] = held >> bits;
    }
  }
  return bytes;
}
