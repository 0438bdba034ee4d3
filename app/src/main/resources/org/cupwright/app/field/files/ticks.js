// Before leaving the shed: what to load, ticked as it lies on the cart, and kept for that day. Nothing of it is sent.
'use strict';

import {choose, chosen, forgetOthers} from './choices.js';
import {ownFlags} from './order.js';
import {el, list, say} from './parts.js';
import {page} from './state.js';

const TICKED = 'ticked ';
const CUTTER = 'cutter';

const ofDay = () => TICKED + page.day.course + ' ' + page.day.date;

export function beforeLeaving() {
  const day = page.day;
  const far = el('p', {id: 'ticked', role: 'status'}, howFar());
  const row = text => el('label', {class: 'tick'}, el('input', {type: 'checkbox', id: 'tick-' + encodeURIComponent(text),
    checked: chosen(ofDay(), []).includes(text), onchange: event => {
      const others = chosen(ofDay(), []).filter(one => one !== text);
      choose(ofDay(), event.target.checked ? [...others, text] : others);
      forgetOthers(TICKED, ofDay());
      far.textContent = howFar();
    }}), text);
  return el('details', {class: 'shed'}, el('summary', null, say('sheet.card.before')), far,
      el('h2', null, say('sheet.card.load')), day.flags.map(row), ownFlags(),
      el('h2', null, say('round.tools')), day.ticks.map(row),
      day.mayRecord && [el('label', {for: 'cutter'}, say('round.cutter')),
        el('input', {id: 'cutter', value: carried(), maxlength: 24, 'aria-describedby': 'cutter-hint',
          onchange: event => choose(CUTTER, event.target.value.trim())}),
        el('p', {id: 'cutter-hint', class: 'hint'}, say('round.cutter.hint'))],
      list(day.answers), day.ring && el('p', null, day.ring));
}

// The cutter that goes round with this phone; empty while nobody says.
export const carried = () => chosen(CUTTER, '');

function howFar() {
  const all = [...page.day.flags, ...page.day.ticks];
  return say('round.ticked', all.filter(one => chosen(ofDay(), []).includes(one)).length, all.length);
}
