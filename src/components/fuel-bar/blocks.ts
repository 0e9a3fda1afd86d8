import type { Plan } from '../../core/trip/shapes.ts';

export type BlockKind = 'unfilled' | 'manoeuvring' | 'out' | 'home' | 'spare' | 'reserve' | 'unusable' | 'short';

/** A piece of the bar. Places are amounts from the full end; what is short lies past the empty end. */
export interface Block {
  readonly kind: BlockKind;
  readonly from: number;
  readonly to: number;
  /** First and last stretch of the plan inside this piece, counted from 0. */
  readonly legs?: readonly [number, number];
}

export type BarPlan = Pick<Plan, 'usable' | 'full' | 'reserve' | 'need' | 'manoeuvring'> & {
  readonly legs: readonly Pick<Plan['legs'][number], 'part' | 'use'>[];
};

/**
 * The bar from the full end to the empty one: not filled, half the manoeuvring, the stretches in sailed order, the
 * other half, what is left above the reserve, the reserve, what cannot be drawn; then what is short, if anything.
 * Pieces join without gap and end at `full`. Stretches share the median need in proportion to their own use.
 */
export function barBlocks(plan: BarPlan, unusable = 0): readonly Block[] {
  const usable = Math.max(plan.usable, 0);
  const full = Math.max(plan.full, usable);
  const rest = Math.min(Math.max(unusable, 0), full - usable);
  const start = full - rest - usable;
  const empty = full - rest;
  const need = Math.max(plan.need.median, 0);
  const blocks: Block[] = [];
  let at = 0;
  const add = (kind: BlockKind, to: number, legs?: readonly [number, number]) => {
    const end = Math.min(to, empty);
    if (end > at) blocks.push(legs ? { kind, from: at, to: end, legs } : { kind, from: at, to: end });
    at = Math.max(at, end);
  };

  add('unfilled', start);
  const manoeuvring = Math.min(Math.max(plan.manoeuvring, 0), need);
  add('manoeuvring', start + manoeuvring / 2);
  const uses = plan.legs.reduce((sum, leg) => sum + Math.max(leg.use, 0), 0);
  const share = uses > 0 && Number.isFinite(uses) && Number.isFinite(need) ? (need - manoeuvring) / uses : 1;
  let used = manoeuvring / 2;
  plan.legs.forEach((leg, i) => {
    used += Math.max(leg.use, 0) * share;
    add(leg.part, start + used, [i, i]);
  });
  add('manoeuvring', start + need);
  add('spare', empty - Math.max(plan.reserve, 0));
  add('reserve', empty);
  if (rest > 0) blocks.push({ kind: 'unusable', from: empty, to: full });
  if (need > usable) blocks.push({ kind: 'short', from: full, to: full + (need - usable) });
  return blocks;
}

/** Joins neighbouring stretches of one part until none is thinner than `least`, an amount, where it has a neighbour. */
export function mergeThin(blocks: readonly Block[], least: number): readonly Block[] {
  const merged: Block[] = [];
  const thin = (block: Block | undefined) => block !== undefined && block.to - block.from < least;
  blocks.forEach((block, i) => {
    merged.push(block);
    const partEnds = blocks[i + 1]?.kind !== block.kind;
    // A thin stretch waits for its next neighbour; at the end of a part it joins the one before.
    while (canJoin(merged.at(-2), merged.at(-1)) && (thin(merged.at(-2)) || (partEnds && thin(merged.at(-1))))) {
      const [a, b] = merged.splice(-2) as [Block, Block];
      merged.push({ ...a, to: b.to, legs: [a.legs![0], b.legs![1]] });
    }
  });
  return merged;
}

function canJoin(a: Block | undefined, b: Block | undefined): boolean {
  return a?.legs !== undefined && b?.legs !== undefined && a.kind === b.kind;
}
