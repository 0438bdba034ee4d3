// Holds the measures of the changer's page to the files of cases. Answers how many of each were tried, and which lines
// do not come out as they say.
import * as measures from '/measures.js';

const MILLIMETRE = 0.001;

function read(line) {
  const [word, ...parts] = line.split(' ');
  return {word, line, ...Object.fromEntries(parts.map(part => part.split('=')))};
}

const point = text => text.split(',').map(Number);
const points = text => text.split(';').map(point);
const rings = text => text.split('|').map(points);
const near = (one, other, within = MILLIMETRE) => Math.abs(one - other) <= within;
const nearBoth = (one, other) => near(one[0], other[0]) && near(one[1], other[1]);

let green = null;
let world = null;

const HOLDS = {
  pace: one => measures.halves(Number(one.metres), Number(one.pace)) === Number(one.half)
      && measures.halvesDown(Number(one.metres), Number(one.pace)) === Number(one.down),
  green: one => {
    if (one.local) { green = {rings: rings(one.local), front: one.on === 'chord' ? undefined : Number(one.front)}; }
    world = one.world && point(one.world);
    return true;
  },
  at: one => {
    const place = measures.place(green, point(one.local));
    return place !== null && near(place.on, Number(one.on)) && near(place.back, Number(one.back))
        && place.left === (one.side === 'L') && near(place.side, Number(one.from));
  },
  tapes: one => {
    const [best] = measures.pairs(point(one.at), points(one.marks));
    if (one.pair === 'none' || !best) { return one.pair === 'none' && !best; }
    const turned = Math.abs(best.axis - Number(one.axis));
    return one.pair === best.first + ',' + best.second && nearBoth(best.metres, point(one.read))
        && near(best.angle, Number(one.angle), 0.01) && near(best.longer, Number(one.longer), 5e-5)
        && near(best.shorter, Number(one.shorter), 5e-5) && Math.min(turned, 180 - turned) < 0.05;
  },
  meet: one => {
    const at = measures.meet({rings: rings(one.green)}, point(one.first), Number(one.r), point(one.second), Number(one.s));
    return one.at === 'none' ? at === null : at !== null && nearBoth(at, point(one.at));
  },
  phone: one => nearBoth(measures.inFrame(world, Number(one.lon), Number(one.lat)), point(one.at)),
};

export function hold(text) {
  const answer = {tried: {}, wrong: []};
  for (const line of text.split('\n').filter(each => each && !each.startsWith('#'))) {
    const one = read(line);
    answer.tried[one.word] = (answer.tried[one.word] ?? 0) + 1;
    if (!HOLDS[one.word](one)) { answer.wrong.push(line); }
  }
  return answer;
}
