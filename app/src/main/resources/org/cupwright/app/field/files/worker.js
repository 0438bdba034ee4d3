// Keeps the page itself on the phone. KEPT and FILES stand before this: what the page is made of, and a name for it
// that changes with it. A page that is open goes on with what it was opened with.
'use strict';

// Who is signed out would be led to the doors, and they must not be kept as the page.
const asked = file => new Request(file, {cache: 'reload', redirect: 'error'});

self.addEventListener('install', event => {
  event.waitUntil(caches.open(KEPT).then(kept => kept.addAll(FILES.map(asked))));
});

self.addEventListener('activate', event => {
  event.waitUntil(caches.keys()
      .then(names => Promise.all(names.filter(name => name.startsWith('round-') && name !== KEPT)
          .map(name => caches.delete(name))))
      .then(() => self.clients.claim()));
});

self.addEventListener('fetch', event => {
  const path = new URL(event.request.url).pathname;
  if (event.request.method === 'GET' && FILES.includes(path)) {
    event.respondWith(caches.open(KEPT).then(kept => kept.match(path)).then(found => found ?? fetch(event.request)));
  }
});
