// The changer's page: loads a day, keeps it, and shows the round or one green of it.
'use strict';

import {recall} from './choices.js';
import {holeView} from './green.js';
import {asked, days, dropDay, dropEntry, entries, keepDay} from './kept.js';
import {meet, names} from './names.js';
import {button, el, say, speak} from './parts.js';
import {ask, greet, line, sendNow, stateOf, tell} from './sent.js';
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
    page.day = found;
    line.state = '';
    page.problem = null;
    await keep(found);
  } catch (failure) {
    line.state = stateOf(failure);
    page.problem = failure.told?.error ?? null;
  }
  page.loading = false;
  await refresh();
}

// A phone that keeps nothing shows the day all the same, as long as the page is open.
async function keep({mark, markName, heardAt, ...day}) {
  try {
    await keepDay({...day, clockBehind: line.clockBehind});
    await tidy(day.date);
  } catch { page.storage = {keeps: false, safely: false}; }
}

// Older days go, and with them what was sent; what was not stays until it is.
async function tidy(date) {
  const all = await days();
  const dates = [...new Set(all.map(one => one.date))].filter(one => one !== date).sort().reverse();
  const held = new Set([date, ...dates.slice(0, DAYS_KEPT - 1)]);
  for (const old of all.filter(one => !held.has(one.date))) { await dropDay(old); }
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
  const photos = [...main.querySelectorAll('input[type=file]')].filter(field => field.files.length > 0);
  const {id: focused, selectionStart, selectionEnd} = document.activeElement ?? {};
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
  photos.forEach(one => {
    const field = document.getElementById(one.id);
    if (field) { field.files = one.files; }
  });
  if (focused) {
    const field = document.getElementById(focused);
    field?.focus();
    if (selectionStart != null) { field?.setSelectionRange?.(selectionStart, selectionEnd); }
  }
}

async function begin() {
  page.storage = await asked();
  await recall();
  const wanted = new URLSearchParams(location.search);
  const isWanted = day => ['date', 'course'].every(name => !wanted.get(name) || day[name] === wanted.get(name));
  try {
    const all = (await days()).sort((one, other) => one.loadedAt < other.loadedAt ? 1 : -1);
    page.day = all.find(isWanted) ?? null;
    line.clockBehind = page.day?.clockBehind ?? 0;
  } catch { page.storage = {keeps: false, safely: false}; }
  draws(() => show(false));
  tell(refresh);
  // A tap that trembles is one: its second half is not to fall on what stands there by then.
  document.addEventListener('click', event => { if (event.detail > 1) { event.preventDefault(); event.stopPropagation(); } }, true);
  window.addEventListener('hashchange', () => show(true));
  window.addEventListener('online', sendNow);
  meet();
  await load();
  sendNow();
}

navigator.serviceWorker?.register('/round/worker.js', {scope: '/round'}).catch(() => {});
begin();
