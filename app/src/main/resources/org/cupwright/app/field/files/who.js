// Who writes on this phone: whoever is signed in on it or, where several share it, whoever chose a name. The choice is
// kept on the phone, so that it can be made with no signal; a PIN never is.
'use strict';

const KEPT = 'cupwright-round-who';

export const who = {shared: false, names: [], mayShare: false, chosen: null, signedIn: null, ...kept()};

function kept() {
  try { return JSON.parse(localStorage.getItem(KEPT)) ?? {}; } catch { return {}; }
}

// Where the phone keeps nothing, the choice holds as long as the page is open.
function keep() {
  try { localStorage.setItem(KEPT, JSON.stringify(who)); } catch { return; }
}

// What the office says of this phone and of who is signed in on it.
export function learn(found) {
  const person = found.person || null;
  Object.assign(who, {shared: found.shared, names: found.names, mayShare: Boolean(found.mayShare)});
  if (who.shared) { who.chosen ??= person; } else {
    who.chosen = null;
    who.signedIn = person ?? who.signedIn;
  }
  keep();
}

export function choose(name) {
  who.chosen = name;
  keep();
}

// Under whose name an entry is written down; nobody's where nobody was chosen yet.
export const writer = () => who.shared ? who.chosen : who.signedIn;
