import type { Weather } from '../curve/steady.ts';
import { FULL_FILL } from '../drive/tank.ts';
import type { Conditions, Stream, Wind } from '../water/shapes.ts';
import type { BadCaseKind } from './shapes.ts';

/** Weather, water and tank that one run of a trip assumes. Amounts in SI; shares 0 to 1. */
export interface Scenario {
  readonly wind: Wind | undefined;
  /** The wind before it freshened: from astern more of it would be a gift. */
  readonly eased?: Wind | undefined;
  /** Dead ahead on every leg home in place of `wind`, m/s. */
  readonly headwindHome: number | undefined;
  readonly stream: Stream | undefined;
  /** Straight against every leg home in place of `stream`, m/s. */
  readonly foulHome: number | undefined;
  readonly waveHeight: number;
  /** On a trip one way `headwindHome` and `foulHome` hold on every leg. */
  readonly oneWay: boolean;
  /** Planned speeds are kept whatever the waves: nobody knows whether they are there. */
  readonly unslowed?: boolean;
  readonly fill: number;
  /** Share of the store whose weight is carried: an unknown fill feeds as little and weighs as much as it may. */
  readonly weighs: number;
  readonly batteryTemperatureC: number;
  /** No faster home than this, m/s. */
  readonly homeCap?: number;
  /** Home at this speed whatever was planned, m/s. */
  readonly homeSpeed?: number;
  /** Those whose seat nobody gave sit as far forward as anybody can, not as far aft. */
  readonly forward?: boolean;
  /** What is towed home, see `Weather`. */
  readonly tow?: Weather['tow'];
  readonly kinds: readonly BadCaseKind[];
}

/**
 * Values for what nobody gave: first for the plan that is shown, then for the bad case. None is the favourable one
 * (common practice, no source).
 */
export const UNKNOWN = {
  /** Gentle breeze from dead ahead all the way home; fresh breeze (middle of force 5). */
  headwindHome: [4.4, 9.3],
  /** Half a knot against every leg home; two knots. */
  foulHome: [0.25, 1.0],
  /** Wave height over hull length: small, and the most an open boat should plan for. */
  waves: [0.04, 0.08],
  fill: [0.5, 0.25],
  batteryTemperatureC: [10, 0],
} as const;

/** Rise of one Beaufort force around this wind, m/s, from U = 0.836 B^1.5 (WMO, from memory). */
export function oneForceMore(speed: number): number {
  const force = Math.cbrt((speed / 0.836) ** 2);
  return 0.836 * (force + 1) ** 1.5;
}

/** What somebody said of a trip, or asks "what if" about. */
export interface Given {
  readonly conditions: Conditions;
  readonly oneWay: boolean;
  readonly fill: number | undefined;
  /** Of the hull, m. */
  readonly length: number;
  /** Asked: this wind (m/s), from where it was given, or from ahead on the way home. */
  readonly windSpeed?: number | undefined;
  /** What the tanks weigh by: the fill as told, brim-full included; absent: unknown. */
  readonly weighs: number | undefined;
}

/** The plan that is shown: what was given, and the stated assumption for the rest. */
export function expected({ conditions, oneWay, fill, weighs, windSpeed, length }: Given): Scenario {
  const { wind, stream, sea } = conditions;
  const blowing = typeof wind === 'object' ? wind : undefined;
  const ahead = windSpeed ?? (wind === undefined ? UNKNOWN.headwindHome[0] : undefined);
  return {
    wind: blowing && windSpeed !== undefined ? { ...blowing, speed: windSpeed } : blowing,
    headwindHome: blowing ? undefined : ahead,
    stream: typeof stream === 'object' ? stream : undefined,
    foulHome: stream === undefined ? UNKNOWN.foulHome[0] : undefined,
    waveHeight: sea === undefined ? UNKNOWN.waves[0] * length : sea === 'calm' ? 0 : sea.height,
    oneWay,
    fill: fill ?? UNKNOWN.fill[0],
    weighs: weighs ?? FULL_FILL,
    batteryTemperatureC: conditions.batteryTemperatureC ?? UNKNOWN.batteryTemperatureC[0],
    kinds: [],
  };
}

/** How a bad trip home may go, beyond wind and water. */
export interface HomeRuns {
  /** m/s the boat makes without planing, whatever the sea. */
  readonly slow: number;
  /** m/s of the hump when labouring there is credible. */
  readonly hump: number | undefined;
  readonly electric: boolean;
}

/**
 * The credible bad cases of this trip: every unknown at its bad value and a given wind one force fresher, each once
 * at the planned speed, once home at displacement speed and, where credible, once labouring at the hump.
 */
export function badCases(given: Given, home: HomeRuns): readonly Scenario[] {
  const { conditions, fill } = given;
  const base = expected(given);
  const unknownWind = conditions.wind === undefined && given.windSpeed === undefined;
  const cold = home.electric && conditions.batteryTemperatureC === undefined;
  const kinds: BadCaseKind[] = [unknownWind ? 'home-headwind' : 'wind-fresher'];
  if (conditions.stream === undefined) kinds.push('home-foul-stream');
  if (fill === undefined) kinds.push('less-in-tank');
  if (cold) kinds.push('cold-battery');
  const freshened = base.wind && { ...base.wind, speed: oneForceMore(base.wind.speed) };
  // Calm has no direction to freshen from: a light breeze gets up, from ahead.
  const ahead = unknownWind ? UNKNOWN.headwindHome[1] : oneForceMore(base.headwindHome ?? oneForceMore(0));
  const weather: Scenario = {
    ...base,
    wind: freshened,
    eased: base.wind,
    headwindHome: freshened ? undefined : ahead,
    foulHome: conditions.stream === undefined ? UNKNOWN.foulHome[1] : undefined,
    waveHeight: conditions.sea === undefined ? UNKNOWN.waves[1] * given.length : base.waveHeight,
    fill: fill ?? UNKNOWN.fill[1],
    batteryTemperatureC: cold ? UNKNOWN.batteryTemperatureC[1] : base.batteryTemperatureC,
    kinds,
  };
  const cases: Scenario[] = [weather, { ...weather, homeCap: home.slow, kinds: ['home-slow', ...kinds] }];
  if (home.hump !== undefined) cases.push({ ...weather, homeSpeed: home.hump, kinds: ['home-on-hump', ...kinds] });
  return cases;
}
