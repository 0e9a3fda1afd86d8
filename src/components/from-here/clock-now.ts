import { HOUR } from '../../core/units/convert.ts';
import { DAY, dayStart, offsetOf, secondsOf, timeAt } from '../../core/water/clock.ts';
import { departureAt, localReading } from '../conditions-form/departure.ts';

/** A trip may leave this much before its time, s. */
const EARLY = HOUR;

/** Clock reading "14:05" at the place of a departure, or on this device without one. */
export function clockReading(now: Date, departure: string | undefined): string {
  if (departure === undefined) return [now.getHours(), now.getMinutes()].map(two).join(':');
  return localReading(timeAt(now.getTime() / 1000, offsetOf(departure))).slice(11);
}

/**
 * The instant that a clock reading means, ISO 8601 with offset: on the trip's day, or past midnight of it; without a
 * departure today on this device. Undefined where it is no reading.
 */
export function instantOf(reading: string, departure: string | undefined, now: Date): string | undefined {
  const part = /^(\d\d):(\d\d)$/.exec(reading);
  if (!part) return undefined;
  if (departure === undefined) {
    const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(two).join('-');
    return departureAt(`${day}T${reading}`);
  }
  const offset = offsetOf(departure);
  const start = secondsOf(departure);
  const clock = Number(part[1]) * HOUR + Number(part[2]) * 60;
  const same = dayStart(start, offset) + clock;
  return timeAt(same < start - EARLY ? same + DAY : same, offset);
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
