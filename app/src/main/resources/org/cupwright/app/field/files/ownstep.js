// Somebody's own step: walked once over a known way, and kept on this phone alone, under their name.
'use strict';

import {length, unit} from './lengths.js';
import {stepOf, toGo} from './measures.js';
import {button, choice, el, number, say} from './parts.js';
import {page} from './state.js';
import {refresh} from './writing.js';

const USUAL = {metres: 20, feet: 60}; // a way to walk: our choice
const SHORTEST = 12; // m, between marks

const key = () => 'cupwright-step-' + page.day.person;

let wrong = '';

// m; null as long as nobody walked it. A phone that keeps nothing asks again.
export function ownStep() {
  try { return Number(localStorage.getItem(key())) || null; } catch { return null; }
}

function keep(step) {
  try {
    if (step) { localStorage.setItem(key(), step.toFixed(4)); } else { localStorage.removeItem(key()); }
    wrong = '';
  } catch { wrong = say('round.keepsNothing'); }
  refresh();
}

function ways(hole) {
  const usual = page.day.feet ? USUAL.feet * unit() : USUAL.metres;
  const marks = hole.way.marks;
  const between = marks.flatMap(([name, x, y], i) => marks.slice(i + 1).map(([other, u, v]) => {
    const {ahead, right} = toGo([x, y], [u, v]);
    return [Math.hypot(ahead, right), name, other];
  })).filter(([metres]) => metres >= SHORTEST).sort((one, other) => one[0] - other[0]);
  return [[usual, say('round.find.step.measured', length(usual, 0))],
    ...between.map(([metres, name, other]) => [metres, say('round.find.step.between', name, other, length(metres, 1))])];
}

export function stepForm(hole) {
  const way = choice('step-way', say('round.find.step.way'), ways(hole));
  const steps = number('step-count', say('round.find.step.count'));
  const own = ownStep();
  return el('details', null, el('summary', null, say('round.find.step')),
      el('p', null, say('round.find.step.why')),
      own && el('p', {id: 'own-step', class: 'state'},
          say('round.find.step.is', length(own, 2), length(page.day.paceMetres, 2)), ' ',
          button(say('round.find.step.forget'), () => keep(null), 'plain')),
      el('form', {onsubmit: event => {
        event.preventDefault();
        const step = stepOf(Number(way.value()), Number(steps.value()));
        if (step) { keep(step); return; }
        wrong = say('round.find.step.wrong', length(Number(way.value()) / Number(steps.value()), 2));
        refresh();
      }}, way.field, steps.field,
      wrong && el('p', {class: 'problem', role: 'alert'}, wrong), el('button', {class: 'main'}, say('round.keep'))));
}
