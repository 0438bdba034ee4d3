// Sends what waits, one after another in the order in which it was written down, and each once: an entry has its own
// number, and the office keeps a number once however often it comes.
'use strict';

import {entries, keepEntry} from './kept.js';
import {learn} from './who.js';

const FIRST_PAUSE = 2000; // ms, doubled at every try that fails: our choice
const LONGEST_PAUSE = 60000;
const PATIENCE = 20000;

// Says that a part of a page asks: whoever is signed out is told so, and not led away.
const PART = {'HX-Request': 'true'};

// What became of the last try: '', 'offline' or 'signedOut'; and who is known to be signed in.
export const line = {state: '', mark: null, clockBehind: 0, person: null};

let pause = FIRST_PAUSE;
let timer = null;
let heard = () => {};

export function tell(listener) { heard = listener; }

export async function ask(path, patience = PATIENCE) {
  const answer = await fetch(path, {headers: PART, redirect: 'manual', cache: 'no-store', signal: AbortSignal.timeout(patience)});
  if (answer.type === 'opaqueredirect' || answer.status === 401) {
    line.person = null;
    throw Object.assign(new Error('signed out'), {signedOut: true});
  }
  if (!answer.ok) {
    throw Object.assign(new Error('status ' + answer.status), {told: await told(answer)});
  }
  return answer.json();
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
  line.clockBehind = Date.parse(from.now ?? from.loadedAt) - Date.now();
}

async function send(entry) {
  const form = new FormData();
  form.append('entry', JSON.stringify(entry.says));
  if (entry.photo) { form.append('photo', entry.photo, 'photo.jpg'); }
  const headers = line.mark ? {...PART, [line.mark.name]: line.mark.value} : PART;
  const answer = await fetch('/round/' + (entry.to ?? 'entries') + '/' + entry.id + '?course=' + encodeURIComponent(entry.course), {
    method: 'POST', body: form, headers, redirect: 'manual', signal: AbortSignal.timeout(PATIENCE),
  });
  if (answer.ok) {
    const kept = await answer.json();
    await keepEntry({...entry, state: 'sent', remarks: kept.remarks ?? []});
    return;
  }
  // What the office says in words will not be taken at the next try either, and must not keep back what comes after it.
  const why = answer.status < 500 ? await told(answer) : null;
  // What somebody else wrote waits until that person is signed in.
  if (!why?.error || why.problem === 'problem.round.byAnother') { throw new Error('not taken'); }
  await keepEntry({...entry, state: 'refused', told: why});
}

async function round() {
  const waiting = (await entries()).filter(entry => entry.state === 'waiting');
  if (waiting.length > 0) { greet(await ask('/round/who')); }
  for (const entry of waiting.filter(entry => !entry.says.by || entry.says.by === line.person)) {
    await send(entry);
    heard();
  }
  line.state = '';
  pause = FIRST_PAUSE;
}

// Of several windows one sends at a time; where a browser knows no such lock, the number of each entry is enough.
const alone = work => navigator.locks ? navigator.locks.request('cupwright-round-sends', work) : work();

export async function sendNow() {
  clearTimeout(timer);
  try {
    await alone(round);
  } catch (failed) {
    line.state = failed.signedOut ? 'signedOut' : 'offline';
    timer = setTimeout(sendNow, pause);
    pause = Math.min(2 * pause, LONGEST_PAUSE);
  }
  heard();
}
