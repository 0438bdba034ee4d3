// What the office says of a green's ground, looked up, searched and counted on the phone alone. Nothing is judged here:
// a green comes with the kinds of ground it has, and which kind each spot of its quarter-metre lattice is.
'use strict';

import {edgeOf, placeOf} from './places.js';

const WORST_LAST = ['pass', 'caution', 'fail', 'notSurveyed'];
const PLAYS = ['easier', 'medium', 'harder'];

const FARTHEST_METRES = 5; // as far as room is told: as the office has it
const USEFUL_PACES = 10; // farther off nobody looks for a spot in place of another: our choice
const AWAY_PACES = 1; // from the spot that will not do: our choice
const APART_PACES = 2; // from one another: our choice, so that three spots are three choices
const MOST = 3;

const opened = new WeakMap();

// The lattice as it can be looked up; worked out once for each green.
export function open(ground) {
  if (!opened.has(ground)) {
    const cells = new Uint16Array(ground.columns * ground.rows);
    let from = 0;
    for (const run of ground.cells.split(' ')) {
      const [kind, length] = run.split('*');
      const to = from + Number(length ?? 1);
      cells.fill(Number(kind), from, to);
      from = to;
    }
    opened.set(ground, {...ground, cells, kinds: ground.kinds.map(kindOf), edge: edgeOf(ground.frame)});
  }
  return opened.get(ground);
}

function kindOf(text) {
  if (text === '') { return null; }
  const [word, slope, plays, why, aside, notToday] = text.split('|');
  const several = all => all === '' ? [] : all.split(' ');
  const rank = WORST_LAST.indexOf(word === 'saidToBeGood' ? 'pass' : word);
  return {word, verdict: WORST_LAST[rank], rank, unchecked: slope !== '', plays: plays === '' ? null : PLAYS.indexOf(plays),
    why: several(why), aside: several(aside), notToday: several(notToday)};
}

// A spot of the lattice by its number, and the number of the spot nearest to a place; -1 beside the lattice.
export const spotAt = (green, cell) => [(green.west + cell % green.columns) * green.step,
  (green.south + Math.floor(cell / green.columns)) * green.step];

export function cellAt(green, [east, north]) {
  return numbered(green, Math.round(east / green.step - green.west), Math.round(north / green.step - green.south));
}

function numbered(green, column, row) {
  const outside = column < 0 || row < 0 || column >= green.columns || row >= green.rows;
  return outside ? -1 : row * green.columns + column;
}

// What is said of a spot; null off the green.
export const saidOf = (green, cell) => cell < 0 ? null : green.kinds[green.cells[cell]];

const isWorse = (green, cell, rank) => !(saidOf(green, cell)?.rank <= rank);

// How far off the hole may be and still be as good: no spot within it is worse.
export function room(green, cell) {
  const rank = saidOf(green, cell).rank;
  const [column, row] = [cell % green.columns, Math.floor(cell / green.columns)];
  const reach = Math.ceil(FARTHEST_METRES / green.step);
  let nearest = FARTHEST_METRES;
  for (let r = -reach; r <= reach; r++) {
    for (let c = -reach; c <= reach; c++) {
      const away = Math.sqrt(c * c + r * r) * green.step;
      if (away < nearest && isWorse(green, numbered(green, column + c, row + r), rank)) { nearest = away; }
    }
  }
  if (nearest >= FARTHEST_METRES) { return FARTHEST_METRES; }
  return Math.max(0, Math.ceil(nearest / green.step - 1e-9) - 1) * green.step;
}

function hasRoom(green, cell, metres) {
  const rank = saidOf(green, cell).rank;
  const [column, row] = [cell % green.columns, Math.floor(cell / green.columns)];
  const reach = Math.ceil(metres / green.step - 1e-9);
  for (let r = -reach; r <= reach; r++) {
    for (let c = -reach; c <= reach; c++) {
      if (r * r + c * c <= reach * reach && isWorse(green, numbered(green, column + c, row + r), rank)) { return false; }
    }
  }
  return true;
}

// The spot of the lattice nearest to so much on and so far from a side; -1 where none is within a step of it.
export function paced(green, on, side, from) {
  let best = -1;
  let least = [2, 0];
  green.cells.forEach((kind, cell) => {
    if (kind === 0) { return; }
    const place = placeOf(green, spotAt(green, cell));
    const off = Math.hypot(place.on - on, (side === 'L' ? place.left : place.right) - from);
    const score = [place.side === side ? 0 : 1, off]; // who says a side means the nearer one
    if (off <= green.step && before(score, least)) { [best, least] = [cell, score]; }
  });
  return best;
}

// What a spot counts as among the day's holes.
export function partOf(green, cell) {
  const place = placeOf(green, spotAt(green, cell));
  return {third: place?.third ?? null, lateral: place?.lateral ?? null, plays: saidOf(green, cell)?.plays ?? null};
}

// How many holes are in each part of each split.
export function counted(parts) {
  const counts = {third: [0, 0, 0], lateral: [0, 0, 0], plays: [0, 0, 0]};
  for (const part of parts) {
    for (const split of Object.keys(counts)) { if (part[split] != null) { counts[split][part[split]]++; } }
  }
  return counts;
}

// How many holes would have to be in another part for the day to be spread as it is to be.
function unevenness(counts, shares) {
  return Object.keys(shares).reduce((sum, split) => sum + holesOff(counts[split], shares[split]), 0);
}

function holesOff(counts, shares) {
  const total = counts.reduce((sum, count) => sum + count, 0);
  const whole = shares.reduce((sum, share) => sum + share, 0);
  let [over, under] = [0, 0];
  counts.forEach((count, i) => {
    over += Math.max(0, count - Math.floor((total * shares[i] + whole - 1) / whole));
    under += Math.max(0, Math.floor(total * shares[i] / whole) - count);
  });
  return Math.max(over, under);
}

// The next best spots in place of one: good before those to take care with, of the same third before others, what
// leaves the day the most even, the nearest; each with room about it, and none where today's hole is not to be.
export function nextBest(green, from, others, rules) {
  const {pace, shares} = rules;
  const own = placeOf(green, from)?.third ?? null;
  const fits = [];
  for (let cell = 0; cell < green.cells.length; cell++) {
    const said = saidOf(green, cell);
    const away = said ? distance(spotAt(green, cell), from) : Infinity;
    if (away <= USEFUL_PACES * pace && away >= AWAY_PACES * pace && may(green, cell, said, pace)) {
      const part = partOf(green, cell);
      const uneven = unevenness(counted([...others, part]), shares);
      fits.push({cell, score: [said.rank, part.third === own ? 0 : 1, uneven, away, cell]});
    }
  }
  fits.sort((one, other) => before(one.score, other.score) ? -1 : 1);
  const chosen = [];
  for (const {cell} of fits) {
    const at = spotAt(green, cell);
    if (chosen.length < MOST && chosen.every(one => distance(spotAt(green, one), at) >= APART_PACES * pace)) { chosen.push(cell); }
  }
  return chosen;
}

function may(green, cell, said, pace) {
  return said.rank <= 1 && said.notToday.length === 0 && hasRoom(green, cell, pace / 2)
      && green.others.every(other => distance(spotAt(green, cell), other) >= green.apartMetres);
}

export function distance([east, north], [otherEast, otherNorth]) {
  const [dx, dy] = [east - otherEast, north - otherNorth];
  return Math.sqrt(dx * dx + dy * dy);
}

// Whether a list of numbers comes before another: by the first in which they differ.
function before(one, other) {
  const i = one.findIndex((value, at) => value !== other[at]);
  return i >= 0 && one[i] < other[i];
}

// From a place on the map to the ground and back.
export function onGround(green, x, y) {
  const [east, north, acrossEast, acrossNorth, downEast, downNorth] = green.map;
  return [east + x * acrossEast + y * downEast, north + x * acrossNorth + y * downNorth];
}

export function onMap(green, [east, north]) {
  const [east0, north0, acrossEast, acrossNorth, downEast, downNorth] = green.map;
  const [dx, dy] = [east - east0, north - north0];
  const area = acrossEast * downNorth - acrossNorth * downEast;
  return [(dx * downNorth - dy * downEast) / area, (dy * acrossEast - dx * acrossNorth) / area];
}
