// Lengths as they are read on a tape and counted in steps.
'use strict';

import {say} from './parts.js';
import {page} from './state.js';

const FOOT = 0.3048; // m

export const unit = () => page.day.feet ? FOOT : 1; // m, in which lengths are typed

const figures = (value, decimals) => value.toLocaleString(document.documentElement.lang,
    {minimumFractionDigits: decimals, maximumFractionDigits: decimals});

export const length = (metres, decimals) =>
    say(page.day.feet ? 'round.find.feet' : 'round.find.metres', figures(metres / unit(), decimals));

// Of something small, in centimetres or inches.
export const small = metres =>
    page.day.feet ? say('round.find.inches', figures(12 * metres / FOOT, 0)) : say('round.find.centimetres', figures(100 * metres, 0));

// A number of half steps: 4½.
export function counted(halves) {
  const whole = Math.floor(halves);
  return halves === whole ? String(whole) : (whole || '') + '½';
}

export const paces = number => say(number > 0 && number <= 1 ? 'round.find.pace' : 'round.find.paces', counted(number));

// Where somebody stands who has so far to go yet: 3 paces short and 1 pace right. Nothing of what is none.
export function beside(go, played, said) {
  const on = played ? ['short', 'past'] : ['south', 'north'];
  const side = played ? ['left', 'right'] : ['west', 'east'];
  const parts = [[go.ahead, on], [go.right, side]]
      .map(([metres, words]) => [said(Math.abs(metres)), words[metres > 0 ? 0 : 1]])
      .filter(([text]) => text)
      .map(([text, word]) => say('round.find.' + word, text));
  return parts.length === 2 ? say('round.find.and', ...parts) : parts[0] ?? '';
}
