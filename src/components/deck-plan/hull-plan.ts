import { ends, fullness, inflatable, tubeDiameter } from '../../core/craft/plan-form.ts';
import type { Hull } from '../../core/craft/shapes.ts';
import { bowTubeFrom, HOLLOW } from './bow-tube.ts';
import { catamaranTube, halfBreadth } from './half-breadth.ts';

/** m, x forward of the aft end of the wetted bottom, y to starboard. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A boat from above as closed rings and open lines, m. */
export interface HullPlan {
  readonly aft: number;
  readonly bow: number;
  /** All that is boat, engine left out. */
  readonly outline: readonly Spot[];
  /** Where one stands. */
  readonly floor: readonly Spot[];
  /** Seams, foredeck and the like. */
  readonly seams: readonly (readonly Spot[])[];
  /** The transom from port to starboard. */
  readonly transom: readonly [Spot, Spot];
}

/** Points along each side of a bow: closer together towards the tip. */
const POINTS = 28;
/** Steps round the end of a tube. */
const END_POINTS = 12;
/** Width of a rigid boat's gunwale, m, and how far its floor ends behind the tip. */
const GUNWALE = 0.06;

/** The boat from above, from its record: twin tubes with a tunnel, a U of tubes, or a rigid boat with its gunwale. */
export function hullPlan(hull: Hull): HullPlan {
  if (hull.form === 'inflatable-catamaran') return catamaran(hull);
  return inflatable(hull.form) ? tubesRound(hull, hull.form) : rigid(hull, hull.form);
}

type OneBow = Exclude<Hull['form'], 'inflatable-catamaran'>;

function catamaran(hull: Hull): HullPlan {
  const { aft, bow } = ends(hull);
  const tunnel = hull.beam / 2 - tubeDiameter(hull);
  const front = bowTubeFrom(hull).aft;
  const outer = steps(0, bow).map((x) => ({ x, y: halfBreadth(hull, x) }));
  const inner = steps(front, bow).map((x) => {
    const { middle, radius } = catamaranTube(hull, x);
    return { x, y: middle - radius };
  });
  const { fore, aft: behind } = bowTubeFrom(hull);
  const join = tunnelEdge(hull, fore);
  const notch = [{ x: fore, y: join }, ...inner.filter(({ x }) => x > fore)];
  const side = [...tubeEnd(hull, aft), ...outer, ...notch.reverse()];
  // What joins the bows is hollowed a little.
  const arch = [0.6, 0.3, 0, -0.3, -0.6].map((across) => ({
    x: fore - HOLLOW * (1 - across * across),
    y: join * across,
  }));
  return {
    aft,
    bow,
    outline: [...side, ...arch, ...mirrored(side)],
    floor: [
      { x: 0, y: tunnel },
      { x: behind, y: tunnelEdge(hull, behind) },
      { x: behind - HOLLOW, y: 0 },
      { x: behind, y: -tunnelEdge(hull, behind) },
      { x: 0, y: -tunnel },
    ],
    seams: seamsOf(hull, bow),
    transom: [
      { x: 0, y: -tunnel },
      { x: 0, y: tunnel },
    ],
  };
}

function tunnelEdge(hull: Hull, x: number): number {
  const { middle, radius } = catamaranTube(hull, x);
  return middle - radius;
}

function seamsOf(hull: Hull, bow: number): Spot[][] {
  const seam = steps(0, bow - 0.12).map((x) => ({ x, y: catamaranTube(hull, x).middle }));
  return [seam, seam.map(({ x, y }) => ({ x, y: -y }))];
}

function tubesRound(hull: Hull, form: OneBow): HullPlan {
  const { aft, bow } = ends(hull);
  const d = tubeDiameter(hull);
  const outer = steps(0, bow).map((x) => ({ x, y: halfBreadth(hull, x) }));
  const side = [...tubeEnd(hull, aft), ...outer];
  const within = (inset: number) =>
    steps(0, bow - inset).map((x) => ({
      x,
      y: (hull.beam / 2 - inset) * fullness(form, (x - aft) / (bow - inset - aft)),
    }));
  const floor = within(d);
  const seam = within(d / 2);
  return {
    aft,
    bow,
    outline: [...side, ...mirrored(side)],
    floor: [...floor, ...mirrored(floor)],
    seams: [[...seam, ...mirrored(seam)]],
    transom: [
      { x: 0, y: d - hull.beam / 2 },
      { x: 0, y: hull.beam / 2 - d },
    ],
  };
}

function rigid(hull: Hull, form: OneBow): HullPlan {
  const { aft, bow } = ends(hull);
  const side = steps(0, bow).map((x) => ({ x, y: halfBreadth(hull, x) }));
  const floor = steps(0.04, bow - 2 * GUNWALE).map((x) => ({
    x,
    y: (hull.beam / 2 - GUNWALE) * fullness(form, x / (bow - 2 * GUNWALE)),
  }));
  const deck = bowTubeFrom(hull).aft;
  const across = Math.max(0, halfBreadth(hull, deck) - GUNWALE);
  const foredeck = [
    { x: deck, y: -across },
    { x: deck + 0.05, y: 0 },
    { x: deck, y: across },
  ];
  return {
    aft,
    bow,
    outline: [...side, ...mirrored(side)],
    floor: [...floor, ...mirrored(floor)],
    seams: deck < bow - 2 * GUNWALE ? [foredeck] : [],
    transom: [
      { x: 0, y: -halfBreadth(hull, 0) },
      { x: 0, y: halfBreadth(hull, 0) },
    ],
  };
}

/** The end of the starboard tube behind the transom, from its inner edge round to the outer. */
function tubeEnd(hull: Hull, aft: number): Spot[] {
  const d = tubeDiameter(hull);
  const outer = hull.beam / 2;
  return Array.from({ length: END_POINTS + 1 }, (_, i) => {
    const turn = (Math.PI * i) / END_POINTS;
    return { x: aft * Math.sin(turn), y: outer - (d / 2) * (1 + Math.cos(turn)) };
  });
}

function mirrored(side: readonly Spot[]): Spot[] {
  return [...side].reverse().map(({ x, y }) => ({ x, y: -y }));
}

function steps(from: number, to: number): number[] {
  return Array.from({ length: POINTS + 1 }, (_, i) => to - (to - from) * (1 - i / POINTS) ** 2);
}
