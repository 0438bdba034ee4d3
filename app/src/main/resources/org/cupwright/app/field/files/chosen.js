// The spot that was chosen in place of the planned one, until it is cut; and how spots are said. It is kept on the
// phone, which is in a pocket while its owner paces.
'use strict';

import {cellAt, counted, open, paced, partOf, room, saidOf} from './ground.js';
import {counted as inHalves, paces} from './lengths.js';
import {halves, halvesDown} from './measures.js';
import {say} from './parts.js';
import {placeOf} from './places.js';
import {allHoles, change, page} from './state.js';

const NAME = 'cupwright-round-chosen';
const THIRDS = ['front', 'middle', 'back'];
const LATERALS = ['left', 'centre', 'right'];
const PLAYS = ['easier', 'medium', 'harder'];

let all = null;

function ofDay() {
  if (all === null) { try { all = JSON.parse(localStorage.getItem(NAME)); } catch { all = null; } }
  const {date: day, course} = page.day;
  if (all?.day !== day || all.course !== course) { all = {day, course, holes: {}}; }
  return all;
}

// The place that was chosen, [east, north], and how it was said, where in paces; null where nothing was.
export const chosen = hole => ofDay().holes[hole.hole] ?? null;

export function choose(hole, spot) {
  ofDay().holes[hole.hole] = spot ?? undefined;
  try { localStorage.setItem(NAME, JSON.stringify(all)); } catch { /* it holds as long as the page is open */ }
}

export const greenOf = hole => open(hole.ground);

export const rules = () => page.day.ground;

export const saidAt = (hole, at) => saidOf(greenOf(hole), cellAt(greenOf(hole), at));

// Back left · 9 on · 4 from left.
export function whereIs(hole, at) {
  const place = placeOf(greenOf(hole), at);
  if (!place) { return say('place.coordinates', at[0].toFixed(1), at[1].toFixed(1)); }
  const side = place.side === 'L' ? place.left : place.right;
  return [say('area.' + THIRDS[place.third] + '.' + LATERALS[place.lateral]), say('sheet.on', inHalves(halves(place.on, pace()))),
    say(place.side === 'L' ? 'sheet.fromLeft' : 'sheet.fromRight', inHalves(halves(side, pace())))].join(' · ');
}

const pace = () => rules().pace;

// Good within 2 paces; use with care, the same within 1 pace; do not cut.
export function verdictOf(hole, at) {
  const said = saidAt(hole, at);
  return [said.word !== 'pass' && say('verdict.' + said.word), said.rank <= 1 && within(hole, at, said),
    said.unchecked && say('slopeNotChecked')].filter(Boolean).join(', ');
}

function within(hole, at, said) {
  const free = halvesDown(room(greenOf(hole), cellAt(greenOf(hole), at)), pace());
  if (free < 0.5) { return say(said.rank === 0 ? 'goodJustThere' : 'justThere'); }
  return say(said.rank === 0 ? 'goodWithin' : 'sameWithin', paces(free));
}

// What stands against a hole there, and what is out of the ordinary.
export function reasonsOf(hole, at) {
  const said = saidAt(hole, at);
  return [...said.why.map(why => say('round.why.' + why)),
    ...said.notToday.map(why => say('round.notToday.' + why, hole.ground.area ?? '')),
    ...said.aside.map(rule => say('round.aside', say('rule.' + rule)))];
}

// Where a hole stands among the day's: where it was cut by what was written down here, or as the office has it.
function partNow(hole) {
  const place = change(hole.hole)?.says.place;
  const at = place && placed(hole, place);
  return at ? partOf(greenOf(hole), at) : hole.ground.part;
}

function placed(hole, place) {
  const [first, second] = place.split(',');
  const side = /^[LR]/.exec(second)?.[0];
  const cell = side ? paced(greenOf(hole), first * pace(), side, second.slice(1) * pace())
      : cellAt(greenOf(hole), [Number(first), Number(second)]);
  return saidOf(greenOf(hole), cell) && cell;
}

export const othersOf = hole => allHoles().filter(one => one !== hole && one.ground?.part).map(partNow);

// What a spot does to the day, as far as it changes anything.
export function dayWith(hole, at) {
  const others = othersOf(hole);
  const part = partOf(greenOf(hole), cellAt(greenOf(hole), at));
  const [before, after] = [counted([...others, hole.ground.part]), counted([...others, part])];
  const changed = ['third', 'lateral', 'plays'].filter(split => before[split].some((count, i) => count !== after[split][i]));
  const plays = part.plays !== hole.ground.part.plays && part.plays != null && hole.ground.part.plays != null
      && say('round.day.becomes', say('difficulty.' + PLAYS[part.plays]), say('difficulty.' + PLAYS[hole.ground.part.plays]));
  return [plays, ...changed.map(split => say('round.day.' + split, ...after[split]))].filter(Boolean);
}

// As an entry has it: what was said in paces as it was said, all else by its place.
export const asEntry = spot => spot.said ?? spot.at.map(metres => metres.toFixed(2)).join(',');
