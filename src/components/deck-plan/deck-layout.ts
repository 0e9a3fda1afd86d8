import type { Hull } from '../../core/craft/shapes.ts';
import type { HullPlan, Spot } from './hull-plan.ts';
import { apart, type Landing, person } from './landing.ts';
import { LEAST_SCALE, SIZES } from './piece-drawing.ts';
import type { Piece } from './pieces.ts';
import { outside } from './room.ts';
import { spread } from './spread.ts';
import type { Point, View } from './view.ts';

/** px around the middle of a piece within which it is hit. */
const REACH = 24;
/** A tap this near the boat still means the boat, m. */
const BESIDE = 0.35;
/** Nothing is drawn on the transom for lack of room, m. */
const TRANSOM = 0.08;

export interface Deck {
  readonly hull: Hull;
  readonly view: View;
  readonly pieces: readonly Piece[];
  /** Keys of those that stand ashore, in order. */
  readonly waiting: readonly string[];
  /** The piece in hand is drawn where it is held. */
  readonly hand: { readonly key: string; readonly landing: Landing } | undefined;
}

/** Where each piece is drawn, px, by key: at its place or beside it, people first, so that none hides another. */
export function layOut({ hull, view, pieces, waiting, hand }: Deck): Map<string, Point> {
  const drawn = new Map<string, Point>();
  const placed = pieces
    .filter(({ place, key }) => place !== undefined && key !== hand?.key)
    .sort((a, b) => Number(person(b.kind)) - Number(person(a.kind)));
  const larger = drawnScale(view) / view.scale;
  const spots = spread(
    placed.map(({ kind, place, fixed }) => ({
      spot: place!,
      along: SIZES[kind].along * larger,
      across: SIZES[kind].across * larger,
      pinned: fixed,
    })),
    (spot) => spot.x > TRANSOM && !outside(hull, spot),
  );
  for (const [i, { key }] of placed.entries()) drawn.set(key, view.point(spots[i]!));
  for (const { key, place } of pieces) {
    const held = key === hand?.key ? heldAt(hand.landing, place) : undefined;
    if (held) drawn.set(key, view.point(held));
    else if (!drawn.has(key)) drawn.set(key, view.ashore(Math.max(0, waiting.indexOf(key))));
  }
  return drawn;
}

function heldAt(landing: Landing, place: Spot | undefined): Spot | undefined {
  return 'refused' in landing ? landing.at : place;
}

/** px per m that pieces are drawn with. */
export function drawnScale({ scale }: View): number {
  return Math.max(scale, LEAST_SCALE);
}

/** Key of the piece under a point of the drawing; of several, the one whose middle is nearest. */
export function pieceAt(
  pieces: readonly Piece[],
  drawn: ReadonlyMap<string, Point>,
  view: View,
  at: Point,
): string | undefined {
  const scale = drawnScale(view);
  let found: string | undefined;
  let nearest = Infinity;
  for (const { key, kind } of pieces) {
    const middle = drawn.get(key);
    if (!middle) continue;
    const dx = Math.abs(at.x - middle.x);
    const dy = Math.abs(at.y - middle.y);
    const distance = Math.hypot(dx, dy);
    const hit = distance <= REACH || (dx <= SIZES[kind].across * scale && dy <= SIZES[kind].along * scale);
    if (hit && distance < nearest) [found, nearest] = [key, distance];
  }
  return found;
}

/** Whether a tap is meant for the water around the boat. */
export function overboard(hull: Hull, { outline }: HullPlan, spot: Spot): boolean {
  return outside(hull, spot) && !outline.some((point) => apart(point, spot) < BESIDE);
}
