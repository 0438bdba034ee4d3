// The round: what to know first, what to take along, and the greens in the order in which they are gone to.
'use strict';

import {loaded} from './age.js';
import {eventNote, learning} from './learning.js';
import {names} from './names.js';
import {button, el, list, say} from './parts.js';
import {byWhom, inOrder, roundSays} from './order.js';
import {became, page} from './state.js';
import {stopRemark} from './stop.js';
import {beforeLeaving} from './ticks.js';
import {standing} from './unsent.js';

export function roundView(load) {
  const day = page.day;
  return [
    el('h1', {tabindex: -1}, day.title),
    el('p', {class: 'speed'}, day.courseName + ' · ' + loaded(day) + ' ',
        button(say('round.loadAgain'), load, 'plain', {disabled: page.loading})),
    day.first.length > 0 && el('section', {class: 'first'}, el('h2', null, say('first.title')), list(day.first)),
    eventNote(),
    names(load),
    standing(),
    roundSays(),
    day.parts.length === 0 && el('p', null, say('round.noPlan')),
    day.parts.length > 0 && stopRemark(),
    day.parts.length > 0 && beforeLeaving(),
    inOrder(row),
    learning(),
    day.parts.length > 0 && el('section', null, el('h2', null, say('sheet.caution.title')), list(day.cautions, 'cautions')),
  ];
}

function row(hole) {
  const done = became(hole);
  return el('li', {class: done ? 'done' : null},
      el('a', {href: '#' + encodeURIComponent(hole.hole)}, el('b', null, hole.hole), ' ',
          el('span', {class: 'spot'}, el('span', {class: 'where'}, hole.where), ' ',
              hole.paces && el('span', {class: 'paces'}, hole.paces)), ' ',
          hole.flag && el('span', {class: 'flag'}, hole.flag), ' ',
          byWhom(hole) && el('span', {class: 'by'}, byWhom(hole)), ' ',
          hole.notices.length > 0 && el('span', {class: 'warned'}, hole.notices[0]), ' ',
          done && el('span', {class: 'became'}, done)));
}
