// Plugs of one green that want water or a look, for whoever passes by: a tap writes it down.
'use strict';

import {button, el, say, time} from './parts.js';
import {change, ofHole, page} from './state.js';
import {write} from './writing.js';

const LOOKS = ['level', 'high', 'low', 'damaged', 'knit'];

export function plugs(hole) {
  const all = [...fresh(hole), ...(hole.plugs ?? [])];
  return all.length > 0 && el('section', {class: 'plugs'}, el('h2', null, say('round.plugs')),
      el('ul', null, all.map((plug, i) => row(hole, plug, i))));
}

// Where the hole was until today there is a plug from now on.
function fresh(hole) {
  const filled = hole.filledAt && hole.cutToday && change(hole.hole)?.says.kind === 'cupChanged';
  return filled ? [{place: hole.filledAt, says: say('round.plug.new'), water: true, why: []}] : [];
}

function row(hole, plug, i) {
  const written = kind => ofHole(hole.hole)
      .filter(entry => entry.says.kind === kind && entry.says.place === plug.place).at(-1);
  const water = written('plugTended');
  const look = written('plugSeen');
  return el('li', null,
      el('b', null, plug.says), plug.set && ' · ' + plug.set,
      plug.why.length > 0 && el('span', {class: 'why'}, plug.why.join(' · ')),
      page.day.mayRecord && el('div', {class: 'do', role: 'group', 'aria-label': plug.says},
          plug.water && mark(say('round.plugs.watered'), `plug${i}-watered`, water !== undefined,
              () => write(hole, {kind: 'plugTended', place: plug.place, parts: {care: 'watered'}})),
          LOOKS.map(one => mark(say('round.plugs.look.' + one), `plug${i}-${one}`, look?.says.parts.look === one,
              () => write(hole, {kind: 'plugSeen', place: plug.place, parts: {look: one}})))),
      [water, look].filter(Boolean).map(entry => el('p', {class: 'became'}, became(entry))));
}

// What is said already is not said twice.
const mark = (text, id, said, act) => button(text, () => { if (!said) { act(); } }, '', {id, 'aria-pressed': String(said)});

const became = entry => say('round.plugs.written', entry.says.kind === 'plugTended' ? say('round.plugs.watered')
    : say('round.plugs.look.' + entry.says.parts.look), time(entry.says.at)) + ' · ' + say('round.' + entry.state);
