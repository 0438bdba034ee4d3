// What is on this phone alone, and what the office did not take.
'use strict';

import {dropEntry} from './kept.js';
import {button, el, say} from './parts.js';
import {line, sendNow} from './sent.js';
import {page} from './state.js';
import {who} from './who.js';
import {refresh} from './writing.js';

export function standing() {
  const waiting = page.kept.filter(entry => entry.state === 'waiting').length;
  const refused = page.kept.filter(entry => entry.state === 'refused');
  return el('section', {class: 'unsent', 'aria-live': 'polite'},
      !page.storage.keeps && el('p', {class: 'problem'}, say('round.keepsNothing')),
      page.problem && el('p', {class: 'problem'}, page.problem),
      el('p', {id: 'unsent'}, waiting === 0 ? say('round.unsent.none')
          : waiting === 1 ? say('round.unsent.one') : say('round.unsent.many', waiting)),
      line.state === 'signedOut' && !who.shared && el('p', null, say('round.signedOut') + ' ',
          el('a', {class: 'button', href: '/round/again'}, say('round.signIn'))),
      line.state === 'offline' && el('p', null, say('round.offline')),
      refused.map(entry => el('p', {class: 'problem'},
          entry.says.hole
              ? say('round.notTaken', entry.says.hole, entry.told?.error ?? '')
              : say('round.notTaken.whole', entry.told?.error ?? ''), ' ', entry.told?.tryThis ?? '', ' ',
          button(say('round.forget'), () => forget(entry.id), 'plain'))),
      waiting > 0 && el('p', {class: 'do'}, button(say('round.send'), sendNow),
          button(say('round.saveFile'), saveFile)));
}

async function forget(id) {
  await dropEntry(id);
  await refresh();
}

// The last resort: what is not sent, as a file that somebody can hand in.
function saveFile() {
  const waiting = page.kept.filter(entry => entry.state !== 'sent').map(entry => ({id: entry.id, ...entry.says}));
  const file = new Blob([JSON.stringify(waiting, null, 2)], {type: 'application/json'});
  const link = el('a', {href: URL.createObjectURL(file), download: 'round-' + page.day.date + '.json'});
  link.click();
  URL.revokeObjectURL(link.href);
}
