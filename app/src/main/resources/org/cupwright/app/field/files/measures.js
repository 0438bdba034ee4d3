// Measures on a green in its own frame: x metres to the right of its middle, y metres on along the line of play (north
// where nobody knows it). The office works the same out by code of its own; both are held to the same cases. No page.
'use strict';

import {edges, fromStart, holding} from './edges.js';

const STEPS = [0.4, 1.3]; // m, what people's steps lie within: our choice
const IN_ONE_LINE = 1e-6; // sine of the angle below which two tapes fix nothing
const SHARPEST = 30; // degrees, and as much short of a straight line; common practice
const LONGEST_TAPE = 50; // m
const TAPE_ERROR = 0.02; // m, of a tape pulled by hand

// By this much an ellipse of one standard error grows to hold the point 95 times in 100.
export const HOLDING_95 = 2.4477;

// In steps of a length, to the half; of two halves as near the even one, as on paper.
export function halves(metres, step) {
  const twice = 2 * metres / step;
  const below = Math.floor(twice);
  const over = twice - below;
  const up = over > 0.5 || (over === 0.5 && below % 2 !== 0);
  return (up ? below + 1 : below) / 2;
}

// Down to the half, for what must not promise too much.
export const halvesDown = (metres, step) => Math.floor(2 * metres / step + 1e-9) / 2;

// How long somebody's step is who took so many on a known way; null where nobody steps so.
export function stepOf(metres, steps) {
  const step = metres / steps;
  return step >= STEPS[0] && step <= STEPS[1] ? step : null;
}

const cut = new WeakMap(); // the pieces of each green that was asked about

function edgeOf(green) {
  if (!cut.has(green)) { cut.set(green, edges(green.rings)); }
  return cut.get(green);
}

const onGreen = (green, [x, y]) => holding(edgeOf(green).withPlay, x, y) !== null;

// Where a point lies as it is paced; null off the green. green.front says from where "on" is squared off, if it is.
export function place(green, [x, y]) {
  const chord = holding(edgeOf(green).withPlay, x, y);
  const width = holding(edgeOf(green).acrossPlay, y, x);
  if (chord === null || width === null) { return null; }
  const squared = green.front !== undefined;
  const depth = squared ? [green.front, Math.max(...green.rings[0].map(corner => corner[1]))] : chord;
  const within = squared ? y - depth[0] : fromStart(depth, y);
  const left = fromStart(width, x);
  const right = width[1] - width[0] - left;
  return {on: within, back: depth[1] - depth[0] - within, left: left <= right, side: Math.min(left, right)};
}

const apart = ([x, y], [u, v]) => Math.sqrt((x - u) ** 2 + (y - v) ** 2);

// How far one has to go yet: ahead and to the right where positive.
export const toGo = (from, to) => ({ahead: to[1] - from[1], right: to[0] - from[0]});

// How well two tapes from two marks fix a point: angle between them, and the ellipse of one standard error, its longer
// axis so many degrees clockwise from the way on.
function fixed(at, first, second) {
  const [r, s] = [apart(at, first), apart(at, second)];
  const [a, b] = [[(at[0] - first[0]) / r, (at[1] - first[1]) / r], [(at[0] - second[0]) / s, (at[1] - second[1]) / s]];
  const cross = a[0] * b[1] - a[1] * b[0];
  const variance = (TAPE_ERROR / cross) ** 2;
  const xx = variance * (a[1] ** 2 + b[1] ** 2);
  const yy = variance * (a[0] ** 2 + b[0] ** 2);
  const xy = -variance * (a[0] * a[1] + b[0] * b[1]);
  const radius = Math.hypot((xx - yy) / 2, xy);
  const axis = 90 - Math.atan2(2 * xy, xx - yy) * 90 / Math.PI;
  return {
    metres: [r, s], angle: Math.atan2(Math.abs(cross), a[0] * b[0] + a[1] * b[1]) * 180 / Math.PI,
    longer: Math.sqrt((xx + yy) / 2 + radius), shorter: Math.sqrt(Math.max(0, (xx + yy) / 2 - radius)),
    axis: axis >= 180 ? axis - 180 : axis,
  };
}

// The pairs of marks that fix a point well enough, the best first: each {first, second} by number, and how well.
export function pairs(at, marks) {
  const found = [];
  const reach = marks.map(mark => apart(at, mark) > 0 && apart(at, mark) <= LONGEST_TAPE);
  marks.forEach((mark, first) => marks.slice(first + 1).forEach((other, i) => {
    const second = first + 1 + i;
    if (reach[first] && reach[second]) { found.push({first, second, ...fixed(at, mark, other)}); }
  }));
  return found.filter(one => one.angle >= SHARPEST && one.angle <= 180 - SHARPEST)
      .sort((one, other) => Math.hypot(one.longer, one.shorter) - Math.hypot(other.longer, other.shorter));
}

// Where two tapes meet: of the two points the one on the green, or else the nearer one to its middle; null for nowhere.
export function meet(green, first, r, second, s) {
  const between = apart(first, second);
  if (!(between > 0 && r > 0 && s > 0)) { return null; }
  const [x, y] = [(second[0] - first[0]) / between, (second[1] - first[1]) / between];
  const along = (between + (r - s) * (r + s) / between) / 2;
  const square = (r - along) * (r + along);
  if (!(Math.sqrt(Math.max(0, square)) * between / (r * s) > IN_ONE_LINE)) { return null; }
  const beside = Math.sqrt(square);
  const both = [-beside, beside].map(by => [first[0] + along * x + by * y, first[1] + along * y - by * x]);
  const far = at => (onGreen(green, at) ? 0 : 1e9) + Math.hypot(...at);
  return far(both[0]) <= far(both[1]) ? both[0] : both[1];
}

// Degrees of longitude and latitude in the green's frame. world: a place in degrees, and metres a degree, row by row.
export function inFrame(world, longitude, latitude) {
  const east = (longitude - world[0] + 540) % 360 - 180;
  const north = latitude - world[1];
  return [world[2] * east + world[3] * north, world[4] * east + world[5] * north];
}

// On the drawing of the green. map: its point of the green's middle, and its units a metre.
export const onMap = (map, [x, y]) => [map[0] + map[2] * x, map[1] - map[2] * y];

// To the numbers of a day that lies on the phone: rings of corners x, y, x, y.
export const rings = edge => edge.map(flat =>
    Array.from({length: flat.length / 2}, (_, i) => [flat[2 * i], flat[2 * i + 1]]));
