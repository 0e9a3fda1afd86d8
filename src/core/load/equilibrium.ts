import type { Position } from '../craft/shapes.ts';
import { DEGREE } from '../units/convert.ts';
import type { Edge, FloatBody, Slice } from './float-body.ts';
import { type Immersed, immersedUnder, type Surface } from './immersed.ts';

/** A weight to be kept afloat: all up, kg, and its centre. */
export interface Weight extends Required<Position> {
  readonly mass: number;
}

/** How a boat floats at rest. */
export type Floating =
  | {
      readonly state: 'afloat';
      /** Keel under water at the middle of the waterline, m. */
      readonly draft: number;
      /** Bow up positive. */
      readonly trimDeg: number;
      /** To starboard positive. */
      readonly heelDeg: number;
      /** Height of the lowest point of the edge over the water, m; below 0 water comes in. */
      readonly freeboard: number;
      readonly lowest: Edge;
      readonly surface: Surface;
    }
  /** Nothing carries the weight, it turns over, or an end goes under. */
  | { readonly state: 'sinks' | 'capsizes' | 'upends' };

/** Tangents beyond which a small open boat is lost whatever the sums say. */
const HEELED_OVER = Math.tan(45 * DEGREE);
const UPENDED = Math.tan(25 * DEGREE);
const ROUNDS = 40;
/** Longest step of the search: m, and tangent. */
const STEP = { level: 0.12, slope: 0.12 };
/** Found within a hundredth of a millimetre, and as good in slope. */
const FOUND = 1e-6;
/** Near enough to begin with, m. */
const ROUGHLY = 0.02;

/**
 * Attitude in which weight and buoyancy balance, by large angles: volume as heavy as the boat, and its centre straight
 * below the centre of gravity as the water sees it (Newton on level and both slopes with the waterplane's moments).
 */
export function equilibrium(body: FloatBody, weight: Weight, density: number): Floating {
  const { slices, symmetric } = body;
  const upright = symmetric && weight.y === 0;
  const wanted = weight.mass / density;
  if (wanted >= body.volume) return { state: 'sinks' };
  const level = levelFor(slices, body.middle, wanted, ROUGHLY);
  let found = solved(body, weight, wanted, { level, bowUp: 0, heel: 0 });
  if (!('state' in found) && upright && stiffness(slices, body.middle, weight, found).across <= 0) {
    // Upright it stands on a knife's edge: it falls to the side until something holds it.
    const leaning = solved(body, weight, wanted, { ...found, heel: 0.6 });
    found = 'state' in leaning || Math.abs(leaning.heel) > 0.01 ? leaning : { state: 'capsizes' };
  }
  if ('state' in found) return found;
  return floatingAt(body, found);
}

/** Keel to water, slopes as angles, and the lowest point of the edge. */
function floatingAt(body: FloatBody, surface: Surface): Floating {
  const { level, bowUp, heel } = surface;
  const norm = Math.sqrt(1 + bowUp * bowUp + heel * heel);
  let freeboard = Infinity;
  let lowest = body.edges[0]!;
  for (const edge of body.edges) {
    const water = level - bowUp * (edge.x - body.middle) + heel * edge.y;
    const over = (edge.z - water) / norm + edge.radius;
    if (over < freeboard) {
      freeboard = over;
      lowest = edge;
    }
  }
  return {
    state: 'afloat',
    draft: level / norm,
    trimDeg: Math.atan(bowUp) / DEGREE,
    heelDeg: Math.atan(heel) / DEGREE,
    freeboard,
    lowest,
    surface,
  };
}

/** Height of the water over the keel at which the level boat displaces this volume, m. */
export function levelFor(slices: readonly Slice[], middle: number, volume: number, within = FOUND): number {
  let low = 0;
  let high = 2;
  let level = 0.2;
  for (let round = 0; round < 40 && high - low > FOUND; round++) {
    const sum = immersedUnder(slices, middle, { level, bowUp: 0, heel: 0 });
    const off = sum.volume - volume;
    if (off < 0) low = level;
    else high = level;
    const next = level - off / sum.area;
    if (Math.abs(next - level) < within) return next;
    // Newton while it stays between what is known, else halving.
    level = next > low && next < high ? next : (low + high) / 2;
  }
  return level;
}

type Lost = { readonly state: 'sinks' | 'capsizes' | 'upends' };

function solved(
  { slices, middle, symmetric }: FloatBody,
  weight: Weight,
  wanted: number,
  from: Surface,
): Surface | Lost {
  let { level, bowUp, heel } = from;
  const upright = symmetric && weight.y === 0 && heel === 0;
  for (let round = 0; round < ROUNDS; round++) {
    const sum = immersedUnder(slices, middle, { level, bowUp, heel });
    const g = slopes(sum, { level, bowUp, heel }, weight, middle);
    const off = { volume: sum.volume - wanted, along: g.along, across: g.across };
    const step = newton(g, off, upright);
    if (!step) return { state: Math.abs(heel) > Math.abs(bowUp) ? 'capsizes' : 'sinks' };
    const shrink = Math.min(
      1,
      STEP.level / Math.abs(step.level || 1e-12),
      STEP.slope / Math.abs(step.bowUp || 1e-12),
      STEP.slope / Math.abs(step.heel || 1e-12),
    );
    level -= shrink * step.level;
    bowUp -= shrink * step.bowUp;
    heel -= shrink * step.heel;
    if (Math.abs(heel) > HEELED_OVER) return { state: 'capsizes' };
    if (Math.abs(bowUp) > UPENDED) return { state: 'upends' };
    if (Math.abs(step.level) + Math.abs(step.bowUp) + Math.abs(step.heel) < FOUND) return { level, bowUp, heel };
  }
  return { state: Math.abs(heel) > Math.abs(bowUp) ? 'capsizes' : 'upends' };
}

interface Slopes {
  readonly along: number;
  readonly across: number;
  /** Rows: volume, along, across; columns: level, bowUp, heel. */
  readonly rows: readonly (readonly [number, number, number])[];
}

/**
 * Moments about the centre of gravity in the plane of the water, m4, and how they and the volume follow the surface:
 * Sx - bowUp Sz = 0 and Sy + heel Sz = 0, with S the moments of the displaced volume about the centre of gravity.
 */
function slopes(sum: Immersed, { level, bowUp, heel }: Surface, { x, y, z }: Weight, middle: number): Slopes {
  const gx = x - middle;
  const sx = sum.x - gx * sum.volume;
  const sy = sum.y - y * sum.volume;
  const sz = sum.z - z * sum.volume;
  // The surface rises by (1, -x, y) for each of level, bowUp and heel.
  const rises = [
    [sum.area, sum.ax, sum.ay],
    [-sum.ax, -sum.axx, -sum.axy],
    [sum.ay, sum.axy, sum.ayy],
  ] as const;
  const row = (
    part: (rise: readonly [number, number, number]) => number,
    own: readonly [number, number, number],
  ): readonly [number, number, number] => [part(rises[0]) + own[0], part(rises[1]) + own[1], part(rises[2]) + own[2]];
  const dz = ([a, ax, ay]: readonly [number, number, number]) => (level - z) * a - bowUp * ax + heel * ay;
  return {
    along: sx - bowUp * sz,
    across: sy + heel * sz,
    rows: [
      row(([a]) => a, [0, 0, 0]),
      row((rise) => rise[1] - gx * rise[0] - bowUp * dz(rise), [0, -sz, 0]),
      row((rise) => rise[2] - y * rise[0] + heel * dz(rise), [0, 0, sz]),
    ],
  };
}

/** Cramer's rule; without heel only level and trim. Undefined: nothing cuts the water any more. */
function newton(
  { rows }: Slopes,
  off: { readonly volume: number; readonly along: number; readonly across: number },
  upright: boolean,
): Surface | undefined {
  const [[a, b, c], [d, e, f], [g, h, i]] = rows as [
    [number, number, number],
    [number, number, number],
    [number, number, number],
  ];
  const { volume: p, along: q, across: r } = off;
  if (upright) {
    const whole = a * e - b * d;
    if (!(Math.abs(whole) > 1e-12)) return undefined;
    return { level: (p * e - b * q) / whole, bowUp: (a * q - p * d) / whole, heel: 0 };
  }
  const whole = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  if (!(Math.abs(whole) > 1e-12)) return undefined;
  return {
    level: (p * (e * i - f * h) - b * (q * i - f * r) + c * (q * h - e * r)) / whole,
    bowUp: (a * (q * i - f * r) - p * (d * i - f * g) + c * (d * r - q * g)) / whole,
    heel: (a * (e * r - q * h) - b * (d * r - q * g) + p * (d * h - e * g)) / whole,
  };
}

/** Metacentric heights across and along, m, and the waterplane, m2, at a surface (slope of the righting arms there). */
export function stiffness(
  slices: readonly Slice[],
  middle: number,
  weight: Weight,
  surface: Surface,
): { readonly across: number; readonly along: number; readonly waterplane: number } {
  const sum = immersedUnder(slices, middle, surface);
  const { rows } = slopes(sum, surface, weight, middle);
  const { volume, area, ax, ay } = sum;
  // At constant volume the boat turns about the middle of its waterplane.
  const across = rows[2]![2] - (rows[2]![0] * ay) / area;
  const along = -(rows[1]![1] + (rows[1]![0] * ax) / area);
  return { across: across / volume, along: along / volume, waterplane: area };
}
