// Whether the plugs of the cutter in hand run one way from green to green, by what this phone wrote down.
'use strict';

import {el, say} from './parts.js';
import {page} from './state.js';

const SAYS = {'took-out': 'signal.plugsRunHigh', 'put-in': 'signal.plugsRunLow'};

export function stopRemark() {
  const greens = changes();
  const cutter = named(greens.at(-1));
  const run = {way: 'none', greens: 0, hole: ''};
  for (const says of greens.filter(one => named(one) === cutter)) {
    const way = says.parts?.soil ?? 'none';
    run.greens = way === 'none' ? 0 : way === run.way ? run.greens + (says.hole === run.hole ? 0 : 1) : 1;
    Object.assign(run, {way, hole: says.hole});
  }
  return run.greens > 0 && run.greens >= page.day.sameWayGreens && el('p', {class: 'remark', role: 'status'},
      say(SAYS[run.way], cutter || say('round.cutter.inHand'), run.greens));
}

const named = says => says?.parts?.cutter ?? '';

// What was said last of each hole, in the order in which the holes were cut.
function changes() {
  const last = new Map();
  page.kept.filter(entry => entry.course === page.day.course && entry.says.kind === 'cupChanged' && entry.state !== 'refused')
      .forEach(entry => last.set(entry.says.day + ' ' + entry.says.hole, entry.says));
  return [...last.values()];
}
