// What whoever carries this phone has chosen or ticked. It lies apart from the days and the entries: those never wait
// for it, and nothing is lost that anybody else needs when it goes.
'use strict';

const NAME = 'cupwright-choices';
const STORE = 'choices';
const known = new Map();

let opening = null;

function opened() {
  opening ??= new Promise((found, failed) => {
    const asked = indexedDB.open(NAME, 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore(STORE);
    asked.onsuccess = () => found(asked.result);
    asked.onerror = () => { opening = null; failed(asked.error); };
  });
  return opening;
}

async function done(mode, work) {
  const database = await opened();
  return new Promise((found, failed) => {
    const transaction = database.transaction(STORE, mode, {durability: 'strict'});
    work(transaction.objectStore(STORE));
    transaction.oncomplete = found;
    transaction.onabort = () => failed(transaction.error);
  });
}

// What was chosen before: to be waited for once, before anything is shown.
export async function recall() {
  try {
    await done('readonly', store => {
      store.openCursor().onsuccess = event => {
        const one = event.target.result;
        if (one) { known.set(one.key, one.value); one.continue(); }
      };
    });
  } catch { /* a phone that keeps nothing says so elsewhere */ }
}

export const chosen = (name, otherwise) => known.get(name) ?? otherwise;

// Counts at once, and is kept when the storage has it.
export async function choose(name, value) {
  known.set(name, value);
  try { await done('readwrite', store => store.put(value, name)); } catch { /* it counts until the page is closed */ }
}

// Forgets what begins so, but for one.
export async function forgetOthers(beginning, name) {
  const others = [...known.keys()].filter(one => one.startsWith(beginning) && one !== name);
  others.forEach(one => known.delete(one));
  try { await done('readwrite', store => others.forEach(one => store.delete(one))); } catch { /* gone from here at least */ }
}
