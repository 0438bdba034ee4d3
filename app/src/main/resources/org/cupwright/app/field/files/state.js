// What the page knows: the day that is carried, what was written down, and how the phone's storage stands.
'use strict';

import {say, time} from './parts.js';

export const page = {day: null, kept: [], storage: {keeps: true, safely: true}, loading: false, problem: null};

export const allHoles = () => (page.day?.parts ?? []).flatMap(part => part.holes);

export const ofHole = hole => page.kept.filter(entry =>
    entry.course === page.day.course && entry.says.day === page.day.date && entry.says.hole === hole);

export const change = hole =>
    ofHole(hole).filter(entry => ['cupChanged', 'leftInOldHole'].includes(entry.says.kind)).at(-1);

// What became of a hole, in words; empty as long as nothing was done.
export function became(hole) {
  const mine = change(hole.hole);
  if (!mine) { return hole.done ?? ''; }
  const what = mine.says.kind === 'leftInOldHole' ? 'round.done.left'
      : mine.says.asPlanned ? 'round.done.cut' : 'round.done.elsewhere';
  return say(what, time(mine.says.at)) + ' · ' + say('round.' + mine.state);
}
