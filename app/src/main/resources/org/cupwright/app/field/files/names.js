// The names on a shared phone, the PIN of the one that is chosen, and whose entries wait for whom.
'use strict';

import {button, el, say} from './parts.js';
import {ask, line, post, sendNow} from './sent.js';
import {page} from './state.js';
import {choose, learn, who, writer} from './who.js';
import {refresh} from './writing.js';

// What became of the last PIN, in words.
let said = '';

// Learns whether this phone is a shared one, also where nobody is signed in.
export async function meet() {
  try { learn(await ask('/round/phone')); } catch { return; }
  await refresh();
}

export function names(load) {
  return el('section', {class: 'who', 'aria-labelledby': 'who'},
      el('h2', {id: 'who'}, say('round.who.title')),
      who.shared ? shared(load) : own(),
      waits());
}

function own() {
  return [who.signedIn && el('p', null, say('round.who.writes', who.signedIn)),
    who.mayShare && line.mark && el('details', null, el('summary', null, say('round.who.share')),
        el('p', null, say('round.who.shareSays')),
        el('form', {method: 'post', action: '/round/share'},
            el('input', {type: 'hidden', name: '_csrf', value: line.mark.value}),
            el('button', null, say('round.who.share'))))];
}

function shared(load) {
  const name = who.chosen;
  return [who.names.length === 0 && el('p', null, say('round.who.none')),
    el('div', {class: 'names', role: 'group', 'aria-labelledby': 'who'}, who.names.map(one =>
        button(one, () => pick(one), one === name ? 'chosen' : null, {'aria-pressed': String(one === name)}))),
    el('p', {role: 'status'}, name ? say('round.who.writes', name) : say('round.who.nobody')),
    name && name !== line.person && pin(name, load),
    said && el('p', {class: 'problem', role: 'alert'}, said)];
}

async function pick(name) {
  choose(name);
  said = '';
  await refresh();
  sendNow();
}

function pin(name, load) {
  const field = el('input', {id: 'pin', type: 'password', inputmode: 'numeric', pattern: '[0-9]{4,6}', maxlength: 6,
    autocomplete: 'off', required: true, size: 6});
  return el('form', {class: 'pin', onsubmit: event => {
    event.preventDefault();
    const typed = field.value;
    field.value = '';
    enter(name, typed, load);
  }}, el('label', {for: 'pin'}, say('round.who.pin', name)), field, el('button', {class: 'main'}, say('round.signIn')),
  line.state === 'offline' && el('p', {class: 'hint'}, say('round.who.noSignal', name)));
}

async function enter(name, typed, load) {
  try {
    const found = await ask('/round/phone');
    learn(found);
    const answer = await post('/round/pin', new URLSearchParams({name, pin: typed}), found);
    said = {in: '', refused: say('round.who.refused', name), hasToWait: say('round.who.wait', answer.seconds),
      notShared: say('round.who.closed')}[answer.came];
    if (answer.came === 'in') {
      sendNow();
      await load();
      return;
    }
    if (answer.came === 'notShared') { line.person = null; }
  } catch { said = say('round.who.noSignal', name); }
  await refresh();
}

// Entries of those who are not signed in are sent when they are; the others go on.
function waits() {
  const here = who.shared ? line.person : who.signedIn;
  if (who.shared && line.state === 'offline') { return []; }
  const counts = new Map();
  page.kept.filter(entry => entry.state === 'waiting' && entry.says.by && entry.says.by !== here)
      .forEach(entry => counts.set(entry.says.by, (counts.get(entry.says.by) ?? 0) + 1));
  const key = who.shared ? 'round.who.waits.' : 'round.who.waitsOwn.';
  return [...counts].map(([name, count]) =>
      el('p', {class: 'waits'}, say(key + (count === 1 ? 'one' : 'many'), name, count)));
}

export const asWhom = () => who.shared && el('p', {class: 'writer'},
    writer() ? say('round.who.writes', writer()) : say('round.who.nobody'));
