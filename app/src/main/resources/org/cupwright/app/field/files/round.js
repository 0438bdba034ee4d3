// The changer's page: the round, one hole of it, and what is written down there. All words come from the office.
'use strict';

import {asked, dropDay, dropEntry, days, entries, keepDay, keepEntry} from './kept.js';
import {ask, greet, line, sendNow, tell} from './sent.js';

const DAY_PATIENCE = 300000; // ms: the office may have to judge eighteen greens first; our choice
const DAYS_KEPT = 3; // our choice: yesterday's may still be looked at

const main = document.getElementById('content');
let words = JSON.parse(document.getElementById('words').textContent);
let day = null;
let kept = [];
let storage = {keeps: true, safely: true};
let loading = false;
let problem = null;

const say = (key, ...values) => values.reduce((text, value, i) => text.replaceAll('{' + i + '}', value), words[key]);
const time = moment => new Date(moment).toLocaleTimeString(document.documentElement.lang,
    {hour: '2-digit', minute: '2-digit', hourCycle: 'h23'});

// An element with attributes, listeners (on…) and what is in it.
function el(tag, attributes, ...inside) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (name.startsWith('on')) { made.addEventListener(name.slice(2), value); }
    else if (value !== false && value != null) { made.setAttribute(name, value === true ? '' : value); }
  }
  made.append(...inside.flat().filter(part => part != null && part !== false && part !== ''));
  return made;
}

const list = (texts, css) => texts?.length ? el('ul', {class: css}, texts.map(text => el('li', null, text))) : null;

const button = (text, act, css, more) => el('button', {type: 'button', class: css, onclick: act, ...more}, text);

function drawing(svg) {
  return document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);
}

const allHoles = () => (day?.parts ?? []).flatMap(part => part.holes);
const ofHole = hole => kept.filter(entry =>
    entry.course === day.course && entry.says.day === day.date && entry.says.hole === hole);
const change = hole => ofHole(hole).filter(entry => ['cupChanged', 'leftInOldHole'].includes(entry.says.kind)).at(-1);

// What became of a hole, in words; empty as long as nothing was done.
function became(hole) {
  const mine = change(hole.hole);
  if (!mine) { return hole.done ?? ''; }
  const what = mine.says.kind === 'leftInOldHole' ? 'round.done.left'
      : mine.says.asPlanned ? 'round.done.cut' : 'round.done.elsewhere';
  return say(what, time(mine.says.at)) + ' · ' + say('round.' + mine.state);
}

function standing() {
  const waiting = kept.filter(entry => entry.state === 'waiting').length;
  const refused = kept.filter(entry => entry.state === 'refused');
  return el('section', {class: 'unsent', 'aria-live': 'polite'},
      !storage.keeps && el('p', {class: 'problem'}, say('round.keepsNothing')),
      problem && el('p', {class: 'problem'}, problem),
      el('p', {id: 'unsent'}, waiting === 0 ? say('round.unsent.none')
          : waiting === 1 ? say('round.unsent.one') : say('round.unsent.many', waiting)),
      line.state === 'signedOut' && el('p', null, say('round.signedOut') + ' ',
          el('a', {class: 'button', href: '/round/again'}, say('round.signIn'))),
      line.state === 'offline' && el('p', null, say('round.offline')),
      refused.map(entry => el('p', {class: 'problem'},
          say('round.notTaken', entry.says.hole ?? '', entry.told?.error ?? ''), ' ', entry.told?.tryThis ?? '', ' ',
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
  const waiting = kept.filter(entry => entry.state !== 'sent').map(entry => ({id: entry.id, ...entry.says}));
  const file = new Blob([JSON.stringify(waiting, null, 2)], {type: 'application/json'});
  const link = el('a', {href: URL.createObjectURL(file), download: 'round-' + day.date + '.json'});
  link.click();
  URL.revokeObjectURL(link.href);
}

function roundView() {
  const today = new Date().toLocaleDateString('sv'); // as 2026-05-31
  return [
    el('h1', {tabindex: -1}, day.title),
    el('p', {class: 'speed'}, day.courseName + ' · ' + say('round.loadedAt', time(day.loadedAt)) + ' ',
        button(say('round.loadAgain'), load, 'plain', {disabled: loading})),
    day.date !== today && el('p', {class: 'another'}, say('round.otherDay', day.title)),
    day.first.length > 0 && el('section', {class: 'first'}, el('h2', null, say('first.title')), list(day.first)),
    standing(),
    day.parts.length === 0 && el('p', null, say('round.noPlan')),
    day.parts.length > 0 && el('details', {class: 'shed'}, el('summary', null, say('sheet.card.before')),
        el('h2', null, say('sheet.card.load')), el('p', null, day.flags.join(' · ')),
        day.ticks.map((tick, i) => el('label', {class: 'tick'}, el('input', {type: 'checkbox', id: 'tick' + i}), tick)),
        list(day.answers), day.ring && el('p', null, day.ring)),
    day.parts.map(part => [part.title && el('h2', null, part.title),
      el('ol', {class: 'greens'}, part.holes.map(row))]),
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
          hole.notices.length > 0 && el('span', {class: 'warned'}, hole.notices[0]), ' ',
          done && el('span', {class: 'became'}, done)));
}

function holeView(hole) {
  const done = became(hole);
  return [
    el('p', {class: 'back'}, el('a', {href: '#'}, say('round.all'))),
    el('h1', {tabindex: -1}, say('round.hole', hole.hole) + ' · ' + hole.where),
    el('p', {class: 'big'}, hole.paces, hole.flag && ' · ' + hole.flag),
    el('p', null, hole.beside.join(' · ')),
    hole.room && el('p', null, hole.room),
    list(hole.notices, 'first'), list(hole.warnings, 'warnings'),
    el('p', null, hole.plug),
    done && el('p', {class: 'state', role: 'status'}, done),
    remarks(hole),
    done && following(hole),
    day.mayRecord && hole.cutToday && (done ? el('details', null, el('summary', null, say('round.again')), recording(hole))
        : recording(hole)),
    el('figure', {class: 'land'}, drawing(hole.map), el('figcaption', null, hole.key.join(' · '))),
    el('details', null, el('summary', null, say('sheet.work.title')), el('ol', null,
        day.handWork.map(step => el('li', null, step))), list(day.cautions, 'cautions')),
    day.mayRecord && oddThing(hole),
    standing(),
    !done && following(hole),
  ];
}

const remarks = hole => list(ofHole(hole.hole).flatMap(entry => entry.remarks ?? []), 'warnings');

function following(hole) {
  const all = allHoles();
  const next = all[all.findIndex(one => one.hole === hole.hole) + 1];
  return next && el('p', null, el('a', {class: 'button wide', href: '#' + encodeURIComponent(next.hole)},
      say('round.next', next.hole)));
}

function recording(hole) {
  const soil = choice('soil', say('sheet.card.soil'), [['', '–'], ['none', say('sheet.card.soil.none')],
    ['put-in', say('sheet.card.soil.in')], ['took-out', say('sheet.card.soil.out')]]);
  const parts = () => soil.value() ? {soil: soil.value()} : {};
  const on = number('on', say('round.on'));
  const side = choice('side', say('round.side'), [['L', say('round.side.left')], ['R', say('round.side.right')]]);
  const from = number('from', say('round.from'));
  const elsewhere = el('details', {class: 'elsewhere'}, el('summary', null, say('round.elsewhere')),
      el('form', {onsubmit: event => {
        event.preventDefault();
        write(hole, {kind: 'cupChanged', place: `${on.value()},${side.value()}${from.value()}`, parts: parts()});
      }}, on.field, side.field, from.field, el('button', {class: 'main'}, say('round.keep'))));
  return el('section', {class: 'record'},
      button(say('round.asPlanned'), () => write(hole, {kind: 'cupChanged', asPlanned: true, parts: parts()}),
          'main wide', {id: 'as-planned'}),
      soil.field, elsewhere,
      button(say('round.left'), () => write(hole, {kind: 'leftInOldHole', parts: {}}), 'wide'));
}

function oddThing(hole) {
  const text = el('textarea', {id: 'odd', rows: 2, required: true});
  const urgent = choice('odd-severity', say('round.odd.severity'),
      ['soon', 'note', 'now'].map(one => [one, say('round.odd.' + one)]));
  const photo = el('input', {type: 'file', id: 'odd-photo', accept: 'image/*', capture: 'environment'});
  return el('details', null, el('summary', null, say('round.odd')),
      el('form', {onsubmit: async event => {
        event.preventDefault();
        write(hole, {kind: 'somethingOdd', parts: {severity: urgent.value(), text: text.value}}, await small(photo.files[0]));
      }}, el('label', {for: 'odd'}, say('round.odd.text')), text,
      urgent.field, day.ring && el('p', null, day.ring), el('label', {for: 'odd-photo'}, say('round.odd.photo')), photo, el('button', {class: 'main'}, say('round.keep'))));
}

// A photo as small as does: drawn anew, so that nothing of what the camera wrote beside the picture goes with it.
async function small(file) {
  if (!file) { return null; }
  const picture = await createImageBitmap(file);
  const scale = Math.min(1, 1600 / Math.max(picture.width, picture.height));
  const canvas = el('canvas', {width: Math.round(picture.width * scale), height: Math.round(picture.height * scale)});
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise(made => canvas.toBlob(made, 'image/jpeg', 0.8));
}

function number(id, label) {
  const input = el('input', {id, inputmode: 'decimal', pattern: '[0-9]{1,3}([.,][0-9])?', required: true, size: 4});
  return {field: el('div', null, el('label', {for: id}, label), input), value: () => input.value.replace(',', '.')};
}

function choice(id, label, options) {
  const input = el('select', {id}, options.map(([value, text]) => el('option', {value}, text)));
  return {field: el('div', null, el('label', {for: id}, label), input), value: () => input.value};
}

// Writes something down. Only when it is on this phone's storage does the page say so.
async function write(hole, says, photo) {
  const entry = {
    id: crypto.randomUUID(), order: Date.now(), state: 'waiting', photo: photo ?? null, course: day.course,
    says: {...says, hole: hole.hole, day: day.date, at: new Date().toISOString(), clockBehind: line.clockBehind},
  };
  try {
    await keepEntry(entry);
    problem = null;
  } catch {
    problem = say('round.keepsNothing');
  }
  await refresh();
  sendNow();
}

async function load() {
  loading = true;
  await refresh();
  try {
    const found = await ask('/round/day' + location.search, DAY_PATIENCE);
    greet(found);
    delete found.mark;
    await keepDay({...found, clockBehind: line.clockBehind});
    await tidy(found.date);
    day = found;
    line.state = '';
    problem = null;
  } catch (failed) {
    line.state = failed.signedOut ? 'signedOut' : 'offline';
    problem = failed.told?.error ?? null;
  }
  loading = false;
  await refresh();
}

// Older days go, and with them what was sent; what was not stays until it is.
async function tidy(date) {
  const all = (await days()).map(one => one.date).filter(one => one !== date).sort().reverse();
  for (const old of all.slice(DAYS_KEPT - 1)) { await dropDay(old); }
  const held = new Set([date, ...all.slice(0, DAYS_KEPT - 1)]);
  for (const entry of await entries()) {
    if (entry.state === 'sent' && !held.has(entry.says.day)) { await dropEntry(entry.id); }
  }
}

async function refresh() {
  try { kept = await entries(); } catch { storage = {keeps: false, safely: false}; }
  show(false);
}

function show(moved) {
  if (day) {
    words = day.words;
    document.documentElement.lang = day.language;
  }
  main.setAttribute('aria-busy', String(loading));
  const open = [...main.querySelectorAll('details[open] > summary')].map(summary => summary.textContent);
  const typed = new Map([...main.querySelectorAll('input:not([type=file]), textarea, select')]
      .map(field => [field.id, field.type === 'checkbox' ? field.checked : field.value]));
  const focused = document.activeElement?.id;
  const hole = allHoles().find(one => one.hole === decodeURIComponent(location.hash.slice(1)));
  main.replaceChildren(...(day === null ? [el('h1', {tabindex: -1}, say('round.title')),
    el('p', null, loading ? say('round.loading') : say('round.noDay')), standing(),
    !loading && button(say('round.loadAgain'), load, 'main')] : hole ? holeView(hole) : roundView())
      .flat(2).filter(Boolean));
  if (moved) {
    window.scrollTo(0, 0);
    main.querySelector('h1').focus();
    return;
  }
  main.querySelectorAll('details').forEach(one => { one.open = open.includes(one.firstElementChild.textContent); });
  typed.forEach((value, id) => {
    const field = id && document.getElementById(id);
    if (field) { if (field.type === 'checkbox') { field.checked = value; } else { field.value = value; } }
  });
  if (focused) { document.getElementById(focused)?.focus(); }
}

async function begin() {
  storage = await asked();
  const wanted = new URLSearchParams(location.search).get('date');
  try {
    const all = (await days()).sort((one, other) => one.loadedAt < other.loadedAt ? 1 : -1);
    day = all.find(one => !wanted || one.date === wanted) ?? null;
    line.clockBehind = day?.clockBehind ?? 0;
  } catch { storage = {keeps: false, safely: false}; }
  tell(refresh);
  window.addEventListener('hashchange', () => show(true));
  window.addEventListener('online', sendNow);
  await load();
  sendNow();
}

navigator.serviceWorker?.register('/round/worker.js', {scope: '/round'}).catch(() => {});
begin();
