// What this phone keeps: the days that were loaded, and what was written down until it was sent and afterwards.
'use strict';

const NAME = 'cupwright-round';

let opening = null;

function opened() {
  opening ??= new Promise((found, failed) => {
    const asked = indexedDB.open(NAME, 1);
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore('days', {keyPath: 'date'});
      asked.result.createObjectStore('entries', {keyPath: 'id'});
    };
    asked.onsuccess = () => {
      asked.result.onclose = () => { opening = null; };
      asked.result.onversionchange = () => { asked.result.close(); opening = null; };
      found(asked.result);
    };
    asked.onerror = () => { opening = null; failed(asked.error); };
  });
  return opening;
}

// Does something in one transaction. It is done when it is answered: on the phone's storage, not on the way to it.
async function done(store, mode, work) {
  const database = await opened();
  return new Promise((found, failed) => {
    const transaction = database.transaction(store, mode, {durability: 'strict'});
    const asked = work(transaction.objectStore(store));
    transaction.oncomplete = () => found(asked.result);
    transaction.onabort = () => failed(transaction.error);
    transaction.onerror = () => failed(transaction.error);
  });
}

export const keepDay = day => done('days', 'readwrite', days => days.put(day));
export const days = () => done('days', 'readonly', days => days.getAll());
export const dropDay = date => done('days', 'readwrite', days => days.delete(date));
export const keepEntry = entry => done('entries', 'readwrite', entries => entries.put(entry));
export const dropEntry = id => done('entries', 'readwrite', entries => entries.delete(id));

export async function entries() {
  const all = await done('entries', 'readonly', entries => entries.getAll());
  return all.sort((one, other) => one.order - other.order);
}

// Asks that nothing of it is cleared when the phone runs short of room; tells whether there is any storage at all.
export async function asked() {
  try {
    await opened();
    return {keeps: true, safely: Boolean(await navigator.storage?.persist?.())};
  } catch {
    return {keeps: false, safely: false};
  }
}
