// What this phone keeps: the days that were loaded, and what was written down until it was sent and afterwards.
'use strict';

const NAME = 'cupwright-round';
const VERSION = 2;
const TRIED = 'x'.repeat(262144); // what a round may well come to, with a photo: our choice

let opening = null;

// Version 1 named a day by its date alone, so that of two courses one was carried.
function upgrade(asked, before) {
  const database = asked.result;
  const carried = database.createObjectStore('carried', {keyPath: ['course', 'date']});
  database.createObjectStore('trial');
  if (before === 0) {
    database.createObjectStore('entries', {keyPath: 'id'});
    return;
  }
  asked.transaction.objectStore('days').getAll().onsuccess = found => {
    found.target.result.filter(day => day.course).forEach(day => carried.put(day));
    database.deleteObjectStore('days');
  };
}

function open(version) {
  return new Promise((found, failed) => {
    const asked = indexedDB.open(NAME, version);
    asked.onupgradeneeded = change => upgrade(asked, change.oldVersion);
    asked.onsuccess = () => {
      asked.result.onclose = () => { opening = null; };
      asked.result.onversionchange = () => { asked.result.close(); opening = null; };
      found(asked.result);
    };
    asked.onerror = () => failed(asked.error);
  });
}

// A page that stands open goes on also where a later one has brought the storage further meanwhile.
function opened() {
  opening ??= open(VERSION)
      .catch(failed => { if (failed.name !== 'VersionError') { throw failed; } return open(); })
      .catch(failed => { opening = null; throw failed; });
  return opening;
}

async function begun(store, mode) {
  const database = await opened();
  try {
    return database.transaction(store, mode, {durability: 'strict'});
  } catch (closed) { // by the browser, or for a later page: since it was opened
    if (closed.name !== 'InvalidStateError') { throw closed; }
    opening = null;
    return (await opened()).transaction(store, mode, {durability: 'strict'});
  }
}

// Does something in one transaction. It is done when it is answered: on the phone's storage, not on the way to it.
async function done(store, mode, work) {
  const transaction = await begun(store, mode);
  return new Promise((found, failed) => {
    const asked = work(transaction.objectStore(store));
    transaction.oncomplete = () => found(asked.result);
    transaction.onabort = () => failed(transaction.error);
    transaction.onerror = () => failed(transaction.error);
  });
}

export const keepDay = day => done('carried', 'readwrite', days => days.put(day));
export const days = () => done('carried', 'readonly', days => days.getAll());
export const dropDay = day => done('carried', 'readwrite', days => days.delete([day.course, day.date]));
export const dropEntry = id => done('entries', 'readwrite', entries => entries.delete(id));

// An entry comes behind all that were written before it, whatever the clock says and however many windows write.
export const keepEntry = entry => done('entries', 'readwrite', entries => {
  const asked = entries.getAll();
  asked.onsuccess = () => entries.put({order: Math.max(0, ...asked.result.map(one => one.order)) + 1, ...entry});
  return asked;
});

// What became of an entry; one that was taken off the phone meanwhile does not come back.
export const noteEntry = (id, what) => done('entries', 'readwrite', entries => {
  const asked = entries.get(id);
  asked.onsuccess = () => { if (asked.result) { entries.put({...asked.result, ...what}); } };
  return asked;
});

export async function entries() {
  const all = await done('entries', 'readonly', entries => entries.getAll());
  return all.sort((one, other) => one.order - other.order);
}

// Asks that nothing of it is cleared when the phone runs short of room; tells whether something can be kept at all, by
// keeping something.
export async function asked() {
  try {
    await done('trial', 'readwrite', trial => trial.put(TRIED, 1));
    await done('trial', 'readwrite', trial => trial.clear());
    return {keeps: true, safely: Boolean(await navigator.storage?.persist?.())};
  } catch {
    return {keeps: false, safely: false};
  }
}
