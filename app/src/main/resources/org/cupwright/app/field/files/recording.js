// How it went, in as few taps as can be.
'use strict';

import {cutHere} from './nothere.js';
import {button, choice, el, number, say} from './parts.js';
import {page} from './state.js';
import {carried} from './ticks.js';
import {write} from './writing.js';

export function recording(hole) {
  const soil = choice('soil', say('sheet.card.soil'), [['', '–'], ['none', say('sheet.card.soil.none')],
    ['put-in', say('sheet.card.soil.in')], ['took-out', say('sheet.card.soil.out')]]);
  const ragged = el('input', {type: 'checkbox', id: 'ragged'});
  const parts = () => Object.fromEntries([['soil', soil.value()], ['edgeRagged', ragged.checked ? 'yes' : ''],
    ['cutter', carried()], ['way', page.day.way === 'onePiece' ? '' : page.day.way]].filter(([, said]) => said));
  const on = number('on', say('round.on'));
  const side = choice('side', say('round.side'), [['L', say('round.side.left')], ['R', say('round.side.right')]]);
  const from = number('from', say('round.from'));
  const elsewhere = el('details', {class: 'elsewhere'}, el('summary', null, say('round.elsewhere')),
      el('form', {onsubmit: event => {
        event.preventDefault();
        write(hole, {kind: 'cupChanged', place: `${on.value()},${side.value()}${from.value()}`, parts: parts()});
      }}, on.field, side.field, from.field, el('button', {class: 'main'}, say('round.keep'))));
  const instead = cutHere(hole, parts);
  return el('section', {class: 'record'}, instead,
      button(say('round.asPlanned'), () => write(hole, {kind: 'cupChanged', asPlanned: true, parts: parts()}),
          instead ? 'wide' : 'main wide', {id: 'as-planned'}),
      soil.field, el('label', {class: 'tick'}, ragged, say('round.ragged')), elsewhere,
      button(say('round.left'), () => write(hole, {kind: 'leftInOldHole', parts: {}}), 'wide'));
}
