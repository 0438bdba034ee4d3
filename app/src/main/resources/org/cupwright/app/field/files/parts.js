// What pages are put together of: elements, fields, buttons, lists. All words come from the office.
'use strict';

let words = JSON.parse(document.getElementById('words').textContent);

export function speak(others) { words = others; }

export const say = (key, ...values) =>
    values.reduce((text, value, i) => text.replaceAll('{' + i + '}', value), words[key]);

export const time = moment => new Date(moment).toLocaleTimeString(document.documentElement.lang,
    {hour: '2-digit', minute: '2-digit', hourCycle: 'h23'});

// An element with attributes, listeners (on…) and what is in it.
export function el(tag, attributes, ...inside) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (name.startsWith('on')) { made.addEventListener(name.slice(2), value); }
    else if (value !== false && value != null) { made.setAttribute(name, value === true ? '' : value); }
  }
  made.append(...inside.flat().filter(part => part != null && part !== false && part !== ''));
  return made;
}

export const list = (texts, css) =>
    texts?.length ? el('ul', {class: css}, texts.map(text => el('li', null, text))) : null;

export const button = (text, act, css, more) =>
    el('button', {type: 'button', class: css, onclick: act, ...more}, text);

export function drawing(svg) {
  return document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);
}

export function number(id, label, decimals = 1) {
  const input = el('input', {id, inputmode: 'decimal', pattern: `[0-9]{1,3}([.,][0-9]{1,${decimals}})?`, required: true, size: 3 + decimals});
  return {field: el('div', null, el('label', {for: id}, label), input), value: () => input.value.replace(',', '.')};
}

export function choice(id, label, options) {
  const input = el('select', {id}, options.map(([value, text]) => el('option', {value}, text)));
  return {field: el('div', null, el('label', {for: id}, label), input), value: () => input.value};
}
