import { ends, fullness, inflatable, type OneBow } from '../craft/plan-form.ts';
import type { Hull, Position } from '../craft/shapes.ts';
import { DEGREE } from '../units/convert.ts';

/** A thin slice across the boat, `thickness` m along it at x; of a round tube or of a convex ring of y, z, y, z... */
export interface Slice {
  readonly x: number;
  readonly thickness: number;
  /** What one air chamber holds; absent: no chamber. */
  readonly chamber?: Chamber;
  readonly round?: { readonly y: number; readonly z: number; readonly radius: number };
  readonly ring?: readonly number[];
}

export type Chamber = 'port-aft' | 'port-fore' | 'starboard-aft' | 'starboard-fore';

/** A point of the edge over which water would come in; a tube's edge is the top of a circle of this radius. */
export interface Edge extends Required<Position> {
  readonly part: 'tube' | 'transom' | 'gunwale';
  readonly radius: number;
}

/** What keeps a boat up: watertight slices and the edge round them. */
export interface FloatBody {
  readonly slices: readonly Slice[];
  readonly edges: readonly Edge[];
  /** Whether port and starboard are alike. */
  readonly symmetric: boolean;
  /** Middle of the waterline, where draft is told, m. */
  readonly middle: number;
  /** Both tubes, m3; 0 for a boat without. */
  readonly tubeVolume: number;
  /** What tubes and bottom displace level, as water first comes in, m3. */
  readonly volume: number;
  /** Breadth between the places where people would crowd to one side, halved, m: the tube, and inside it. */
  readonly side: { readonly outer: number; readonly inner: number };
}

/** Why nothing is known of how a hull floats: its record has neither tubes nor the height of the transom. */
export type FloatLacks = 'tubes' | 'transom-height';

/** Nodes and weights of Gauss-Legendre quadrature on 0 to 1; four points, exact for polynomials of degree 7. */
const GAUSS = [
  [0.069431844202974, 0.173927422568727],
  [0.330009478207572, 0.326072577431273],
  [0.669990521792428, 0.326072577431273],
  [0.930568155797026, 0.173927422568727],
] as const;

/** Underside of the floor between the tubes over their diameter (common practice, no source): a catamaran's tunnel, a tender's floor. */
const FLOOR = { tunnel: 0.5, flat: 0.146 };
/** How far forward a catamaran's tunnel floor reaches, share of the wetted length (common practice, no source). */
const TUNNEL = 0.8;
/** A RIB's tube sits on the chine with its middle so many radii above it (derived from records with a transom height). */
const ABOVE_CHINE = 0.4;
/** Of a rigid boat: gunwale above the transom's cut for the engine, and half the width of that cut, m (common practice, no source). */
const GUNWALE_OVER_CUT = 0.1;
const HALF_CUT = 0.25;
/** Somebody at the side of a rigid boat sits this far inside the gunwale, m (common practice, no source). */
const INSIDE = 0.2;

/**
 * The watertight body of a hull from its record: twin tubes and the floor or V bottom between them, or a V or flat
 * bottom with straight sides. Water first comes in over the transom's cut, whose height the record gives. Bows are drawn
 * for the type, sheer and floor heights taken from the type: good to about a tenth of the draft.
 */
export function floatBody(hull: Hull): FloatBody | FloatLacks {
  const known = KNOWN.get(hull);
  if (known) return known;
  const found = bodyOf(hull);
  KNOWN.set(hull, found);
  return found;
}

/** Hulls do not change; a plan asks for the same one again and again. */
const KNOWN = new WeakMap<Hull, FloatBody | FloatLacks>();

function bodyOf(hull: Hull): FloatBody | FloatLacks {
  if (inflatable(hull.form)) {
    return hull.tube ? onTubes(hull, hull.tube) : 'tubes';
  }
  return hull.transomHeight === undefined ? 'transom-height' : rigid(hull, hull.form, hull.transomHeight);
}

function onTubes(hull: Hull, { diameter, spacing, length }: NonNullable<Hull['tube']>): FloatBody {
  const radius = diameter / 2;
  const inner = Math.max(0, spacing / 2 - radius);
  const chine = inner * Math.tan(hull.deadriseDeg * DEGREE);
  const z = hull.form === 'rib' ? Math.max(radius, chine + ABOVE_CHINE * radius) : radius;
  const aft = ends(hull).aft;
  const slices: Slice[] = [];
  for (const side of [-1, 1] as const) {
    for (const half of [0, 1] as const) {
      const chamber = `${side < 0 ? 'port' : 'starboard'}-${half === 0 ? 'aft' : 'fore'}` as Chamber;
      const round = { y: (side * spacing) / 2, z, radius };
      spread(aft + (half * length) / 2, length / 2, (x, thickness) => slices.push({ x, thickness, chamber, round }));
    }
  }
  const top = z + radius;
  const floor = (hull.form === 'inflatable-catamaran' ? FLOOR.tunnel : FLOOR.flat) * diameter;
  const reach = hull.form === 'inflatable-catamaran' ? TUNNEL * hull.wettedLength : hull.wettedLength;
  const across = (x: number, thickness: number): void => {
    const share = hull.form === 'inflatable-catamaran' ? 1 : fullness(hull.form as OneBow, x / reach);
    const y = inner * share;
    if (y <= 0) return;
    const ring =
      hull.form === 'rib' ? [0, 0, y, chine, y, top, -y, top, -y, chine] : [y, floor, y, top, -y, top, -y, floor];
    slices.push({ x, thickness, ring });
  };
  // The floor of a catamaran does not narrow.
  const pieces = hull.form === 'inflatable-catamaran' ? 1 : 2;
  for (let piece = 0; piece < pieces; piece++) spread((piece * reach) / pieces, reach / pieces, across);
  const edges: Edge[] = [];
  for (const side of [-1, 1]) {
    for (const x of [aft, aft + length]) edges.push({ part: 'tube', x, y: (side * spacing) / 2, z, radius });
    if (hull.transomHeight !== undefined) {
      edges.push({ part: 'transom', x: 0, y: side * inner, z: hull.transomHeight, radius: 0 });
    }
  }
  return made(slices, edges, hull, 2 * Math.PI * radius * radius * length, {
    outer: spacing / 2,
    inner: Math.max(inner - INSIDE / 2, 0),
  });
}

function rigid(hull: Hull, form: OneBow, height: number): FloatBody {
  const { bow } = ends(hull);
  const chine = Math.min(hull.planingBeam, hull.beam) / 2;
  const rise = Math.min(chine * Math.tan(hull.deadriseDeg * DEGREE), 0.9 * height);
  const top = height + GUNWALE_OVER_CUT;
  const slices: Slice[] = [];
  const gunwale = (x: number): number => (hull.beam / 2) * fullness(form, Math.max(0, x) / bow);
  // Between the cut and the gunwale nothing is carried: water is in by then.
  let over = 0;
  for (const half of [0, 1]) {
    spread((half * hull.wettedLength) / 2, hull.wettedLength / 2, (x, thickness) => {
      const b = gunwale(x);
      const c = Math.min(chine * fullness(form, x / hull.wettedLength), b);
      const atCut = c + ((b - c) * (height - rise)) / (top - rise);
      over += thickness * (b + atCut) * GUNWALE_OVER_CUT;
      slices.push({ x, thickness, ring: [0, 0, c, rise, b, top, -b, top, -c, rise] });
    });
  }
  const edges: Edge[] = [];
  for (const side of [-1, 1]) {
    edges.push({ part: 'transom', x: 0, y: side * HALF_CUT, z: height, radius: 0 });
    for (const share of [0, 0.25, 0.5, 0.75]) {
      const x = share * bow;
      edges.push({ part: 'gunwale', x, y: side * gunwale(x), z: top, radius: 0 });
    }
  }
  edges.push({ part: 'gunwale', x: bow, y: 0, z: top, radius: 0 });
  const outer = Math.max(hull.beam / 2 - INSIDE, 0);
  const body = made(slices, edges, hull, 0, { outer, inner: hull.beam / 4 });
  return { ...body, volume: body.volume - over };
}

function made(
  slices: readonly Slice[],
  edges: readonly Edge[],
  hull: Hull,
  tubeVolume: number,
  side: FloatBody['side'],
): FloatBody {
  const volume = slices.reduce((sum, slice) => sum + slice.thickness * areaOf(slice), 0);
  return { slices, edges, symmetric: true, middle: hull.wettedLength / 2, tubeVolume, volume, side };
}

/** The tubes by themselves, as when the boat is full of water; `lost` is a chamber that holds no air any more. */
export function tubesAlone(body: FloatBody, lost?: Chamber): FloatBody {
  const slices = body.slices.filter(({ chamber }) => chamber !== undefined && chamber !== lost);
  const volume = slices.reduce((sum, slice) => sum + slice.thickness * areaOf(slice), 0);
  return {
    ...body,
    symmetric: body.symmetric && lost === undefined,
    slices,
    edges: body.edges.filter(({ part }) => part === 'tube'),
    volume,
  };
}

function spread(from: number, length: number, put: (x: number, thickness: number) => void): void {
  for (const [node, weight] of GAUSS) put(from + node * length, weight * length);
}

function areaOf({ round, ring }: Slice): number {
  if (round) return Math.PI * round.radius ** 2;
  let twice = 0;
  const points = ring ?? [];
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length;
    twice += points[i]! * points[j + 1]! - points[j]! * points[i + 1]!;
  }
  return Math.abs(twice) / 2;
}
