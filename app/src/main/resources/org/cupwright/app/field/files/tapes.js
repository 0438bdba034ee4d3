// Two tapes from two marks: what they read at the spot, how well they fix it, and where one stands who reads them.
'use strict';

import {beside, counted, length, small, unit} from './lengths.js';
import {HOLDING_95, halves, meet, onMap, pairs, place, rings, toGo} from './measures.js';
import {line, named, over, shape} from './overlay.js';
import {choice, el, number, say} from './parts.js';
import {page} from './state.js';

const SAME_EVERY_WAY = 1.1; // longer axis to shorter one: our choice
const THERE = 0.03; // m: as well as tapes are read
const HOLE = 0.054; // m: half as wide as the hole

let typed = {hole: null, pair: 0, first: '', second: ''};

// Surveyed marks where two of them do; else all, and the page says so.
function marksFor({way}) {
  const all = way.marks.map(([name, x, y, surveyed]) => ({name, at: [x, y], surveyed}));
  const found = [all.filter(one => one.surveyed), all]
      .map(marks => ({marks, pairs: pairs(way.spot, marks.map(one => one.at))}));
  return found.find(one => one.pairs.length > 0) ?? found[1];
}

export function tapes(hole, map) {
  if (hole.way.marks.length < 2) { return null; }
  if (typed.hole !== hole.hole) { typed = {hole: hole.hole, pair: 0, first: '', second: ''}; }
  const {marks, pairs: all} = marksFor(hole);
  const inside = el('div');
  const draw = open => over(map, 'tapes', open && all.length > 0 ? drawn(hole, ends(marks, all), map) : []);
  const fill = () => inside.replaceChildren(...(all.length === 0 ? [el('p', null, say('round.find.tapes.none'))]
      : content(hole, marks, all, () => { fill(); draw(true); })));
  fill();
  return el('details', {ontoggle: event => draw(event.target.open)}, el('summary', null, say('round.find.tapes')), inside);
}

const ends = (marks, all) => [marks[all[typed.pair].first], marks[all[typed.pair].second]];

function drawn({way}, two, map) {
  const spot = onMap(way.map, way.spot);
  return two.flatMap(one => [line(onMap(way.map, one.at), spot),
    named(onMap(way.map, one.at), one.name, map.viewBox.baseVal.width)]);
}

function content(hole, marks, all, again) {
  const two = ends(marks, all);
  const pair = all[typed.pair];
  const which = choice('tape-pair', say('round.find.tapes.pair'), all.map((one, i) =>
      [i, say('round.find.and', marks[one.first].name, marks[one.second].name)]));
  which.field.querySelector('select').value = typed.pair;
  which.field.addEventListener('change', () => { typed = {...typed, pair: Number(which.value()), first: '', second: ''}; again(); });
  return [
    el('p', null, say('round.find.tapes.why')),
    ...two.map((one, i) => el('p', {class: 'big reads'}, say('round.find.tapes.from', length(pair.metres[i], 2), one.name))),
    el('p', null, goodTo(pair, hole.way.played)), ellipse(pair),
    !two.every(one => one.surveyed) && el('p', {class: 'soft'}, say('round.find.tapes.heads')),
    all.length > 1 && which.field,
    readings(hole, two)].filter(Boolean);
}

// The ellipse in words: how well, and which way worst.
function goodTo({angle, longer, shorter, axis}, played) {
  const eighth = Math.round(axis / 45) % 4;
  const way = longer <= SAME_EVERY_WAY * shorter ? say('round.find.tapes.way.even')
      : played ? say('round.find.tapes.way.' + eighth) : say('round.find.tapes.north.' + eighth);
  return say('round.find.tapes.good', Math.round(angle), small(HOLDING_95 * longer), way,
      small(HOLDING_95 * shorter));
}

function ellipse({longer, shorter, axis}) {
  const reach = 1.15 * Math.max(HOLE, HOLDING_95 * longer);
  const svg = shape('svg', {viewBox: [-reach, -reach, 2 * reach, 2 * reach].join(' '), role: 'img',
    'aria-label': say('round.find.tapes.figure')});
  svg.append(shape('circle', {r: HOLE}),
      shape('ellipse', {rx: HOLDING_95 * shorter, ry: HOLDING_95 * longer, transform: `rotate(${axis})`}));
  return el('figure', {class: 'ellipse'}, svg, el('figcaption', null, say('round.find.tapes.figure')));
}

function readings(hole, two) {
  const gives = el('p', {id: 'tape-gives', class: 'state', role: 'status'});
  const fields = two.map((one, i) => number('tape-' + i, say('round.find.tapes.read', one.name,
      say(page.day.feet ? 'round.find.unit.feet' : 'round.find.unit.metres')), 2));
  const tell = () => { gives.textContent = standing(hole, two); };
  fields.forEach((field, i) => {
    const name = ['first', 'second'][i];
    const input = field.field.querySelector('input');
    input.value = typed[name];
    input.addEventListener('input', () => { typed = {...typed, [name]: input.value}; tell(); });
  });
  tell();
  return el('div', {class: 'readings'}, el('p', null, say('round.find.tapes.readings')), fields.map(field => field.field), gives);
}

function standing(hole, two) {
  const [r, s] = [typed.first, typed.second].map(text => Number(text.replace(',', '.')) * unit());
  if (!(r > 0 && s > 0)) { return ''; }
  const green = {rings: rings(hole.way.edge), front: hole.way.front};
  const at = meet(green, two[0].at, r, two[1].at, s);
  if (at === null) { return say('round.find.tapes.no'); }
  const where = place(green, at);
  const off = beside(toGo(at, hole.way.spot), hole.way.played, metres =>
      metres >= THERE && (metres < 1 ? small(metres) : length(metres, 1)));
  const words = where && hole.way.played && [say('sheet.on', counted(halves(where.on, page.day.paceMetres))),
    say(where.left ? 'sheet.fromLeft' : 'sheet.fromRight', counted(halves(where.side, page.day.paceMetres)))].join(' · ');
  return [!where ? say('round.find.tapes.off') : words ? say('round.find.tapes.gives', words) : '',
    off ? say('round.find.tapes.beside', off) : say('round.find.tapes.there')].filter(Boolean).join(' ');
}
