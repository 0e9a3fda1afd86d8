import { offsetOf as fixedOffset, secondsOf, timeAt } from '../../core/water/clock.ts';
import { localTime, zoneOffset } from '../../core/water/local-time.ts';

/** The clock by which a trip is told: that of a zone, or one fixed offset from UTC. */
export interface PlaceClock {
  /** s east of UTC at an instant, s since 1970. */
  offsetAt(seconds: number): number;
  /** Reading as a date and time input wants it, such as 2027-06-19T10:00. */
  reading(iso: string): string;
  /** The instant of a reading as ISO 8601 with offset; the first of two; undefined: no such time. */
  instant(reading: string): string | undefined;
}

const READING = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)/;

/** Zone of this device, such as Europe/Paris. */
export function deviceZone(): string {
  return new Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC';
}

/**
 * Of a trip that names its zone that zone's clock; of one that only has a departure with an offset, that offset;
 * otherwise the clock of this device.
 */
export function placeClock({
  timezone,
  departure,
}: {
  readonly timezone?: string | undefined;
  readonly departure?: string | undefined;
}): PlaceClock {
  const zone = timezone !== undefined && zoneOffset(0, timezone) !== undefined ? timezone : undefined;
  if (zone === undefined && departure !== undefined) return clockOf(() => fixedOffset(departure), undefined);
  const own = zone ?? deviceZone();
  return clockOf((seconds) => zoneOffset(seconds, own) ?? 0, own);
}

function clockOf(offsetAt: (seconds: number) => number, zone: string | undefined): PlaceClock {
  return {
    offsetAt,
    reading(iso) {
      const seconds = secondsOf(iso);
      return timeAt(seconds, offsetAt(seconds)).slice(0, 16);
    },
    instant(reading) {
      const [, day, clock] = READING.exec(reading) ?? [];
      if (day === undefined || clock === undefined) return undefined;
      if (zone === undefined) {
        const shown = Date.parse(`${day}T${clock}Z`) / 1000;
        return Number.isNaN(shown) ? undefined : timeAt(shown - offsetAt(0), offsetAt(0));
      }
      const found = localTime(day, clock, zone);
      if (found.kind === 'once') return timeAt(found.seconds, found.offset);
      return found.kind === 'twice' ? timeAt(found.first.seconds, found.first.offset) : undefined;
    },
  };
}

/** "UTC+02:00" of an offset, s. */
export function offsetText(offset: number): string {
  const zone = timeAt(0, offset).slice(19);
  return zone === 'Z' ? 'UTC' : `UTC${zone.replace('-', '\u2212')}`;
}

/** "Sat 19 Jun, 14:05" in a language, on the clock of the place. */
export function dayAndClock(iso: string, clock: PlaceClock, lang: string): string {
  const reading = clock.reading(iso);
  const day = new Intl.DateTimeFormat(lang, { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
  return `${day.format(new Date(`${reading}Z`))}, ${reading.slice(11)}`;
}
