// Find the spot: in somebody's own steps, from a mark, on the map, by the phone's own position, by two tapes.
'use strict';

import {counted} from './lengths.js';
import {halves, halvesDown, onMap} from './measures.js';
import {line, named, over} from './overlay.js';
import {ownStep, stepForm} from './ownstep.js';
import {el, list, say} from './parts.js';
import {phone} from './phone.js';
import {tapes} from './tapes.js';

// What is paced, in the order in which it is read; beside what the course's pace makes of it, what their own step does.
export function paced({way}) {
  if (!way) { return null; }
  const step = ownStep();
  const lines = way.said.filter(([, , kind]) => step || kind === 'mark').map(([text, metres, kind]) => step
      ? say('round.find.yours', text, counted((kind === 'down' ? halvesDown : halves)(metres, step))) : text);
  return list([way.dot, ...lines].filter(Boolean), 'paced');
}

// land: the map, where it does not stand with other spots.
export function findSpot(hole, land) {
  if (!hole.way) { return land; }
  const map = land?.querySelector('svg');
  fromMark(hole.way, map);
  return el('section', {class: 'find'}, el('h2', null, say('round.find')), land,
      phone(hole), tapes(hole, map), stepForm(hole));
}

function fromMark(way, map) {
  if (way.from === undefined || !map) { return; }
  const [name, x, y] = way.marks[way.from];
  const at = onMap(way.map, [x, y]);
  over(map, 'from-mark', [line(at, onMap(way.map, way.spot)), named(at, name, map.viewBox.baseVal.width)]);
}
