import type { Slice } from './float-body.ts';

/** The water's surface in the boat's own frame: height `level` at `middle` m, falling forward by `bowUp`, rising to starboard by `heel` (tangents). */
export interface Surface {
  readonly level: number;
  readonly bowUp: number;
  readonly heel: number;
}

/** What lies under the surface: volume and its first moments, and moments of the waterplane seen from above. */
export interface Immersed {
  volume: number;
  x: number;
  y: number;
  z: number;
  area: number;
  ax: number;
  ay: number;
  axx: number;
  axy: number;
  ayy: number;
}

/** Sums over the slices of everything under the surface; moments along are about `middle`. */
export function immersedUnder(slices: readonly Slice[], middle: number, { level, bowUp, heel }: Surface): Immersed {
  const sum: Immersed = { volume: 0, x: 0, y: 0, z: 0, area: 0, ax: 0, ay: 0, axx: 0, axy: 0, ayy: 0 };
  const norm = Math.sqrt(1 + heel * heel);
  for (const slice of slices) {
    const { thickness, round, ring } = slice;
    const x = slice.x - middle;
    const height = level - bowUp * x;
    if (round) roundUnder(round, { height, heel, norm });
    else if (ring) ringUnder(ring, height, heel);
    if (cut.area > 0) {
      sum.volume += thickness * cut.area;
      sum.x += thickness * cut.area * x;
      sum.y += thickness * cut.y;
      sum.z += thickness * cut.z;
    }
    const breadth = cut.to - cut.from;
    if (breadth <= 0) continue;
    const middleY = (cut.to + cut.from) / 2;
    const strip = thickness * breadth;
    sum.area += strip;
    sum.ax += strip * x;
    sum.ay += strip * middleY;
    sum.axx += strip * x * x;
    sum.axy += strip * x * middleY;
    sum.ayy += strip * (middleY * middleY + (breadth * breadth) / 12);
  }
  return sum;
}

/** One slice under water: area, its moments, and where the surface cuts it. Reused, so that a sweep allocates nothing. */
const cut = { area: 0, y: 0, z: 0, from: 0, to: 0 };

/** Circular segment below a sloping line (geometry). */
function roundUnder(
  { y, z, radius }: NonNullable<Slice['round']>,
  { height, heel, norm }: { readonly height: number; readonly heel: number; readonly norm: number },
): void {
  /** How far the middle lies under the surface, at right angles to it. */
  const deep = (height + heel * y - z) / norm;
  cut.area = cut.y = cut.z = cut.from = cut.to = 0;
  if (deep <= -radius) return;
  if (deep >= radius) {
    cut.area = Math.PI * radius * radius;
    cut.y = cut.area * y;
    cut.z = cut.area * z;
    return;
  }
  const phi = Math.acos(-deep / radius);
  const sine = Math.sqrt(1 - (deep / radius) ** 2);
  cut.area = radius * radius * (phi + (deep / radius) * sine);
  // First moment of a segment about the middle of its circle: 2/3 r^3 sin^3.
  const away = (2 / 3) * (radius * sine) ** 3;
  cut.y = cut.area * y + (away * heel) / norm;
  cut.z = cut.area * z - away / norm;
  const foot = y - (deep * heel) / norm;
  const half = (radius * sine) / norm;
  cut.from = foot - half;
  cut.to = foot + half;
}

/** A convex ring below a sloping line, by its edges one after another (shoelace formulas). */
function ringUnder(ring: readonly number[], height: number, heel: number): void {
  let twice = 0;
  let sixY = 0;
  let sixZ = 0;
  cut.from = Infinity;
  cut.to = -Infinity;
  let firstY = 0;
  let firstZ = 0;
  let lastY = 0;
  let lastZ = 0;
  let count = 0;
  const add = (y: number, z: number): void => {
    if (count === 0) {
      firstY = y;
      firstZ = z;
    } else {
      const cross = lastY * z - y * lastZ;
      twice += cross;
      sixY += (lastY + y) * cross;
      sixZ += (lastZ + z) * cross;
    }
    lastY = y;
    lastZ = z;
    count++;
  };
  const size = ring.length;
  for (let i = 0; i < size; i += 2) {
    const y = ring[i]!;
    const z = ring[i + 1]!;
    const nextY = ring[(i + 2) % size]!;
    const nextZ = ring[(i + 3) % size]!;
    const here = height + heel * y - z;
    const there = height + heel * nextY - nextZ;
    if (here >= 0) add(y, z);
    if (here >= 0 !== there >= 0) {
      const share = here / (here - there);
      const atY = y + share * (nextY - y);
      add(atY, z + share * (nextZ - z));
      if (atY < cut.from) cut.from = atY;
      if (atY > cut.to) cut.to = atY;
    }
  }
  if (count > 0) add(firstY, firstZ);
  const sign = twice < 0 ? -1 : 1;
  cut.area = Math.abs(twice) / 2;
  cut.y = (sign * sixY) / 6;
  cut.z = (sign * sixZ) / 6;
  if (cut.from > cut.to) cut.from = cut.to = 0;
}
