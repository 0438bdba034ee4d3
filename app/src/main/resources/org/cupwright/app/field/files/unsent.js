// What is on this phone alone, what became of each entry, and what the office did not take.
'use strict';

import {outdated} from './age.js';
import {dropEntry, noteEntry} from './kept.js';
import {button, el, say, time} from './parts.js';
import {line, sendNow} from './sent.js';
import {page} from './state.js';
import {who} from './who.js';
import {refresh} from './writing.js';

export function standing() {
  const waiting = page.kept.filter(entry => entry.state === 'waiting').length;
  const refused = page.kept.filter(entry => entry.state === 'refused');
  const old = page.day ? outdated(page.day) : '';
  return el('section', {class: 'unsent', 'aria-live': 'polite'},
      old && el('p', {class: 'another'}, old),
      !page.storage.keeps && el('p', {class: 'problem'}, say('round.keepsNothing')),
      page.problem && el('p', {class: 'problem'}, page.problem),
      el('p', {id: 'unsent'}, waiting === 0 ? say('round.unsent.none')
          : waiting === 1 ? say('round.unsent.one') : say('round.unsent.many', waiting)),
      line.state === 'signedOut' && !who.shared && el('p', null, say('round.signedOut') + ' ',
          el('a', {class: 'button', href: '/round/again'}, say('round.signIn'))),
      line.state === 'offline' && el('p', null, say('round.offline')),
      line.state === 'trouble' && el('p', null, say('round.trouble')),
      refused.map(entry => el('p', {class: 'problem'},
          entry.says.hole
              ? say('round.notTaken', entry.says.hole, entry.told?.error ?? '')
              : say('round.notTaken.whole', entry.told?.error ?? ''), ' ', entry.told?.tryThis ?? '', ' ',
          button(say('round.tryAgain'), () => tryAgain(entry.id), 'plain'), ' ',
          button(say('round.forget'), () => forget(entry.id), 'plain'))),
      waiting > 0 && el('p', {class: 'do'}, button(say('round.send'), sendNow)),
      waiting + refused.length > 0 && el('p', {class: 'do'}, button(say('round.saveFile'), saveFile)),
      page.kept.length > 0 && el('details', null, el('summary', null, say('round.entries')),
          el('ol', {class: 'entries', reversed: true}, page.kept.toReversed().map(row))));
}

// What became of one entry, the latest first.
function row(entry) {
  const {says} = entry;
  const what = entry.to ? say('round.learn.title') : says.asPlanned ? say('round.asPlanned') : say('log.kind.' + says.kind);
  return el('li', {'data-entry': entry.id, 'data-state': entry.state},
      el('b', null, time(says.at)), ' ', says.hole ? say('round.hole', says.hole) + ' · ' : '', what,
      says.parts?.text ? ': ' + says.parts.text : '', ' · ', say('round.' + entry.state));
}

async function forget(id) {
  await dropEntry(id);
  await refresh();
}

async function tryAgain(id) {
  await noteEntry(id, {state: 'waiting', told: null});
  await refresh();
  sendNow();
}

const asText = photo => new Promise(read => {
  const reader = new FileReader();
  reader.onload = () => read(reader.result.replace(/^[^,]*,/, ''));
  reader.readAsDataURL(photo);
});

// The last resort: what is not sent, as a file that somebody can hand in. It stays here as well, and counts once.
async function saveFile() {
  const waiting = page.kept.filter(entry => entry.state !== 'sent');
  const written = await Promise.all(waiting.map(async ({id, course, to, says, photo}) =>
      ({id, course, to, says, photo: photo ? await asText(photo) : undefined})));
  const file = new Blob([JSON.stringify({round: 1, entries: written}, null, 2)], {type: 'application/json'});
  const link = el('a', {href: URL.createObjectURL(file), download: 'round-' + new Date().toLocaleDateString('sv') + '.json'});
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000); // some browsers fetch it later
}
