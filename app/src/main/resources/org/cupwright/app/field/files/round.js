// The changer's page: loads a day, keeps it, and shows the round or one green of it.
'use strict';

import {recall} from './choices.js';
import {holeView} from './green.js';
import {asked, days, dropDay, dropEntry, entries, keepDay} from './kept.js';
import {meet, names} from './names.js';
import {button, el, say, speak} from './parts.js';
import {ask, greet, line, sendNow, tell} from './sent.js';
import {roundView} from './shed.js';
import {allHoles, page} from './state.js';
import {standing} from './unsent.js';
import {draws, refresh} from './writing.js';

const DAY_PATIENCE = 300000; // ms: the office may have to judge eighteen greens first; our choice
const DAYS_KEPT = 3; // our choice: yesterday's may still be looked at

const main = document.getElementById('content');

async function load() {
  page.loading = true;
  await refresh();
  try {
    const found = await ask('/round/day' + location.search, DAY_PATIENCE);
    greet(found);
    delete found.mark;
    await keepDay({...found, clockBehind: line.clockBehind});
    await tidy(found.date);
    page.day = found;
    line.state = '';
    page.problem = null;
  } catch (failed) {
    line.state = failed.signedOut ? 'signedOut' : 'offline';
    page.problem = failed.told?.error ?? null;
  }
  page.loading = false;
  await refresh();
}

// Older days go, and with them what was sent; what was not stays until it is.
async function tidy(date) {
  const all = (await days()).map(one => one.date).filter(one => one !== date).sort().reverse();
  for (const old of all.slice(DAYS_KEPT - 1)) { await dropDay(old); }
  const held = new Set([date, ...all.slice(0, DAYS_KEPT - 1)]);
  for (const entry of await entries()) {
    if (entry.state === 'sent' && !held.has(entry.says.day)) { await dropEntry(entry.id); }
  }
}

function show(moved) {
  const day = page.day;
  if (day) {
    speak(day.words);
    document.documentElement.lang = day.language;
  }
  main.setAttribute('aria-busy', String(page.loading));
  const stood = new Map([...main.querySelectorAll('details')].map(one => [one.firstElementChild.textContent, one.open]));
  const typed = new Map([...main.querySelectorAll('input:not([type=file]), textarea, select')]
      .map(field => [field.id, field.type === 'checkbox' ? field.checked : field.value]));
  const focused = document.activeElement?.id;
  const hole = allHoles().find(one => one.hole === decodeURIComponent(location.hash.slice(1)));
  main.replaceChildren(...(day === null ? [el('h1', {tabindex: -1}, say('round.title')),
    el('p', null, page.loading ? say('round.loading') : say('round.noDay')), names(load), standing(),
    !page.loading && button(say('round.loadAgain'), load, 'main')] : hole ? holeView(hole) : roundView(load))
      .flat(2).filter(Boolean));
  if (moved) {
    window.scrollTo(0, 0);
    main.querySelector('h1').focus();
    return;
  }
  main.querySelectorAll('details').forEach(one => { one.open = stood.get(one.firstElementChild.textContent) ?? one.open; });
  typed.forEach((value, id) => {
    const field = id && document.getElementById(id);
    if (field) { if (field.type === 'checkbox') { field.checked = value; } else { field.value = value; } }
  });
  if (focused) { document.getElementById(focused)?.focus(); }
}

async function begin() {
  page.storage = await asked();
  await recall();
  const wanted = new URLSearchParams(location.search).get('date');
  try {
    const all = (await days()).sort((one, other) => one.loadedAt < other.loadedAt ? 1 : -1);
    page.day = all.find(one => !wanted || one.date === wanted) ?? null;
    line.clockBehind = page.day?.clockBehind ?? 0;
  } catch { page.storage = {keeps: false, safely: false}; }
  draws(() => show(false));
  tell(refresh);
  window.addEventListener('hashchange', () => show(true));
  window.addEventListener('online', sendNow);
  meet();
  await load();
  sendNow();
}

navigator.serviceWorker?.register('/round/worker.js', {scope: '/round'}).catch(() => {});
begin();
