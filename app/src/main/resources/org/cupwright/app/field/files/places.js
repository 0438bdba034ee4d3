// Where a place of a green is as the crew says it: so much on, so far from a side, in which third. The office's GreenFrame
// in the phone's words: the same lengths by the same arithmetic, so that thirds never differ.
'use strict';

const ROUNDING_METRES = 1e-6; // as the office has it

const right = (frame, [east, north]) => (east - frame.origin[0]) * frame.play[1] - (north - frame.origin[1]) * frame.play[0];
const forward = (frame, [east, north]) => (east - frame.origin[0]) * frame.play[0] + (north - frame.origin[1]) * frame.play[1];

// The green's edge in straight pieces, [across, along, across, along], for lines with play and across it.
export function edgeOf(frame) {
  if (!frame) { return null; }
  const rings = frame.edge.map(ring => ring.map(corner => [right(frame, corner), forward(frame, corner)]));
  const withPlay = rings.flatMap(ring => ring.slice(1).map((corner, i) => [...ring[i], ...corner]));
  const acrossPlay = withPlay.map(([x1, y1, x2, y2]) => [y1, x1, y2, x2]);
  const fronts = frame.fronts.map(mark => forward(frame, mark));
  const ahead = rings[0].map(corner => corner[1]);
  return {withPlay, acrossPlay, whole: [Math.min(...(fronts.length > 0 ? fronts : ahead)), Math.max(...ahead)]};
}

// The piece of a line that holds a point: from where to where on the green it runs.
function holding(pieces, across, along) {
  const outside = ([from, to]) => Math.max(0, from - along, along - to);
  for (const beside of [0, ROUNDING_METRES, -ROUNDING_METRES]) {
    const at = across + beside;
    const crossings = pieces.filter(([across1, , across2]) => (across1 <= at) !== (across2 <= at))
        .map(([across1, along1, across2, along2]) => along1 + (at - across1) * (along2 - along1) / (across2 - across1))
        .sort((one, other) => one - other);
    let nearest = null;
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const piece = [crossings[i], crossings[i + 1]];
      if (!nearest || outside(piece) < outside(nearest)) { nearest = piece; }
    }
    if (nearest && outside(nearest) <= ROUNDING_METRES) { return nearest; }
  }
  return [along, along];
}

const third = ([from, to], at) => 3 * (at - from) < to - from ? 0 : 3 * (to - at) < to - from ? 2 : 1;

const fromStart = ([from, to], at) => Math.min(to - from, Math.max(0, at - from));

// Where a place of the green is as the crew says it, in metres; null where no line of play is known.
export function placeOf(green, at) {
  if (!green.frame) { return null; }
  const [x, y] = [right(green.frame, at), forward(green.frame, at)];
  const depth = green.frame.squared ? green.edge.whole : holding(green.edge.withPlay, x, y);
  const width = holding(green.edge.acrossPlay, y, x);
  const left = fromStart(width, x);
  const across = width[1] - width[0];
  return {on: green.frame.squared ? y - depth[0] : fromStart(depth, y), left, right: across - left,
    side: left <= across - left ? 'L' : 'R', third: third(depth, y), lateral: third(width, x)};
}

// To the half pace, as the office rounds: a quarter goes to the even half.
export function halves(metres, pace) {
  const twice = 2 * metres / pace;
  const near = Math.round(twice);
  return (near - twice === 0.5 && near % 2 !== 0 ? near - 1 : near) / 2;
}

export const halvesDown = (metres, pace) => Math.floor(2 * metres / pace + 1e-9) / 2;
