import type { Plan } from '../../core/trip/shapes.ts';
import { barScale } from './bar-scale.ts';
import { type BlockKind, barBlocks, mergeThin } from './blocks.ts';
import { textWidth } from './labels.ts';
import { hatch, slice, type Tube, tear } from './shape.ts';

export type PicturePlan = Pick<Plan, 'usable' | 'full' | 'reserve' | 'need' | 'manoeuvring' | 'left'> & {
  readonly legs: readonly Pick<Plan['legs'][number], 'part' | 'use' | 'leg'>[];
};

export interface Piece {
  readonly kind: BlockKind;
  readonly path: string;
  readonly from: number;
  readonly to: number;
  /** Leg numbers as shown, such as "3" or "3–7". */
  readonly legs: string;
  /** Whether they fit on the piece. */
  readonly numbered: boolean;
}

export interface Span {
  readonly kind: 'out' | 'home' | 'left' | 'reserve' | 'short';
  readonly from: number;
  readonly to: number;
}

/** Everything of the bar that is not text, px, from its top. */
export interface BarPicture {
  readonly height: number;
  readonly glass: string;
  readonly pieces: readonly Piece[];
  readonly hatches: { readonly reserve: string; readonly touched: string; readonly short: string };
  /** The part of the trip that eats into the reserve. */
  readonly touched: string;
  /** Room of the reserve that is still whole. */
  readonly free: { readonly from: number; readonly to: number };
  readonly tears: readonly { readonly gap: string; readonly edges: string }[];
  readonly spans: readonly Span[];
  /** Where the way home begins. */
  readonly turn: number | undefined;
  /** The level expected at the end of the trip. */
  readonly home: number;
  /** 10th to 90th percentile of that level; `open` where it has no lower end. */
  readonly band: { readonly from: number; readonly to: number; readonly open: boolean };
  /** Place of an amount left. */
  at(left: number): number;
}

/** px between the rim of the glass and what is in it. */
const INSET = 4;
/** Pieces thinner than this are joined, px. */
const THIN = 7;
const HATCH = 8;

/** Lays the bar out in a box. `unusable` is the part of `full` that no engine can draw. */
export function barPicture(plan: PicturePlan, box: { width: number; height: number; fontSize: number }, unusable = 0) {
  const width = Math.max(box.width, 120);
  const usable = Math.max(plan.usable, 0);
  const full = Math.max(plan.full, usable);
  const empty = full - Math.min(Math.max(unusable, 0), full - usable);
  const start = empty - usable;
  const short = Math.max(plan.need.median - usable, 0);
  const beyond = plan.need.high < Infinity ? Math.max(plan.need.high - usable, short) : short;
  const scale = barScale({ start, empty, full, beyond }, width - 2 * INSET);
  const x = (fromFull: number) => INSET + scale.x(fromFull);
  /** What is past empty is drawn past the empty end of the glass. */
  const at = (left: number) => x(left >= 0 ? empty - left : full - left);

  const glassEnd = scale.tankEnd + 2 * INSET;
  const glass: Tube = { left: 0, top: 0, width: glassEnd, height: box.height, radius: box.height / 2 };
  const tube: Tube = {
    left: INSET,
    top: INSET,
    width: scale.tankEnd,
    height: box.height - 2 * INSET,
    radius: box.height,
  };
  const spill: Tube = { ...tube, left: INSET + scale.past, width: 0, radius: 6 };

  const pieces = mergeThin(barBlocks(plan, unusable), scale.perAmount > 0 ? THIN / scale.perAmount : 0).map(
    (block): Piece => {
      const past = block.kind === 'short';
      const [from, to] = [past ? spill.left : x(block.from), x(block.to)];
      const gap = Math.min(1, (to - from) / 4);
      const path = past
        ? slice({ ...spill, width: to - from }, from, to)
        : slice(tube, from + gap * Number(block.from > 0), to - gap * Number(block.to < full));
      const legs = block.legs ? legNumbers(plan, block.legs) : '';
      const room = Math.min(to, glassEnd - 12) - Math.max(from, 12);
      return { kind: block.kind, path, from, to, legs, numbered: textWidth(legs, box.fontSize) + 4 <= room };
    },
  );

  const home = at(plan.left.median);
  const emptyAt = x(empty);
  const usedTo = Math.min(home, emptyAt);
  const reserveFrom = at(Math.min(plan.reserve, usable));
  const turn = pieces.find((piece) => piece.kind === 'home')?.from;
  const spans: Span[] = [{ kind: 'out', from: x(start), to: turn ?? usedTo }];
  if (turn !== undefined) spans.push({ kind: 'home', from: turn, to: usedTo });
  if (short > 0) spans.push({ kind: 'short', from: spill.left, to: home });
  else spans.push({ kind: 'left', from: home, to: emptyAt });
  spans.push({ kind: 'reserve', from: reserveFrom, to: emptyAt });

  const tears = [];
  if (scale.tornStart) tears.push(tear(x(start) * 0.6, -1, box.height + 2));
  if (scale.tornEnd && short > 0) tears.push(tear((spill.left + home) / 2, -1, box.height + 2));
  const open = plan.left.low === -Infinity;
  const picture: BarPicture = {
    height: box.height,
    glass: slice(glass, 0, glassEnd),
    pieces,
    hatches: {
      reserve: hatch(tube, Math.max(reserveFrom, usedTo), emptyAt, HATCH),
      touched: hatch(tube, reserveFrom, usedTo, HATCH),
      short: short > 0 ? hatch({ ...spill, width: home - spill.left }, spill.left, home, HATCH, false) : '',
    },
    touched: pieces
      .filter((piece) => piece.kind !== 'short' && Math.min(piece.to, usedTo) > Math.max(piece.from, reserveFrom))
      .map((piece) => slice(tube, Math.max(piece.from + 1, reserveFrom), Math.min(piece.to - 1, usedTo)))
      .join(''),
    free: { from: Math.max(reserveFrom, usedTo), to: emptyAt },
    tears,
    spans: spans.filter((span) => span.to > span.from),
    turn,
    home,
    band: { from: at(plan.left.high), to: open ? width - INSET : at(plan.left.low), open },
    at,
  };
  return picture;
}

function legNumbers(plan: PicturePlan, [first, last]: readonly [number, number]): string {
  const [from, to] = [plan.legs[first]!.leg + 1, plan.legs[last]!.leg + 1];
  return from === to ? String(from) : `${from}–${to}`;
}
