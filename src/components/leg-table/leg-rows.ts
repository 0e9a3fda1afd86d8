import type { LegPlan, Plan } from '../../core/trip/shapes.ts';

export interface LegRow {
  readonly leg: LegPlan;
  /** "3", or "3a" and "3b" where a zone splits a drawn leg. */
  readonly number: string;
  /** Name of the point at its end, where a drawn leg ends and somebody named it. */
  readonly ends: string | undefined;
}

export interface LegGroup {
  readonly part: LegPlan['part'];
  readonly rows: readonly LegRow[];
  readonly distance: number;
  /** Under way and stopped, s. */
  readonly time: number;
  readonly use: number;
}

/** Stretches by part, with sums. `names` are the points at the ends of the drawn legs, in sailed order. */
export function legGroups(
  { legs }: Pick<Plan, 'legs'>,
  names: readonly (string | undefined)[] = [],
): readonly LegGroup[] {
  const rows = legs.map((leg, i): LegRow => {
    const first = firstOf(legs, i);
    const last = legs[i + 1]?.leg !== leg.leg;
    const split = first !== i || !last;
    return {
      leg,
      number: `${leg.leg + 1}${split ? letters(i - first) : ''}`,
      ends: last ? names[leg.leg] || undefined : undefined,
    };
  });
  return (['out', 'home'] as const)
    .map((part): LegGroup => {
      const own = rows.filter((row) => row.leg.part === part);
      const sum = (of: (leg: LegPlan) => number) => own.reduce((total, row) => total + of(row.leg), 0);
      return {
        part,
        rows: own,
        distance: sum((leg) => leg.distance),
        time: sum((leg) => leg.time + leg.stop),
        use: sum((leg) => leg.use),
      };
    })
    .filter((group) => group.rows.length > 0);
}

/** Index of the first stretch of the drawn leg that stretch `i` is part of. */
function firstOf(legs: readonly LegPlan[], i: number): number {
  let first = i;
  while (first > 0 && legs[first - 1]!.leg === legs[i]!.leg) first--;
  return first;
}

/** a, b ... z, aa, ab ... */
function letters(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}
