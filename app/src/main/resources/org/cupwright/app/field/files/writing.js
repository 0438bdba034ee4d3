// Writes down what was done. Only when it is on this phone's storage does the page say so.
'use strict';

import {entries, keepEntry} from './kept.js';
import {el, say} from './parts.js';
import {line, sendNow} from './sent.js';
import {page} from './state.js';
import {who, writer} from './who.js';

let drawn = () => {};

// Who draws the page anew when something has changed.
export function draws(painter) { drawn = painter; }

export async function refresh() {
  try { page.kept = await entries(); } catch { page.storage = {keeps: false, safely: false}; }
  drawn();
}

// A file that is no photo this phone can read: what was said beside it is kept all the same.
const UNREAD = 'unread';

const writing = new Set();

// Answers whether it is on the phone. Where it is to go stands in its address; to the logbook where nothing else is said.
export async function write(hole, says, photo, to) {
  if (who.shared && !writer()) { // nothing is written down under nobody's name
    page.problem = say('round.who.nobody');
    await refresh();
    return false;
  }
  const what = JSON.stringify([to, hole.hole, says]);
  if (writing.has(what)) { return false; } // tapped again before the page was drawn anew
  writing.add(what);
  try {
    const kept = await writeDown(hole, says, photo, to);
    await refresh();
    return kept;
  } finally {
    writing.delete(what);
    sendNow();
  }
}

async function writeDown(hole, says, photo, to) {
  const entry = {
    id: crypto.randomUUID(), state: 'waiting', photo: photo === UNREAD ? null : photo ?? null, to, course: page.day.course,
    says: {...says, by: writer(), hole: hole.hole, day: page.day.date, at: new Date().toISOString(), clockBehind: line.clockBehind},
  };
  try {
    await keepEntry(entry);
    page.problem = photo === UNREAD ? say('round.odd.photoUnread') : null;
    return true;
  } catch {
    page.problem = say('round.notKept');
    return false;
  }
}

// A photo as small as does: drawn anew, so that nothing of what the camera wrote beside the picture goes with it.
export async function small(file) {
  if (!file) { return null; }
  const picture = await createImageBitmap(file).catch(() => null);
  if (!picture) { return UNREAD; }
  const scale = Math.min(1, 1600 / Math.max(picture.width, picture.height));
  const canvas = el('canvas', {width: Math.round(picture.width * scale), height: Math.round(picture.height * scale)});
  canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise(made => canvas.toBlob(made, 'image/jpeg', 0.8));
}
