// "Not here": the next best spots, and what any other place is worth, in words; one of them becomes the place to cut.
'use strict';

import {asEntry, choose, chosen, dayWith, greenOf, othersOf, reasonsOf, rules, saidAt, verdictOf, whereIs} from './chosen.js';
import {cellAt, distance, nextBest, onGround, onMap, paced, saidOf, spotAt} from './ground.js';
import {paces} from './lengths.js';
import {halves} from './measures.js';
import {button, choice, drawing, el, list, number, say} from './parts.js';
import {became, page} from './state.js';
import {refresh, write} from './writing.js';

const SVG = 'http://www.w3.org/2000/svg';
const RING = 26; // of a drawing a thousand units wide, which a phone shows at a third: our choice

let opened = null; // the hole whose other spots are looked at
let trouble = '';

const asks = hole => hole.ground && hole.cutToday && page.day.mayRecord && !became(hole);
const isOpen = hole => asks(hole) && opened === hole.hole;
const spotOf = hole => asks(hole) ? chosen(hole) : null;

// Stands above what is written down: the way to other spots, and the one that was chosen.
export function notHere(hole) {
  if (!asks(hole)) { return null; }
  const area = rules().areaOnly && hole.ground.area;
  return el('section', {class: 'not-here'},
      button(area ? say('round.else.area', area) : say('round.else'), () => toggle(hole), 'wide',
          {id: 'not-here', 'aria-expanded': String(isOpen(hole))}),
      isOpen(hole) && el('div', {id: 'other-spots'}, nextSpots(hole), el('p', null, say('round.else.ballMark')),
          inPacesForm(hole), el('p', null, say('round.else.tap')), land(hole), el('p', {role: 'status'}, trouble)),
      spotOf(hole) && place(hole, spotOf(hole)));
}

// The map, where it does not stand with the other spots.
export const landMap = hole => isOpen(hole) ? null : land(hole);

// The tap that writes the chosen place down.
export function cutHere(hole, parts) {
  const spot = spotOf(hole);
  return spot && button(say('round.else.cut'), async () => {
    opened = null;
    await write(hole, {kind: 'cupChanged', place: asEntry(spot), parts: {...parts(), foundBy: spot.by}});
  }, saidAt(hole, spot.at).rank > 1 ? 'wide' : 'main wide', {id: 'cut-here'});
}

async function toggle(hole) {
  opened = isOpen(hole) ? null : hole.hole;
  trouble = '';
  await refresh();
}

// A spot of the list is taken without looking on.
async function take(hole, spot) {
  choose(hole, spot);
  opened = null;
  await refresh();
  document.getElementById('chosen-place')?.scrollIntoView({block: 'center'});
}

function place(hole, spot) {
  const changes = dayWith(hole, spot.at);
  return el('div', {class: 'instead', role: 'status'}, el('h2', null, say('round.else.chosen')),
      el('p', {class: 'big', id: 'chosen-place'}, whereIs(hole, spot.at)),
      el('p', {class: saidAt(hole, spot.at).rank > 0 ? 'judged care' : 'judged'}, verdictOf(hole, spot.at)),
      list(reasonsOf(hole, spot.at), 'warnings'),
      (changes.length > 0 ? changes : [say('round.day.same')]).map(line => el('p', null, line)),
      button(say('round.else.back'), () => take(hole, null), 'plain', {id: 'back-to-plan'}));
}

function nextSpots(hole) {
  const spots = spotsOf(hole);
  return el('section', null, el('h2', null, say('round.else.best')),
      spots.length === 0 ? el('p', null, say('round.else.none')) : el('ol', {class: 'other-spots'}, spots.map((at, i) =>
        el('li', null, el('button', {type: 'button', id: 'spot-' + (i + 1), onclick: () => take(hole, {at, by: 'paces'})},
            el('b', null, i + 1 + ' · ' + whereIs(hole, at)), ' ', el('span', null, verdictOf(hole, at)), ' ',
            el('span', null, say('round.else.away', paces(halves(distance(at, hole.ground.spot), rules().pace)))), ' ',
            dayWith(hole, at).map(line => el('span', {class: 'day'}, line)))))));
}

const spotsOf = hole => nextBest(greenOf(hole), hole.ground.spot, othersOf(hole), rules())
    .map(cell => spotAt(greenOf(hole), cell));

function inPacesForm(hole) {
  if (!hole.ground.frame) { return null; }
  const on = number('else-on', say('round.on'));
  const side = choice('else-side', say('round.side'), [['L', say('round.side.left')], ['R', say('round.side.right')]]);
  const from = number('else-from', say('round.from'));
  return el('form', {class: 'in-paces', 'aria-label': say('round.else.inPaces'), onsubmit: async event => {
    event.preventDefault();
    const metres = field => Number(field.value()) * rules().pace;
    await lookAt(hole, paced(greenOf(hole), metres(on), side.value(), metres(from)),
        {by: 'paces', said: `${on.value()},${side.value()}${from.value()}`}, 'round.else.nowhere');
  }}, el('p', null, say('round.else.inPaces')), on.field, side.field, from.field, el('button', null, say('round.else.look')));
}

async function lookAt(hole, cell, how, otherwise) {
  trouble = saidOf(greenOf(hole), cell) ? '' : say(otherwise);
  if (!trouble) { choose(hole, {...how, at: spotAt(greenOf(hole), cell)}); }
  await refresh();
}

function land(hole) {
  const map = drawing(hole.map);
  const spot = spotOf(hole);
  if (spot) { mark(map, hole, spot.at, ''); }
  if (isOpen(hole)) {
    spotsOf(hole).forEach((at, i) => mark(map, hole, at, String(i + 1)));
    map.addEventListener('click', event => tapped(hole, map, event));
  }
  return el('figure', {class: isOpen(hole) ? 'land asks' : 'land'}, map,
      el('figcaption', null, el('details', null, el('summary', null, say('round.find.signs')), hole.key.join(' · '))));
}

// The page is drawn anew; whoever taps a map goes on looking at the same place of it.
async function tapped(hole, map, event) {
  const frame = map.getBoundingClientRect();
  const scale = map.viewBox.baseVal.width / frame.width;
  const at = onGround(greenOf(hole), (event.clientX - frame.left) * scale, (event.clientY - frame.top) * scale);
  await lookAt(hole, cellAt(greenOf(hole), at), {by: 'eye'}, 'round.else.offGreen');
  window.scrollBy(0, document.querySelector('.land svg').getBoundingClientRect().top - frame.top);
}

// A ring with its number for a next best spot; with four strokes for the chosen one.
function mark(map, hole, at, text) {
  const [x, y] = onMap(greenOf(hole), at);
  const group = document.createElementNS(SVG, 'g');
  const add = (tag, attributes, inside) => {
    const made = document.createElementNS(SVG, tag);
    for (const [name, value] of Object.entries(attributes)) { made.setAttribute(name, value); }
    made.append(inside ?? '');
    group.append(made);
  };
  group.setAttribute('class', text ? 'next' : 'asked');
  add('circle', {cx: x, cy: y, r: RING});
  if (text) {
    add('text', {x, y: y + RING / 2, 'text-anchor': 'middle'}, text);
  } else {
    add('path', {d: `M${x - 14} ${y}h-40M${x + 14} ${y}h40M${x} ${y - 14}v-40M${x} ${y + 14}v40`});
  }
  map.append(group);
}
