// Which day is carried, and how old what is known of it is.
'use strict';

import {say, time} from './parts.js';
import {line} from './sent.js';

const MINUTE = 60000; // ms
const HOUR = 60 * MINUTE;
const OLD = 6 * HOUR; // loaded before that, others may have done much since: our choice

// The office's time, as far as this phone knows it.
const now = () => Date.now() + line.clockBehind;

function said(age) {
  if (age < 2 * MINUTE) { return say('round.age.now'); }
  if (age < 2 * HOUR) { return say('round.age.minutes', Math.round(age / MINUTE)); }
  return age < 48 * HOUR ? say('round.age.hours', Math.round(age / HOUR)) : say('round.age.days', Math.round(age / 24 / HOUR));
}

export function loaded(day) {
  return say('round.loadedAt', time(day.loadedAt)) + ' (' + said(now() - Date.parse(day.loadedAt)) + ')';
}

// What is wrong with the day that is carried; empty where nothing is.
export function outdated(day) {
  const today = new Date(now()).toLocaleDateString('sv'); // as 2026-05-31
  if (day.date !== today) { return say('round.otherDay', day.title); }
  return now() - Date.parse(day.loadedAt) > OLD ? say('round.old') : '';
}
