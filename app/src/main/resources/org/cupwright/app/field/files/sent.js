// Sends what waits, one after another in the order in which it was written down, and each once: an entry has its own
// number, and the office keeps a number once however often it comes.
'use strict';

import {entries, noteEntry} from './kept.js';
import {learn} from './who.js';

const FIRST_PAUSE = 2000; // ms, doubled at every try that fails: our choice
const LONGEST_PAUSE = 60000;
const PATIENCE = 20000;

// Says that a part of a page asks: whoever is signed out is told so, and not led away.
const PART = {'HX-Request': 'true'};

// What became of the last try: '', 'offline', 'trouble' (the office answers, and does not do it) or 'signedOut'; and who
// is known to be signed in.
export const line = {state: '', mark: null, clockBehind: 0, person: null};

let pause = FIRST_PAUSE;
let timer = null;
let sending = false;
let again = false;
let heard = () => {};

export function tell(listener) { heard = listener; }

const failed = state => Object.assign(new Error(state), {state});

// What a try that failed says of the line.
export const stateOf = failure => failure.state ?? 'offline';

function checkSignedIn(answer) {
  if (answer.type === 'opaqueredirect' || answer.status === 401) {
    line.person = null;
    throw failed('signedOut');
  }
}

export async function ask(path, patience = PATIENCE) {
  const answer = await fetch(path, {headers: PART, redirect: 'manual', cache: 'no-store', signal: AbortSignal.timeout(patience)});
  const heardAt = Date.now(); // what follows of a long answer may take minutes
  checkSignedIn(answer);
  if (!answer.ok) { throw Object.assign(failed('trouble'), {told: await told(answer)}); }
  return {...await answer.json(), heardAt};
}

// Sends a form with the mark that came with what was just asked for.
export async function post(path, body, found) {
  const answer = await fetch(path, {method: 'POST', body, headers: {...PART, [found.markName]: found.mark},
    redirect: 'manual', signal: AbortSignal.timeout(PATIENCE)});
  if (!answer.ok) { throw new Error('status ' + answer.status); }
  return answer.json();
}

async function told(answer) {
  try { return await answer.json(); } catch { return null; }
}

// Learns by which mark the office knows what comes from here, and how far this clock is behind its own.
export function greet(from) {
  line.mark = from.mark ? {name: from.markName, value: from.mark} : null;
  line.person = from.person;
  learn(from);
  line.clockBehind = Date.parse(from.now ?? from.loadedAt) - from.heardAt;
}

async function send(entry) {
  const form = new FormData();
  form.append('entry', JSON.stringify(entry.says));
  if (entry.photo) { form.append('photo', entry.photo, 'photo.jpg'); }
  const headers = line.mark ? {...PART, [line.mark.name]: line.mark.value} : PART;
  const answer = await fetch('/round/' + (entry.to ?? 'entries') + '/' + entry.id + '?course=' + encodeURIComponent(entry.course), {
    method: 'POST', body: form, headers, redirect: 'manual', signal: AbortSignal.timeout(PATIENCE),
  });
  checkSignedIn(answer);
  if (answer.ok) {
    const kept = await answer.json();
    if (kept.id !== entry.id) { throw failed('trouble'); } // somebody answered, and it was not the office
    await noteEntry(entry.id, {state: 'sent', remarks: kept.remarks ?? []});
    return;
  }
  // What the office says in words will not be taken at the next try either, and must not keep back what comes after it.
  const why = answer.status < 500 ? await told(answer) : null;
  // What somebody else wrote waits until that person is signed in.
  if (!why?.error || why.problem === 'problem.round.byAnother') { throw failed('trouble'); }
  await noteEntry(entry.id, {state: 'refused', told: why});
}

const waiting = async () => (await entries()).filter(entry => entry.state === 'waiting');

// Of those, what whoever is signed in wrote.
const mine = async () => (await waiting()).filter(({says}) => !says.by || says.by === line.person);

async function round() {
  if ((await waiting()).length > 0) { greet(await ask('/round/who')); }
  let next = (await mine())[0];
  while (next) {
    await send(next);
    heard();
    next = (await mine())[0]; // also what was written down meanwhile
  }
  line.state = '';
  pause = FIRST_PAUSE;
}

// Of several windows one sends at a time; where a browser knows no such lock, the number of each entry is enough.
const alone = work => navigator.locks ? navigator.locks.request('cupwright-round-sends', work) : work();

async function attempt() {
  clearTimeout(timer);
  try {
    await alone(round);
  } catch (failure) {
    line.state = stateOf(failure);
    timer = setTimeout(sendNow, pause);
    pause = Math.min(2 * pause, LONGEST_PAUSE);
  }
  heard();
}

// One try at a time; who asks meanwhile is heard right after it.
export async function sendNow() {
  again = true;
  if (sending) { return; }
  sending = true;
  while (again) {
    again = false;
    await attempt();
  }
  sending = false;
}
