// A ball rolled by hand over the spot: what it does there beats what was worked out.
'use strict';

import {asEntry, chosen, rules} from './chosen.js';
import {button, choice, el, list, say} from './parts.js';
import {became, ofHole, page} from './state.js';
import {write} from './writing.js';

const WAYS = ['front', 'back', 'left', 'right'];

export function rollBall(hole) {
  if (!hole.ground || !hole.cutToday || !page.day.mayRecord || became(hole)) { return null; }
  const place = asEntry({at: (chosen(hole) ?? {at: hole.ground.spot}).at});
  const rolled = ofHole(hole.hole).map(entry => entry.says).filter(says => says.rolled && says.place === place);
  const way = choice('roll-way', say('round.roll.way'), WAYS.map(one => [one, say('round.roll.' + one)]));
  const ended = (how, text) => button(text, () => write(hole, {kind: 'rolledByHand', place,
    parts: {stopped: how === 'ran' ? 'no' : 'yes'}, rolled: {way: way.value(), how}}), 'wide', {id: 'roll-' + how});
  return el('section', {class: 'rolled'}, rolled.length > 0 && el('div', {role: 'status'},
      list(rolled.map(({rolled: {way: towards, how}}) => say('round.roll.said.' + how, say('round.roll.' + towards)))),
      el('p', {class: 'advice'}, advice(rolled.map(says => says.rolled)))),
  el('details', null, el('summary', null, say('round.roll')), el('p', null, say('round.roll.as', rules().past)), way.field,
      ended('stopped', say('round.roll.stopped', rules().holds)), ended('near', say('round.roll.near', rules().holdsWithCare)),
      ended('ran', say('round.roll.ran'))));
}

// What the balls that were rolled here come to.
function advice(balls) {
  if (balls.some(ball => ball.how === 'ran')) { return say('round.roll.another'); }
  if (balls.some(ball => ball.how === 'near')) { return say('round.roll.care'); }
  return WAYS.every(way => balls.some(ball => ball.way === way)) ? say('round.roll.good') : say('round.roll.more');
}
