// A learner's round: whom one has along, what is ticked on a green, and what is practised beside it. Ticks and results
// are written down as everything else is; the count of an exercise that goes on is of this phone alone.
'use strict';

import {button, el, list, say, time} from './parts.js';
import {ofHole, page} from './state.js';
import {refresh, write} from './writing.js';

const ALONG = 'cupwright-along';
const TO = 'training';

// Of a day and of whoever is signed in; what lies there of another counts for nothing.
function along() {
  try {
    const kept = JSON.parse(localStorage.getItem(ALONG));
    if (kept?.day === page.day.date && kept.person === page.day.person) { return kept; }
  } catch { /* a phone that keeps nothing says so already */ }
  return {day: page.day.date, person: page.day.person, learner: '', rows: {}};
}

async function keep(kept) {
  try { localStorage.setItem(ALONG, JSON.stringify(kept)); } catch { page.problem = say('round.keepsNothing'); }
  await refresh();
}

const training = () => page.day.training;

export const eventNote = () => training()?.event &&
    el('p', {class: 'event'}, training().event.says, training().event.own && ' ', training().event.own);

// In the shed: one's own steps, whom one takes along, exercises.
export function learning() {
  if (!training()) { return null; }
  return el('details', {class: 'learning'}, el('summary', null, say('round.learn.title')),
      el('p', null, training().caution),
      training().maySign && whom(),
      page.day.mayRecord && [el('h2', null, say('round.learn.practice')), ...training().exercises.map(exercise)],
      el('h2', null, say('round.learn.own')),
      el('dl', null, training().steps.flatMap(step =>
          [el('dt', null, step.name), el('dd', null, step.stands + '. ' + step.takes)])));
}

function whom() {
  const kept = along();
  const names = training().learners.map(one => one.name);
  if (kept.learner && !names.includes(kept.learner)) { names.push(kept.learner); }
  const take = learner => keep({...kept, learner, rows: {}});
  // Without an id: what was chosen here is what is kept, not what stood in the field before.
  const select = el('select', {onchange: event => take(event.target.value)},
      ['', ...names].map(name => el('option', {value: name, selected: name === kept.learner}, name || say('round.learn.nobody'))));
  const other = el('input', {id: 'learner-other', required: true, maxlength: 60, autocomplete: 'off'});
  return [el('label', {class: 'whom'}, say('round.learn.along'), select),
    el('details', null, el('summary', null, say('round.learn.other')), el('form', {onsubmit: event => {
      event.preventDefault();
      take(other.value.trim());
    }}, el('label', {for: 'learner-other'}, say('round.learn.name')), other, el('button', {class: 'main'}, say('round.learn.take'))))];
}

function exercise(one) {
  const kept = along();
  const row = kept.rows[one.id] ?? {now: 0, best: 0};
  const counted = next => next.now >= one.goal ? result(one, kept, next) : keep({...kept, rows: {...kept.rows, [one.id]: next}});
  const last = page.kept.filter(entry => entry.to === TO && entry.says.exercise === one.id &&
      entry.says.day === page.day.date && (entry.says.learner ?? '') === kept.learner).at(-1);
  return el('section', {class: 'exercise', 'aria-label': one.name}, el('h3', null, one.name),
      el('p', {class: 'big', role: 'status'}, say('round.learn.row', row.now, one.goal)),
      el('p', {class: 'taps'},
          button(one.yes, () => counted({now: row.now + 1, best: Math.max(row.best, row.now + 1)}), 'main', {id: 'yes-' + one.id}),
          button(one.no, () => counted({now: 0, best: row.best}), null, {id: 'no-' + one.id})),
      row.best > 0 && button(say('round.learn.keep', row.best), () => result(one, kept, row), 'plain', {id: 'keep-' + one.id}),
      last && el('p', {class: 'state'}, say('round.learn.result', last.says.best, last.says.last, time(last.says.at)) +
          ' · ' + say('round.' + last.state)));
}

async function result(one, kept, row) {
  await keep({...kept, rows: {...kept.rows, [one.id]: undefined}});
  await write({}, {kind: 'practised', learner: kept.learner || undefined, exercise: one.id, best: row.best, last: row.now}, null, TO);
}

// On a green, where somebody is along: each step, and how it went.
export function learner(hole) {
  const name = training()?.maySign ? along().learner : '';
  if (!name) { return eventNote(); }
  const signed = training().learners.find(one => one.name === name)?.signed ?? [];
  const steps = training().steps.filter(step => step.id !== 'eventHoles' || training().event);
  return [eventNote(), el('section', {class: 'learner'}, el('h2', null, say('round.learn.with', name)),
      steps.map(step => el('div', {class: 'step', role: 'group', 'aria-label': step.name},
          el('p', null, el('b', null, step.name), signed.includes(step.id) && ' · ' + say('round.learn.signed')),
          el('p', {class: 'taps'}, training().how.map(how => tick(hole, name, step, how))))),
      list(notSent(hole, name)))];
}

const ticks = (hole, name) => ofHole(hole.hole).filter(entry => entry.says.kind === 'done' && entry.says.learner === name);

function tick(hole, name, step, how) {
  const said = ticks(hole, name).filter(entry => entry.says.skill === step.id).at(-1)?.says.how;
  return button((said === how.id ? '✓ ' : '') + how.name, () => said !== how.id && write(hole, {kind: 'done', learner: name, skill: step.id, how: how.id}, null, TO),
      said === how.id ? 'chosen' : null, {'aria-pressed': String(said === how.id), id: 'tick-' + step.id + '-' + how.id});
}

function notSent(hole, name) {
  const waiting = ticks(hole, name).filter(entry => entry.state === 'waiting').length;
  return waiting > 0 ? [say('round.learn.waiting', waiting)] : [];
}
