// Something odd, in a few words, with a photo where one helps.
'use strict';

import {choice, el, say} from './parts.js';
import {page} from './state.js';
import {small, write} from './writing.js';

export function oddThing(hole) {
  const text = el('textarea', {id: 'odd', rows: 2, required: true});
  const urgent = choice('odd-severity', say('round.odd.severity'),
      ['soon', 'note', 'now'].map(one => [one, say('round.odd.' + one)]));
  const photo = el('input', {type: 'file', id: 'odd-photo', accept: 'image/*', capture: 'environment'});
  return el('details', null, el('summary', null, say('round.odd')),
      el('form', {onsubmit: async event => {
        event.preventDefault();
        if (event.submitter) { event.submitter.disabled = true; } // a photo takes a moment to be made small
        const says = {kind: 'somethingOdd', parts: {severity: urgent.value(), text: text.value}};
        if (await write(hole, says, await small(photo.files[0]))) {
          document.getElementById('odd')?.form.reset(); // it is written down: nobody is to write it down again
        }
      }}, el('label', {for: 'odd'}, say('round.odd.text')), text,
      urgent.field, page.day.ring && el('p', null, page.day.ring),
      el('label', {for: 'odd-photo'}, say('round.odd.photo')), photo, el('button', {class: 'main'}, say('round.keep'))));
}
