// What the page draws upon the map of a green, in layers that each part of the page renews by itself.
'use strict';

const SVG = 'http://www.w3.org/2000/svg';

export function shape(tag, attributes, text) {
  const made = document.createElementNS(SVG, tag);
  Object.entries(attributes).forEach(([name, value]) => made.setAttribute(name, value));
  if (text) { made.textContent = text; }
  return made;
}

export function over(map, layer, shapes) {
  map?.querySelector('g.' + layer)?.remove();
  if (map && shapes.length > 0) {
    const group = shape('g', {class: 'laid ' + layer});
    group.append(...shapes);
    map.append(group);
  }
}

export const line = ([x1, y1], [x2, y2]) => shape('line', {x1, y1, x2, y2});

// The name of a mark, on the side of it where the map has room.
export function named([x, y], name, width) {
  const left = x > width * 0.6;
  return shape('text', {x: left ? x - 16 : x + 16, y: y + 12, 'text-anchor': left ? 'end' : 'start'}, name);
}
