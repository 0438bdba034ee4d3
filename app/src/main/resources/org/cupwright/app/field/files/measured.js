// Depths as a ruler has them, where somebody measured: now and then, never to be asked for.
'use strict';

import {el, say, time} from './parts.js';
import {ofHole} from './state.js';
import {write} from './writing.js';

const MILLIMETRES = {hole: '[0-9]{1,3}', cup: '[0-9]{1,3}', plug: '[+\\-−]?[0-9]{1,2}'};

export function measured(hole) {
  const last = ofHole(hole.hole).filter(entry => entry.says.kind === 'spotCheck').at(-1);
  const inputs = Object.entries(MILLIMETRES).map(([name, pattern]) =>
      el('input', {id: 'measured-' + name, inputmode: name === 'plug' ? 'text' : 'numeric', pattern, size: 4}));
  const [depth, cup, plug] = inputs;
  return el('details', {class: 'measured'}, el('summary', null, say('round.measured')),
      el('form', {oninput: () => depth.setCustomValidity(''), onsubmit: event => {
        event.preventDefault();
        const parts = said({holeDepthMillimetres: depth, cupDepthMillimetres: cup, plugHeightMillimetres: plug});
        if (Object.keys(parts).length === 0) {
          depth.setCustomValidity(say('round.measured.which'));
          depth.reportValidity();
          return;
        }
        inputs.forEach(input => { input.value = ''; });
        write(hole, {kind: 'spotCheck', parts});
      }}, ['hole', 'cup', 'plug'].flatMap((name, i) =>
          [el('label', {for: 'measured-' + name}, say('round.measured.' + name)), inputs[i]]),
      el('button', {class: 'main'}, say('round.keep'))),
      last && el('p', {class: 'became'}, say('round.measured.done', time(last.says.at)) + ' · ' + say('round.' + last.state)));
}

const said = inputs => Object.fromEntries(Object.entries(inputs)
    .filter(([, input]) => input.value.trim() !== '')
    .map(([name, input]) => [name, input.value.trim().replace('−', '-').replace('+', '')]));
