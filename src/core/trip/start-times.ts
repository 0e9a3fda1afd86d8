import type { Waters } from '../route/waters.ts';
import { MINUTE } from '../units/convert.ts';
import { DAY, dayStart, offsetOf, secondsOf, timeAt } from '../water/clock.ts';
import type { Tide } from '../water/shapes.ts';
import { planTrip } from './plan-trip.ts';
import type { Amount, Reason, ReasonCode, Trip, Verdict } from './shapes.ts';

/** The trip as planned, but left at another time. Amounts kg or J, times s. */
export interface StartTime {
  /** ISO 8601 with offset. */
  readonly departure: string;
  readonly verdict: Verdict;
  readonly need: Amount;
  readonly left: Amount;
  readonly time: number;
  /** Why the verdict is no better; of several first the one that goes by the hour. */
  readonly reason: Reason | undefined;
  /** Some of it would be in the dark. */
  readonly dark: boolean;
  /** The tide it was planned with, where that is worked out for each departure. */
  readonly tide?: Tide;
}

export interface StartDay {
  /** Offset of the clock of the place from UTC at an instant, s; absent: that of the departure holds all day. */
  readonly offsetAt?: (seconds: number) => number;
  /** The tide nearest to an instant, s since 1970; absent: the trip's own tide stands. */
  readonly tideAt?: (seconds: number) => Tide | undefined;
}

/** Departures looked at, s apart. */
export const START_STEP = 30 * MINUTE;

/** What changes by the hour, and so is what another departure may mend. */
const BY_THE_HOUR: ReadonlySet<ReasonCode> = new Set<ReasonCode>([
  'after-dark',
  'near-dark',
  'too-shallow',
  'wind-against-stream',
  'stuck-in-stream',
  'over-wind-limit',
  'over-wave-limit',
  'too-rough',
  'rough',
  'gusty',
  'forecast-short',
  'streams-short',
  'reserve-broken',
  'runs-dry',
  'bad-case-dry',
  'reserve-unsure',
]);

/**
 * The trip left at every half hour of the day of its departure, one plan in each turn, so that whoever asks can rest or
 * stop between them. Nothing where no departure is given: its day is what is asked about.
 */
export function* startTimes(trip: Trip, waters: Waters | undefined, day: StartDay = {}): Generator<StartTime, void> {
  const { departure } = trip.conditions;
  if (departure === undefined) return;
  for (const start of startsOf(departure, day.offsetAt)) {
    const tide = day.tideAt?.(secondsOf(start));
    const conditions = { ...trip.conditions, departure: start, ...(tide && { tide }) };
    const found = planTrip({ ...trip, conditions }, waters, { quick: true });
    if (!found.ok) return;
    const { verdict, need, left, time, reasons } = found.value;
    yield {
      departure: start,
      verdict,
      need: need.median,
      left: left.median,
      time,
      reason: tellingOf(reasons, verdict),
      dark: reasons.some(({ code }) => code === 'after-dark'),
      ...(tide && { tide }),
    };
  }
}

/** Every half hour that the clock of the place shows on that day: 46 or 50 where the clock is changed. */
export function startsOf(departure: string, offsetAt?: (seconds: number) => number): readonly string[] {
  const fixed = offsetOf(departure);
  const offset = offsetAt ?? (() => fixed);
  const seconds = secondsOf(departure);
  const day = timeAt(seconds, offset(seconds)).slice(0, 10);
  const midnight = dayStart(seconds, offset(seconds));
  const starts: string[] = [];
  for (let at = midnight - DAY / 8; at < midnight + (9 * DAY) / 8; at += START_STEP) {
    const time = timeAt(at, offset(at));
    if (time.startsWith(day)) starts.push(time);
  }
  return starts;
}

/** Of those that the verdict rests on the first that goes by the hour, or the first. */
function tellingOf(reasons: readonly Reason[], verdict: Verdict): Reason | undefined {
  const own = reasons.filter(({ level }) => level === verdict);
  return own.find(({ code }) => BY_THE_HOUR.has(code)) ?? own[0];
}

/** Which of them uses least, among those with the best verdict there is; undefined where none is possible. */
export function thriftiestStart(starts: readonly StartTime[]): StartTime | undefined {
  for (const wanted of ['go', 'marginal'] as const) {
    const fit = starts.filter(({ verdict }) => verdict === wanted);
    if (fit.length > 0) return fit.reduce((a, b) => (b.need < a.need ? b : a));
  }
  return undefined;
}
