// In which order the holes are gone to: first those of whoever carries the phone, then others'. All of them stay open.
'use strict';

import {button, el, list, say} from './parts.js';
import {allHoles, became, page} from './state.js';
import {refresh} from './writing.js';

const MINE_ALONE = 'cupwright-round-mine-alone';

const isMine = hole => hole.person === page.day.person;

const shared = () => (page.day.people ?? []).some(one => one.person === page.day.person);

// A phone that keeps nothing shows all holes.
function mineAlone() {
  try { return localStorage.getItem(MINE_ALONE) === 'yes'; } catch { return false; }
}

async function choose(alone) {
  try { localStorage.setItem(MINE_ALONE, alone ? 'yes' : 'no'); } catch { return; }
  await refresh();
}

// What is told of the round before its holes.
export const roundSays = () => list(page.day.round, 'starts');

export function ownFlags() {
  const own = (page.day.people ?? []).find(one => one.person === page.day.person);
  return own && el('p', {class: 'own'}, say('round.order.yourFlags') + ' ' + own.flags.join(' · '));
}

const rows = (holes, row) => el('ol', {class: 'greens'}, holes.map(row));

const titled = parts => parts.filter(part => part.holes.length > 0);

// The holes in parts, each with what stands over it. Where the one who looks has holes, they are a part of their own.
export function inOrder(row) {
  const parts = page.day.parts;
  if (!shared()) {
    return parts.map(part => [part.title && el('h2', null, part.title), rows(part.holes, row)]);
  }
  const mine = parts.flatMap(part => part.holes.filter(isMine));
  const others = titled(parts.map(part => ({...part, holes: part.holes.filter(hole => !isMine(hole))})));
  const alone = mineAlone();
  const pick = (only, word) => button(say(word), () => choose(only), alone === only ? 'main' : null,
      {'aria-pressed': String(alone === only), id: only ? 'mine-alone' : 'all-holes'});
  return [
    el('p', {class: 'do'}, pick(true, 'round.order.mine'), pick(false, 'round.order.all')),
    el('h2', null, say('round.order.yours')), rows(mine, row),
    !alone && others.length > 0 && el('section', {class: 'others'}, el('h2', null, say('round.order.ofOthers')),
        others.flatMap(part => [part.title && el('h3', null, part.title), rows(part.holes, row)])),
  ];
}

// Who has a hole, and by when it is to be ready.
export const byWhom = hole => [hole.who, hole.cutBy].filter(Boolean).join(' · ');

// Where to go from a hole: the next of one's own that is not done, from there on and then from the beginning.
export function nextFrom(hole) {
  const all = allHoles();
  const own = shared() ? all.filter(isMine) : all;
  const at = all.findIndex(one => one.hole === hole.hole);
  const ahead = own.filter(one => all.indexOf(one) > at);
  const passed = own.filter(one => all.indexOf(one) < at && one.cutToday);
  return [...ahead, ...passed].find(one => !became(one));
}

export const allOwnDone = () => shared()
    && allHoles().filter(hole => isMine(hole) && hole.cutToday).every(hole => became(hole));
