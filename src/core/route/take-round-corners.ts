import { ringsOf } from './rings-of.ts';
import { type Obstacles, type Place, roomAt } from './take-round-obstacles.ts';

/** Largest turn between two places of one corner: a 60 degree turn goes 15 % farther off than the clearance. */
const TURN = Math.PI / 3;
/** Shores are simplified by this share of the clearance, and rounded so much farther off. */
const SIMPLER = 1 / 4;
/** In open water by at least this, m: finer turns would be lost at sea. */
const COARSE = 12;
/** Radians; what turns by less goes straight on, and what turns back to within this turns right back. */
const STRAIGHT = 1e-6;
/** m added to every clearance, for rounding of coordinates and of the plane. */
const MARGIN = 0.3;

/** Distances at which corners are rounded: the clearance, and halves of it down to a few metres for narrow waters. */
export function levelsOf(clearance: number): number[] {
  const levels = [clearance];
  for (let level = clearance / 2; level >= 4; level /= 2) levels.push(level);
  return levels;
}

/** A distance to keep, m, and how far a shore so far off may be simplified. */
interface Step {
  readonly level: number;
  readonly within: number;
}

/** A place off a corner, and the unit vector there from the corner. */
export interface Turning extends Place {
  readonly nx: number;
  readonly ny: number;
}

/**
 * Places off the corners of one polygon at which a shortest track may turn: off convex corners of its shore,
 * simplified, at the clearance; nearer where something else leaves no room for that.
 */
export function cornersOf(obstacles: Obstacles, part: number, levels: readonly number[]): Turning[] {
  const { waters, kx, ky } = obstacles;
  const { bounds } = waters;
  const places: Turning[] = [];
  const known = ({ x, y }: Place): boolean =>
    bounds !== undefined &&
    x / kx >= bounds.minX &&
    x / kx <= bounds.maxX &&
    y / ky >= bounds.minY &&
    y / ky <= bounds.maxY;
  // The clearance once coarsely, for open water; then ever finer, wherever the one before finds no room.
  const steps: Step[] = [
    { level: levels[0]!, within: Math.max(levels[0]! * SIMPLER, COARSE) },
    ...levels.map((level) => ({ level, within: (level * SIMPLER) / 2 })),
  ];
  ringsOf(waters.parts[part]!).forEach((ring, which) => {
    const shore = inMetres(ring, kx, ky);
    // What is barred lies to the left of an outer ring sailed anticlockwise, and of a hole sailed clockwise.
    if (areaOf(shore) > 0 !== (which === 0)) shore.reverse();
    steps.forEach(({ level, within }, step) => {
      const before = steps[step - 1];
      for (const { corner, directions } of convex(simplified(shore, within))) {
        for (const { x, y, stretch } of directions) {
          const at = (off: Step): Place => {
            const far = (off.level + off.within + MARGIN) * stretch;
            return { x: corner.x + far * x, y: corner.y + far * y };
          };
          const wider = before && at(before);
          if (wider && known(wider) && roomAt(obstacles, wider, before.level) >= before.level) continue;
          const place = at({ level, within });
          if (known(place) && roomAt(obstacles, place, level, 'hard') >= level) places.push({ ...place, nx: x, ny: y });
        }
      }
    });
  });
  return places;
}

interface Corner {
  readonly corner: Place;
  /** Unit vectors away from the corner, and how many times the distance a place lies off in each. */
  readonly directions: readonly (Place & { readonly stretch: number })[];
}

/** Corners that point into the water, with the directions in which a track bends round them. */
function convex(shore: readonly Place[]): Corner[] {
  const corners: Corner[] = [];
  for (let i = 0; i < shore.length; i++) {
    const before = shore[(i + shore.length - 1) % shore.length]!;
    const corner = shore[i]!;
    const after = shore[(i + 1) % shore.length]!;
    const arriving = Math.atan2(corner.y - before.y, corner.x - before.x);
    const leaving = Math.atan2(after.y - corner.y, after.x - corner.x);
    let turn = leaving - arriving;
    // Right back, as at both ends of a rock that is but a line, is round the end.
    if (turn <= STRAIGHT - Math.PI) turn += 2 * Math.PI;
    if (turn > Math.PI + STRAIGHT) turn -= 2 * Math.PI;
    if (turn <= STRAIGHT) continue;
    turn = Math.min(turn, Math.PI);
    const count = Math.ceil(turn / TURN);
    const stretch = 1 / Math.cos(turn / count / 2);
    const directions = Array.from({ length: count }, (_, k) => {
      const angle = arriving - Math.PI / 2 + (turn * (k + 0.5)) / count;
      return { x: Math.cos(angle), y: Math.sin(angle), stretch };
    });
    corners.push({ corner, directions });
  }
  return corners;
}

function inMetres(ring: Float64Array, kx: number, ky: number): Place[] {
  const shore: Place[] = [];
  for (let i = 0; i < ring.length; i += 2) shore.push({ x: ring[i]! * kx, y: ring[i + 1]! * ky });
  return shore;
}

/** Twice the area, positive anticlockwise. */
function areaOf(shore: readonly Place[]): number {
  let sum = 0;
  const { x: x0, y: y0 } = shore[0]!;
  for (let i = 1; i + 1 < shore.length; i++) {
    const a = shore[i]!;
    const b = shore[i + 1]!;
    sum += (a.x - x0) * (b.y - y0) - (b.x - x0) * (a.y - y0);
  }
  return sum;
}

/** A ring with the vertices left out that lie within a distance, m, of the line without them (Douglas and Peucker 1973). */
function simplified(ring: readonly Place[], within: number): Place[] {
  if (ring.length < 4) return [...ring];
  const kept = new Uint8Array(ring.length);
  const first = ring[0]!;
  let far = 0;
  let reach = -1;
  ring.forEach(({ x, y }, i) => {
    const away = (x - first.x) ** 2 + (y - first.y) ** 2;
    if (away > reach) {
      reach = away;
      far = i;
    }
  });
  kept[0] = 1;
  kept[far] = 1;
  const spans: [number, number][] = [
    [0, far],
    [far, ring.length],
  ];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span;
    const a = ring[from]!;
    const b = ring[to % ring.length]!;
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const long2 = dx * dx + dy * dy;
    let most = within * within;
    let at = -1;
    for (let i = from + 1; i < to; i++) {
      const { x, y } = ring[i]!;
      const share = long2 > 0 ? Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / long2)) : 0;
      const away = (x - a.x - share * dx) ** 2 + (y - a.y - share * dy) ** 2;
      if (away > most) {
        most = away;
        at = i;
      }
    }
    if (at < 0) continue;
    kept[at] = 1;
    spans.push([from, at], [at, to]);
  }
  return ring.filter((_, i) => kept[i]);
}
