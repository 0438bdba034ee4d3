// Where a place of a green is as the crew says it: so much on, so far from a side, in which third. The office's GreenFrame
// in the phone's words: the same lengths by the same arithmetic, so that thirds never differ.
'use strict';

import {edges, fromStart, holding} from './edges.js';

const right = (frame, [east, north]) => (east - frame.origin[0]) * frame.play[1] - (north - frame.origin[1]) * frame.play[0];
const forward = (frame, [east, north]) => (east - frame.origin[0]) * frame.play[0] + (north - frame.origin[1]) * frame.play[1];

// The green's edge in straight pieces, and from where to where it is deep as a whole.
export function edgeOf(frame) {
  if (!frame) { return null; }
  const rings = frame.edge.map(ring => ring.map(corner => [right(frame, corner), forward(frame, corner)]));
  const fronts = frame.fronts.map(mark => forward(frame, mark));
  const ahead = rings[0].map(corner => corner[1]);
  return {...edges(rings), whole: [Math.min(...(fronts.length > 0 ? fronts : ahead)), Math.max(...ahead)]};
}

const third = ([from, to], at) => 3 * (at - from) < to - from ? 0 : 3 * (to - at) < to - from ? 2 : 1;

// Where a place of the green is as the crew says it, in metres; null where no line of play is known.
export function placeOf(green, at) {
  if (!green.frame) { return null; }
  const [x, y] = [right(green.frame, at), forward(green.frame, at)];
  const depth = green.frame.squared ? green.edge.whole : (holding(green.edge.withPlay, x, y) ?? [y, y]);
  const width = holding(green.edge.acrossPlay, y, x) ?? [x, x];
  const left = fromStart(width, x);
  const across = width[1] - width[0];
  return {on: green.frame.squared ? y - depth[0] : fromStart(depth, y), left, right: across - left,
    side: left <= across - left ? 'L' : 'R', third: third(depth, y), lateral: third(width, x)};
}
