import type { Weather } from '../curve/steady.ts';
import { BRIMFUL } from '../drive/tank.ts';
import { LONGEST_FETCH } from '../route/wind-fetch.ts';
import { oneForceMore } from '../water/beaufort.ts';
import { windSea } from '../water/sea-growth.ts';
import type { Conditions, Stream } from '../water/shapes.ts';
import type { Around, StreamLaw } from './around.ts';
import type { LegWaves } from './leg-waves.ts';
import type { BadCaseKind } from './shapes.ts';
import { byTime, strongestTold, type WindLaw, withSpeeds } from './wind-law.ts';

/** Weather, water and tank that one run of a trip assumes. Amounts in SI; shares 0 to 1. */
export interface Scenario {
  /** s since 1970; 0 where it does not matter. */
  readonly departs: number;
  readonly wind: WindLaw | undefined;
  /** The wind before it freshened: from astern more of it would be a gift. */
  readonly eased?: WindLaw | undefined;
  /** Dead ahead on every leg home in place of `wind`, m/s. */
  readonly headwindHome: number | undefined;
  readonly stream: Stream | StreamLaw | undefined;
  /** Straight against every leg home in place of `stream`, m/s. */
  readonly foulHome: number | undefined;
  /** Against every way to which forecast or streams by tide say nothing: wind from ahead and stream, m/s. */
  readonly untold: { readonly headwind: number; readonly foul: number };
  /** Significant, m; where the waves go by leg and time, the highest of them. */
  readonly waveHeight: number;
  readonly waves?: LegWaves | undefined;
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

/** What somebody said of a trip, or asks "what if" about. */
export interface Given {
  readonly conditions: Conditions;
  readonly around: Around;
  readonly oneWay: boolean;
  readonly fill: number | undefined;
  /** Of the hull, m. */
  readonly length: number;
  /** Asked: this wind (m/s), from where it was given, or from ahead on the way home. */
  readonly windSpeed?: number | undefined;
  /** Asked: a stream of this rate (m/s), and waves of this height (m) on every leg, in place of what was given. */
  readonly streamRate?: number | undefined;
  readonly waveHeight?: number | undefined;
  /** What the tanks weigh by: the fill as told, brim-full included; absent: unknown. */
  readonly weighs: number | undefined;
}

/** The plan that is shown: what was given, and the stated assumption for the rest. */
export function expected(given: Given): Scenario {
  const { conditions, around, oneWay, fill, weighs, windSpeed, streamRate } = given;
  const { wind, stream } = around;
  const blowing = typeof wind === 'object' ? asSpeed(wind, windSpeed, around) : undefined;
  const unknownFoul = stream === undefined ? UNKNOWN.foulHome[0] : undefined;
  const ahead = windSpeed ?? (wind === undefined ? UNKNOWN.headwindHome[0] : undefined);
  return {
    departs: around.departs ?? 0,
    wind: blowing,
    headwindHome: blowing ? undefined : ahead,
    stream: stream === 'slack' ? undefined : atRate(stream, streamRate, around),
    foulHome: typeof stream === 'object' || typeof stream === 'function' ? undefined : (streamRate ?? unknownFoul),
    untold: { headwind: UNKNOWN.headwindHome[0], foul: UNKNOWN.foulHome[0] },
    ...seaOf(given, blowing, UNKNOWN.waves[0]),
    oneWay,
    fill: fill ?? UNKNOWN.fill[0],
    weighs: weighs ?? BRIMFUL,
    batteryTemperatureC: conditions.batteryTemperatureC ?? UNKNOWN.batteryTemperatureC[0],
    kinds: [],
  };
}

/** The stream at another rate, m/s; of streams by tide the strongest of all hours and places comes to it. */
function atRate(
  stream: Exclude<Around['stream'], 'slack'>,
  rate: number | undefined,
  { strongestStream }: Around,
): Scenario['stream'] {
  if (rate === undefined || stream === undefined) return stream;
  if (typeof stream === 'object') return { ...stream, rate };
  const factor = strongestStream > 0 ? rate / strongestStream : 0;
  return (way, seconds) => {
    const found = stream(way, seconds);
    return found.known ? { ...found, stream: { ...found.stream, rate: found.stream.rate * factor } } : found;
  };
}

/** The wind with this as its strongest, m/s; undefined: a calm forecast has no direction to blow from. */
function asSpeed(wind: WindLaw, windSpeed: number | undefined, around: Around): WindLaw | undefined {
  if (windSpeed === undefined) return wind;
  if (!byTime(wind)) return { ...wind, speed: windSpeed };
  const now = strongest(wind, around);
  return now > 0 ? withSpeeds(wind, (speed) => (speed * windSpeed) / now) : undefined;
}

function strongest(wind: WindLaw, { departs = 0, horizon }: Around): number {
  return strongestTold(wind, departs, departs + horizon);
}

/** Whether the waves are given, or follow from a wind over local waters. */
export function seaTold(conditions: Conditions, { wind, seaUnder }: Around): boolean {
  return seaGiven(conditions) || (wind !== undefined && seaUnder !== undefined);
}

/** Waves as given, or raised by the wind over the fetch of each leg, or `unknown` times the length of the hull. */
function seaOf(
  { conditions: { sea }, around, length, waveHeight }: Given,
  blowing: WindLaw | undefined,
  unknown: number,
): Pick<Scenario, 'waveHeight' | 'waves'> {
  if (waveHeight !== undefined) return { waveHeight };
  if (sea === 'calm') return { waveHeight: 0 };
  if (sea && 'height' in sea) return { waveHeight: sea.height };
  const swell = sea?.swell ?? 0;
  const { wind, seaUnder, departs = 0, horizon } = around;
  if (wind === undefined || !seaUnder) return { waveHeight: Math.max(unknown * length, swell) };
  if (!blowing) return { waveHeight: swell };
  const { waves, highest } = seaUnder(blowing);
  return { waveHeight: highest(departs, departs + horizon), waves };
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
  const { conditions, around, fill } = given;
  const base = expected(given);
  const unknownWind = around.wind === undefined && given.windSpeed === undefined;
  const unknownStream = around.stream === undefined;
  const cold = home.electric && conditions.batteryTemperatureC === undefined;
  const kinds: BadCaseKind[] = [unknownWind ? 'home-headwind' : 'wind-fresher'];
  if (unknownStream) kinds.push('home-foul-stream');
  if (fill === undefined) kinds.push('less-in-tank');
  if (cold) kinds.push('cold-battery');
  const freshened = base.wind === around.wind ? around.fresher : base.wind && withSpeeds(base.wind, oneForceMore);
  // Calm has no direction to freshen from: a light breeze gets up, from ahead.
  const ahead = unknownWind ? UNKNOWN.headwindHome[1] : oneForceMore(base.headwindHome ?? oneForceMore(0));
  const sea = seaOf(given, freshened, UNKNOWN.waves[1]);
  const weather: Scenario = {
    ...base,
    wind: freshened,
    eased: base.wind,
    headwindHome: freshened ? undefined : ahead,
    foulHome: unknownStream ? Math.max(UNKNOWN.foulHome[1], base.foulHome ?? 0) : base.foulHome,
    untold: { headwind: UNKNOWN.headwindHome[1], foul: UNKNOWN.foulHome[1] },
    ...(freshened || seaGiven(conditions) || given.waveHeight !== undefined
      ? sea
      : raisedBy(ahead, sea.waveHeight, given)),
    fill: fill ?? UNKNOWN.fill[1],
    batteryTemperatureC: cold ? UNKNOWN.batteryTemperatureC[1] : base.batteryTemperatureC,
    kinds,
  };
  const cases: Scenario[] = [weather, { ...weather, homeCap: home.slow, kinds: ['home-slow', ...kinds] }];
  if (home.hump !== undefined) cases.push({ ...weather, homeSpeed: home.hump, kinds: ['home-on-hump', ...kinds] });
  // Waves that slow the boat save it fuel; nobody knows whether they are there.
  if (weather.waveHeight > 0) cases.push({ ...weather, unslowed: true });
  return cases;
}

function seaGiven({ sea }: Conditions): boolean {
  return sea === 'calm' || (sea !== undefined && 'height' in sea);
}

/** Where a wind gets up that has no direction, its waves over open water, but no more than an unknown sea is given. */
function raisedBy(wind: number, least: number, { length }: Given): Pick<Scenario, 'waveHeight' | 'waves'> {
  const open = windSea({ wind, fetch: LONGEST_FETCH }).height;
  return { waveHeight: Math.max(least, Math.min(open, UNKNOWN.waves[1] * length)), waves: undefined };
}
