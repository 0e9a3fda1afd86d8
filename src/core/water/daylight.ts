import { getTimes } from 'suncalc';
import { MINUTE } from '../units/convert.ts';
import { DAY, dayStart } from './clock.ts';

/** Instants, s since 1970, of one day of the calendar of a place, for a horizon at sea level. */
export interface Daylight {
  /** `polar-day`: no sunset that day; `polar-night`: no sunrise. */
  readonly state: 'usual' | 'polar-day' | 'polar-night';
  readonly sunrise?: number;
  readonly sunset?: number;
  /** First and last light; undefined where twilight lasts all night or never comes. */
  readonly civilDawn?: number;
  readonly civilDusk?: number;
  readonly solarNoon: number;
}

interface Spot {
  /** WGS 84 degrees. */
  readonly lat: number;
  readonly lon: number;
}

/**
 * Daylight of the day on which an instant, s since 1970, falls on the clock of the place: give the offset of that clock
 * from UTC, s (`offsetOf(departure)`). Sun's upper limb at 90.833 degrees from the zenith, civil twilight to 96; to about
 * half a minute of an almanac; high ground brings the evening forward. Beyond the polar circles a state, not an error.
 */
export function daylightOn(place: Spot, seconds: number, offset: number): Daylight {
  return daylightAround(place, dayStart(seconds, offset) + DAY / 2);
}

/** Daylight of the sun's day whose noon is nearest to an instant. */
function daylightAround({ lat, lon }: Spot, clockNoon: number): Daylight {
  // The library takes the sun's day from the UTC date, which in the far east and west is not that of the place: it is
  // asked for the mean noon there nearest to noon on the clock.
  const toEast = (lon / 360) * DAY;
  const meanNoon = Math.round((clockNoon + toEast - DAY / 2) / DAY) * DAY + DAY / 2 - toEast;
  const times = getTimes(new Date(meanNoon * 1000), lat, lon);
  return {
    state: times.sunrise && times.sunset ? 'usual' : times.alwaysUp ? 'polar-day' : 'polar-night',
    sunrise: secondsIn(times.sunrise),
    sunset: secondsIn(times.sunset),
    civilDawn: secondsIn(times.dawn),
    civilDusk: secondsIn(times.dusk),
    solarNoon: times.solarNoon.getTime() / 1000,
  };
}

/** Planned return at least this long before sunset, s (common practice, no source). */
export const BEFORE_SUNSET = 60 * MINUTE;

/** How a trip lies to the light. Times s since 1970, margins s. */
export interface LightOfTrip {
  /**
   * `kept`: home with the margin to spare; `short`: by sunset, but with less; `dark`: after sunset, or under way before
   * sunrise; `polar-day`: no sunset to heed; `polar-night`: no day at all.
   */
  readonly answer: 'kept' | 'short' | 'dark' | 'polar-day' | 'polar-night';
  /** From home to sunset; negative after it. Undefined without a sunset, and when the trip starts in the dark. */
  readonly margin?: number;
  /** Sunset that ends the daylight of the departure. */
  readonly sunset?: number;
  /** Last light after it, for a boat with lights; undefined where twilight lasts all night. */
  readonly lastLight?: number;
  /** When the trip starts in the dark: the next sunrise. */
  readonly sunrise?: number;
}

/**
 * Whether a trip that leaves at `departure` is back at `home`, both s since 1970, in the light that it leaves in; `wanted`
 * is the margin before sunset, s. A boat without lights must be in by sunset. Ask it also with the time of a slow return,
 * with engine trouble or at displacement speed, not only with that of the plan (common practice, no source).
 */
export function lightOfTrip(
  place: Spot,
  trip: { readonly departure: number; readonly home: number },
  wanted = BEFORE_SUNSET,
): LightOfTrip {
  const { departure, home } = trip;
  // By the sun's own days; the one that holds the departure is among three.
  const days = [-1, 0, 1].map((day) => daylightAround(place, departure + day * DAY));
  const today = days[1]!;
  const rises = (day: Daylight) => day.sunrise !== undefined && day.sunrise <= departure;
  const light =
    days.find((day) => rises(day) && departure < day.sunset!) ??
    // Where the sun stays up, the day lasts until the first sunset of the autumn.
    (today.state === 'polar-day' ? days.find(({ sunset }) => sunset !== undefined && sunset > departure) : undefined);
  if (light) {
    const margin = light.sunset! - home;
    const answer = margin >= wanted ? 'kept' : margin >= 0 ? 'short' : 'dark';
    return { answer, margin, sunset: light.sunset, lastLight: light.civilDusk };
  }
  if (today.state !== 'usual') return { answer: today.state };
  const next = days.find(({ sunrise }) => sunrise !== undefined && sunrise > departure);
  return { answer: 'dark', sunrise: next?.sunrise };
}

function secondsIn(time: Date | null): number | undefined {
  return time === null ? undefined : time.getTime() / 1000;
}
