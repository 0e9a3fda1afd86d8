import type { Hull } from '../../core/craft/shapes.ts';
import type { HullPlan, Spot } from './hull-plan.ts';

/** Points of the drawing, px, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** How the boat lies on the drawing, bow up: port is left, starboard right. */
export interface View {
  readonly width: number;
  readonly height: number;
  /** px per m */
  readonly scale: number;
  point(spot: Spot): Point;
  spot(point: Point): Spot;
  /** Where one that waits ashore is drawn: the middle of its box. */
  ashore(index: number): Point;
  /** Top of the strip ashore; equals `height` when nobody waits. */
  readonly shore: number;
  /** Where the scales along and across the boat lie. */
  readonly along: number;
  readonly across: number;
}

/** Room beside, above and below the boat for its scales, px. */
const MARGIN = { side: 40, top: 26, scale: 26, bottom: 20 };
/** Engine behind the transom, m. */
const ENGINE = 0.42;
/** px per m at most. */
const BIGGEST_SCALE = 190;
/** Box of one that waits ashore, px. */
const BOX = { width: 66, height: 58, head: 26 };

/** px the drawing may take, strip ashore left out. */
export interface Paper {
  readonly width: number;
  readonly tallest: number;
}

/** Fits the boat onto paper; `waiting` have no place and stand ashore below it. */
export function viewOf(hull: Hull, plan: HullPlan, { width, tallest }: Paper, waiting: number): View {
  const stern = Math.min(plan.aft, hull.engine.x - ENGINE);
  const long = plan.bow - stern;
  const room = { x: Math.max(60, width - 2 * MARGIN.side), y: tallest - MARGIN.top - MARGIN.scale - MARGIN.bottom };
  const scale = Math.min(room.x / hull.beam, room.y / long, BIGGEST_SCALE);
  const middle = width / 2;
  const top = MARGIN.top + plan.bow * scale;
  const across = MARGIN.top + long * scale + MARGIN.scale;
  const shore = across + MARGIN.bottom;
  const columns = Math.max(1, Math.floor((width - 16) / BOX.width));
  const rows = Math.ceil(waiting / columns);
  return {
    width,
    height: Math.ceil(shore + (rows > 0 ? BOX.head + rows * BOX.height + 6 : 0)),
    scale,
    along: Math.max(14, middle - (hull.beam / 2) * scale - 26),
    across,
    shore,
    point: ({ x, y }) => ({ x: middle + y * scale, y: top - x * scale }),
    spot: (at) => ({ x: (top - at.y) / scale, y: (at.x - middle) / scale }),
    ashore: (index) => ({
      x: 8 + ((index % columns) + 0.5) * BOX.width,
      y: shore + BOX.head + (Math.floor(index / columns) + 0.5) * BOX.height,
    }),
  };
}

/** A closed ring, or an open line, as an SVG path. */
export function path(view: View, spots: readonly Spot[], closed = true): string {
  const points = spots.map((spot) => {
    const { x, y } = view.point(spot);
    return `${x.toFixed(1)} ${y.toFixed(1)}`;
  });
  return points.length > 0 ? `M${points.join('L')}${closed ? 'Z' : ''}` : '';
}
