// Drawings of the hand work. They come in sheets of lines, and take their titles and what they show from the words.
'use strict';

import {say} from './parts.js';

const SHEETS = ['hole', 'plug'];
const SVG = 'http://www.w3.org/2000/svg';
const WHOLE = '0 0 360 260';

let sheets = null;

async function sheet(name) {
  const answer = await fetch('/round/files/' + name + '.svg');
  return new DOMParser().parseFromString(await answer.text(), 'image/svg+xml');
}

// The hatchings are the document's own, once for all drawings.
async function opened() {
  const all = await Promise.all(SHEETS.map(sheet));
  document.body.append(lines('svg', {class: 'hatchings', width: 0, height: 0, 'aria-hidden': true},
      document.importNode(all[0].querySelector('defs'), true)));
  return all;
}

function lines(tag, attributes, ...inside) {
  const made = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes)) { made.setAttribute(name, value); }
  made.append(...inside);
  return made;
}

export function picture(name) {
  const title = 'drawing-' + name;
  const shows = title + '-shows';
  const made = lines('svg', {class: 'handwork', viewBox: WHOLE, role: 'img', 'aria-labelledby': title, 'aria-describedby': shows},
      lines('title', {id: title}, say('round.draw.' + name)),
      lines('desc', {id: shows}, say('round.drawn.' + name)));
  sheets ??= opened();
  sheets.then(all => {
    const drawn = all.map(one => one.getElementById(name)).find(Boolean);
    made.append(...[document.importNode(drawn, true)].map(one => { one.removeAttribute('id'); return one; }));
  }).catch(() => { sheets = null; }); // what it shows can be read all the same; the next one tries again
  return made;
}
