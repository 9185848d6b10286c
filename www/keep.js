// Tabs write one after the other, and what they write survives a browser that is killed.
// Follows boot.js in one script.
//
// The page keeps texts in local storage, which some browsers put on the disk up to half a
// minute later. So each text that a tab has written also goes into a database that is on
// the disk at once. Every write is stamped: a text in the database whose stamp is above
// that of local storage was lost there, and is brought back before the page opens.
const STAMP = 'noseward/at';
// A tab that sleeps when its turn comes holds nobody up for longer; and a database that
// does not answer is not waited for.
const PATIENCE_MS = 1000;

document.addEventListener('noseward-keep', () => {
  inTurn(() => keepAndCopy('noseward-keep-now')).catch(console.error);
});
// When the page is left there is no time for turns.
addEventListener('pagehide', () => keepAndCopy('noseward-keep-last').catch(console.error));

// Does something once no other tab of this page is at it.
function inTurn(does) {
  // Absent where the page is not served securely, and in older browsers.
  const { locks } = navigator;
  if (!locks) return does();
  return new Promise((resolve) => {
    let begun = false;
    const begin = () => {
      if (begun) return undefined;
      begun = true;
      const done = does();
      resolve(done);
      return done;
    };
    setTimeout(begin, PATIENCE_MS);
    locks.request('noseward', begin).catch(begin);
  });
}

// The keys of this page in a storage.
function ourKeys(storage) {
  return Object.keys(storage).filter((key) => key.startsWith('noseward/'));
}

function keptTexts() {
  try {
    return new Map(ourKeys(localStorage).map((key) => [key, localStorage.getItem(key)]));
  } catch {
    // Storage is barred.
    return new Map();
  }
}

// Has the module write what is due, and copies what it has written.
async function keepAndCopy(kind) {
  const before = keptTexts();
  document.dispatchEvent(new Event(kind));
  const after = keptTexts();
  const keys = [...new Set([...before.keys(), ...after.keys()])];
  const changed = keys.filter((key) => before.get(key) !== after.get(key));
  if (!changed.length) return;
  try {
    const at = Math.max(Date.now(), Number(after.get(STAMP) ?? 0) + 1);
    localStorage.setItem(STAMP, at);
    await inDatabase('readwrite', (texts) => {
      for (const key of changed) texts.put({ text: after.get(key) ?? null, at }, key);
    });
  } catch {
    // Where the browser bars either, local storage is all there is.
  }
}

// Brings back what a browser that was killed had not put on the disk.
async function bringBack() {
  const { keys, found } = await inDatabase('readonly', (texts) => {
    return { keys: texts.getAllKeys(), found: texts.getAll() };
  });
  const at = Number(localStorage.getItem(STAMP));
  const newer = found.result.map((one, i) => ({ key: keys.result[i], ...one })).filter((one) => one.at > at);
  for (const { key, text } of newer) {
    if (text === null) localStorage.removeItem(key);
    else localStorage.setItem(key, text);
  }
  if (newer.length) localStorage.setItem(STAMP, Math.max(...newer.map((one) => one.at)));
}

// For as long as that may take when the page opens.
function broughtBack() {
  const late = new Promise((resolve) => { setTimeout(resolve, PATIENCE_MS); });
  return Promise.race([bringBack().catch(() => {}), late]);
}

// Gives what `does` gave once all of it is done and on the disk.
async function inDatabase(mode, does) {
  const database = await new Promise((resolve, reject) => {
    const request = indexedDB.open('noseward', 1);
    request.onupgradeneeded = () => request.result.createObjectStore('kept');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  try {
    const transaction = database.transaction('kept', mode, { durability: 'strict' });
    const done = does(transaction.objectStore('kept'));
    await new Promise((resolve, reject) => {
      transaction.oncomplete = resolve;
      transaction.onabort = () => reject(transaction.error);
    });
    return done;
  } finally {
    // An open one would be in the way of deleting it.
    database.close();
  }
}
