// Where the phone believes it is: asked for by a tap, shown as a hint, never kept and never sent.
'use strict';

import {beside, length, paces} from './lengths.js';
import {inFrame, onMap, toGo} from './measures.js';
import {over, shape} from './overlay.js';
import {ownStep} from './ownstep.js';
import {button, el, say} from './parts.js';
import {page} from './state.js';

const FAR = 200; // m from the spot: of another place. Our choice
const ROUGH = 25; // m: no help to anybody on a green. Our choice
const PATIENCE = 30000; // ms

let watch = null;
let seen = null; // what the phone said last: a position, or why it has none
let of = null; // the hole that is looked for

export function phone(hole) {
  if (!hole.way.world) { return el('p', {class: 'soft'}, say('round.find.phone.unplaced')); }
  if (of !== hole.hole) { stop(); }
  setTimeout(() => paint(hole)); // when the map is on the page
  return el('div', {class: 'phone'},
      el('p', {id: 'phone-hint', class: 'state', role: 'status'}, said(hole)),
      watch === null ? button(say('round.find.phone'), () => look(hole), 'wide', {id: 'phone-look'})
          : button(say('round.find.phone.stop'), () => { stop(); renew(hole); }, 'wide', {id: 'phone-look'}),
      el('p', {class: 'soft'}, say('round.find.phone.why')));
}

function look(hole) {
  stop();
  of = hole.hole;
  if (!navigator.geolocation) { seen = {failed: 'none'}; renew(hole); return; }
  watch = navigator.geolocation.watchPosition(
      ({coords}) => { seen = {at: inFrame(hole.way.world, coords.longitude, coords.latitude), within: coords.accuracy}; paint(hole); },
      error => {
        if (error.code !== error.PERMISSION_DENIED) { seen = {failed: 'none'}; paint(hole); return; } // it may find it yet
        stop();
        of = hole.hole;
        seen = {failed: 'denied'};
        renew(hole);
      }, {enableHighAccuracy: true, maximumAge: 0, timeout: PATIENCE});
  renew(hole);
}

function stop() {
  if (watch !== null) { navigator.geolocation.clearWatch(watch); }
  watch = seen = of = null;
}

function renew(hole) {
  const focused = document.activeElement?.id === 'phone-look';
  document.querySelector('.phone')?.replaceWith(phone(hole));
  if (focused) { document.getElementById('phone-look').focus(); }
}

function said(hole) {
  if (seen?.failed) { return say('round.find.phone.' + seen.failed); }
  if (seen === null) { return watch === null ? '' : say('round.find.phone.looking'); }
  const go = toGo(seen.at, hole.way.spot);
  const away = Math.hypot(go.ahead, go.right);
  const within = length(seen.within, 0);
  if (seen.within > ROUGH) { return say('round.find.phone.rough', within); }
  if (away - seen.within > FAR) { return say('round.find.phone.far', length(away, 0)); }
  const step = ownStep() ?? page.day.paceMetres;
  const where = beside(go, hole.way.played, metres => {
    const whole = Math.round(metres / step); // what is told to some metres is not said in halves
    return whole > 0 && paces(whole);
  });
  return where ? say('round.find.phone.hint', where, within) : say('round.find.phone.here', within);
}

function paint(hole) {
  const text = said(hole);
  const hint = document.getElementById('phone-hint');
  if (hint && hint.textContent !== text) { hint.textContent = text; }
  const {at, within} = seen ?? {};
  const [cx, cy] = at ? onMap(hole.way.map, at) : [];
  over(document.querySelector('.find .land svg'), 'here', !at ? []
      : [shape('circle', {cx, cy, r: within * hole.way.map[2], class: 'within'}), shape('circle', {cx, cy, r: 11})]);
}

window.addEventListener('hashchange', stop);
document.addEventListener('visibilitychange', () => { if (document.hidden) { stop(); } });
