// Where lines across a green run on it, from edge to edge: the one arithmetic by which spots are paced on the phone.
'use strict';

const ROUNDING = 1e-6; // m, by which a point of the edge may seem to lie off it: as the office has it

// The edge in straight pieces, [across, along, across, along], for lines with play and for lines across it. rings: the
// corners [right, on] of each ring, whether or not the first stands at the end again.
export function edges(rings) {
  const withPlay = rings.flatMap(ring => ring.map((corner, i) => [...ring[(i || ring.length) - 1], ...corner]));
  return {withPlay, acrossPlay: withPlay.map(([x1, y1, x2, y2]) => [y1, x1, y2, x2])};
}

// The piece of a line that holds a point of the green, [from, to]; null off the green.
export function holding(pieces, across, along) {
  const outside = ([from, to]) => Math.max(0, from - along, along - to);
  for (const beside of [0, ROUNDING, -ROUNDING]) {
    const at = across + beside;
    const crossings = pieces.filter(([across1, , across2]) => (across1 <= at) !== (across2 <= at))
        .map(([across1, along1, across2, along2]) => along1 + (at - across1) * (along2 - along1) / (across2 - across1))
        .sort((one, other) => one - other);
    let nearest = null;
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const piece = [crossings[i], crossings[i + 1]];
      if (!nearest || outside(piece) < outside(nearest)) { nearest = piece; }
    }
    if (nearest && outside(nearest) <= ROUNDING) { return nearest; }
  }
  return null;
}

// How far into a piece a point of it is.
export const fromStart = ([from, to], at) => Math.min(to - from, Math.max(0, at - from));
