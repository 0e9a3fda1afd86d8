import type { Plan } from '../../core/trip/shapes.ts';
import type { SpeedChoice, SpeedChoices } from '../../core/trip/speed-choices.ts';

export type Mark = 'present' | 'thriftiest' | 'earliest' | 'lowestRevs';

/** One point of the trade that is named; several names may meet in it. */
export interface Marked {
  readonly marks: readonly Mark[];
  readonly time: number;
  readonly left: number;
  /** m/s; undefined where the trip as planned has several. */
  readonly speed: number | undefined;
  readonly choice: SpeedChoice | undefined;
}

/** The trip as planned first, then what may be chosen in its place; the same choice is told once with all its names. */
export function marked(found: SpeedChoices, plan: Plan): readonly Marked[] {
  const speeds = new Set(plan.legs.map(({ speedThroughWater }) => Math.round(speedThroughWater * 100)));
  const present: Marked = {
    marks: ['present'],
    time: plan.time,
    left: plan.left.median,
    speed: speeds.size === 1 ? plan.legs[0]!.speedThroughWater : undefined,
    choice: undefined,
  };
  const named = new Map<number, Mark[]>();
  for (const mark of ['thriftiest', 'earliest', 'lowestRevs'] as const) {
    const index = found[mark];
    if (index !== undefined) named.set(index, [...(named.get(index) ?? []), mark]);
  }
  const others = [...named].map(([index, marks]): Marked => {
    const choice = found.choices[index]!;
    return { marks, time: choice.time, left: choice.left, speed: choice.speed, choice };
  });
  return [present, ...others];
}

/** How much longer than the named points a trip may take and still be drawn. */
const LONGER = 1.25;

export interface Frame {
  readonly drawn: readonly SpeedChoice[];
  /** s, and kg or J. */
  readonly times: readonly [number, number];
  readonly lefts: readonly [number, number];
}

/** What of the trade is drawn: crawling and choices far beyond empty only squeeze the rest. */
export function frameOf(choices: readonly SpeedChoice[], points: readonly Marked[], usable: number): Frame {
  const finite = points.filter(({ time, left }) => Number.isFinite(time) && Number.isFinite(left));
  const latest = Math.max(...finite.map(({ time }) => time), choices.at(-1)?.time ?? 0) * LONGER;
  const lowest = Math.min(0, ...finite.map(({ left }) => left)) - 0.15 * usable;
  const drawn = choices.filter(({ time, left }) => time <= latest && left >= lowest);
  const times = [...drawn, ...finite].map(({ time }) => time);
  const lefts = [...drawn, ...finite].map(({ left }) => left);
  return {
    drawn,
    times: [Math.min(...times), Math.max(...times)],
    lefts: [Math.min(0, ...lefts), Math.max(...lefts, usable * 0.2)],
  };
}
