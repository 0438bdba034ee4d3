// One green: what is needed on every one first, then what helps with it, in the order in which the work is done there.
'use strict';

import {findSpot, paced} from './find.js';
import {learner} from './learning.js';
import {measured} from './measured.js';
import {asWhom} from './names.js';
import {landMap, notHere} from './nothere.js';
import {oddThing} from './odd.js';
import {allOwnDone, byWhom, nextFrom} from './order.js';
import {el, list, say} from './parts.js';
import {plugs} from './plugs.js';
import {recording} from './recording.js';
import {rollBall} from './rolled.js';
import {became, ofHole, page} from './state.js';
import {stopRemark} from './stop.js';
import {standing} from './unsent.js';
import {handWork} from './work.js';

export function holeView(hole) {
  const day = page.day;
  const done = became(hole);
  return [
    el('p', {class: 'back'}, el('a', {href: '#'}, say('round.all'))),
    el('h1', {tabindex: -1}, say('round.hole', hole.hole) + ' · ' + hole.where),
    byWhom(hole) && el('p', {class: 'by'}, byWhom(hole)),
    el('p', {class: 'big'}, hole.paces, hole.flag && ' · ' + hole.flag),
    el('p', null, hole.beside.join(' · ')),
    hole.room && el('p', null, hole.room),
    paced(hole),
    list(hole.notices, 'first'), list(hole.warnings, 'warnings'),
    el('p', null, hole.plug),
    done && el('p', {id: 'became', class: 'state', role: 'status'}, done),
    remarks(hole), stopRemark(),
    done && following(hole),
    notHere(hole),
    rollBall(hole),
    asWhom(),
    day.mayRecord && hole.cutToday && (done ? el('details', null, el('summary', null, say('round.again')), recording(hole))
        : recording(hole)),
    learner(hole),
    findSpot(hole, landMap(hole)),
    handWork(hole),
    plugs(hole),
    day.mayRecord && hole.cutToday && measured(hole),
    day.mayRecord && oddThing(hole),
    standing(),
    !done && following(hole),
  ];
}

const remarks = hole => list(ofHole(hole.hole).flatMap(entry => entry.remarks ?? []), 'warnings');

function following(hole) {
  const next = nextFrom(hole);
  return allOwnDone() ? el('p', {class: 'state'}, say('round.order.yoursDone')) : next && el('p', null, el('a', {class: 'button wide', href: '#' + encodeURIComponent(next.hole)},
      say('round.next', next.hole)));
}
