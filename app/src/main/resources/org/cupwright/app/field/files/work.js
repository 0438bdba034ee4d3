// The hand work on one green, in the order in which it is done: a list that opens one step after another, or all at once.
// How far somebody is with it is written down nowhere.
'use strict';

import {choose, chosen} from './choices.js';
import {picture} from './drawings.js';
import {button, el, list, say} from './parts.js';
import {page} from './state.js';

const ALL = 'work.all';
const OPEN = 'work.open';

// Which step is open, of which hole; none: every step is shut.
const now = {hole: null, step: 0};

export function handWork(hole) {
  if (!page.day.work) { return null; } // a day that was loaded by an earlier page
  if (now.hole !== hole.hole) { Object.assign(now, {hole: hole.hole, step: 0}); }
  const steps = el('div', {class: 'steps-of-work'});
  draw(steps);
  const whole = el('details', {class: 'work', open: chosen(OPEN, false)},
      el('summary', {onclick: () => choose(OPEN, !whole.open)}, say('sheet.work.title')),
      steps, list(page.day.cautions, 'cautions'));
  return whole;
}

function draw(steps) {
  const all = chosen(ALL, false);
  steps.replaceChildren(
      button(say(all ? 'round.work.one' : 'round.work.all'), () => {
        choose(ALL, !all);
        draw(steps);
        document.getElementById('work-way').focus();
      }, '', {id: 'work-way'}),
      el('ol', null, page.day.work.map((step, i) => all ? whole(step) : oneOfMany(step, i, steps))));
}

const whole = step => el('li', null, el('p', {class: 'says'}, step.says), details(step));

function oneOfMany(step, i, steps) {
  const open = now.step === i;
  return el('li', {class: open ? 'open' : null},
      button(step.says, () => go(open ? -1 : i, i, steps), 'says', {id: 'step' + i, 'aria-expanded': String(open)}),
      open && details(step), open && onwards(i, steps));
}

const details = step => [
  el('figure', null, picture(step.drawing)),
  list(step.answers, 'answers'),
  ...step.ifs.map(one => el('p', {class: 'if'}, el('b', null, one.when), ' ', one.then)),
];

function onwards(i, steps) {
  const next = i + 1;
  return next < page.day.work.length && button(say('round.work.next', next + 1, page.day.work.length),
      () => go(next, next, steps), 'wide', {id: 'next-step'});
}

// Opens a step, or none, and goes on from one that is seen.
function go(step, from, steps) {
  now.step = step;
  draw(steps);
  const to = document.getElementById('step' + from);
  to.focus({preventScroll: true});
  to.scrollIntoView({block: 'start'});
}
