import { describe, expect, it } from 'vitest';
import { HOUR, MINUTE } from '../../../src/core/units/convert.ts';
import { dayStart, offsetOf, secondsOf, timeAt } from '../../../src/core/water/clock.ts';
import { daylightOn, lightOfTrip } from '../../../src/core/water/daylight.ts';

const golden = { lat: 39.742476, lon: -105.1786 };

describe('daylightOn', () => {
  it('keeps to the day of the place where the sunset falls on the next day of Greenwich', () => {
    const evening = '2015-08-02T19:00:00-06:00';
    const { sunset } = daylightOn(golden, secondsOf(evening), offsetOf(evening));
    // US Naval Observatory: 19:13 mountain standard time, an hour later on the summer clock, on 2 August.
    expect(Math.abs(sunset! - secondsOf('2015-08-02T20:13:00-06:00'))).toBeLessThan(60);
  });

  it('gives the same day from its first minute to its last', () => {
    for (const time of ['00:00:00', '06:00:00', '12:00:00', '18:30:00', '23:59:59']) {
      const at = secondsOf(`2015-08-02T${time}-06:00`);
      const { sunrise } = daylightOn(golden, at, -6 * HOUR);
      expect(timeAt(sunrise!, -6 * HOUR).slice(0, 10), time).toBe('2015-08-02');
    }
  });

  it('keeps to the day on both sides of the date line and on clocks far from the sun', () => {
    for (const [lon, offsetHours] of [
      [179.9, 12],
      [-179.9, -12],
      [180, 12],
      [-180, 12],
      [-157.4, 14],
      [-171.8, 13],
      [75, 8],
    ] as const) {
      const offset = offsetHours * HOUR;
      const at = secondsOf('2026-03-20T08:00:00Z') - offset;
      const { sunrise, solarNoon, sunset } = daylightOn({ lat: 5, lon }, at, offset);
      expect(timeAt(solarNoon, offset).slice(0, 10), `${lon}`).toBe('2026-03-20');
      expect(sunset! - sunrise!).toBeGreaterThan(12 * HOUR);
      expect(solarNoon - dayStart(at, offset)).toBeGreaterThan(8 * HOUR);
    }
  });

  it('says polar day and polar night as a state', () => {
    const north = { lat: 69.65, lon: 18.96 };
    const june = daylightOn(north, secondsOf('2026-06-21T12:00:00+02:00'), 2 * HOUR);
    expect(june).toMatchObject({ state: 'polar-day', sunset: undefined });
    const december = daylightOn(north, secondsOf('2026-12-21T12:00:00+01:00'), HOUR);
    expect(december.state).toBe('polar-night');
    expect(december.civilDusk).toBeDefined();
    const pole = daylightOn({ lat: 90, lon: 0 }, secondsOf('2026-12-21T12:00:00Z'), 0);
    expect(pole.state).toBe('polar-night');
  });

  it('has no last light where twilight lasts all night', () => {
    const { state, civilDusk } = daylightOn({ lat: 62, lon: 10 }, secondsOf('2026-06-21T12:00:00+02:00'), 2 * HOUR);
    expect(state).toBe('usual');
    expect(civilDusk).toBeUndefined();
  });
});

describe('lightOfTrip', () => {
  const place = { lat: 50.77, lon: -1.3 };
  // Sunset 17:23:41 UTC on 10 October 2026.
  const sunset = secondsOf('2026-10-10T17:23:41Z');
  const departure = secondsOf('2026-10-10T14:00:00Z');

  it('is kept with an hour to spare, short within the hour and dark after sunset', () => {
    expect(lightOfTrip(place, { departure, home: sunset - 62 * MINUTE }).answer).toBe('kept');
    expect(lightOfTrip(place, { departure, home: sunset - 58 * MINUTE }).answer).toBe('short');
    const late = lightOfTrip(place, { departure, home: sunset + 10 * MINUTE });
    expect(late.answer).toBe('dark');
    expect(Math.abs(late.margin! + 10 * MINUTE)).toBeLessThan(30);
    expect(late.lastLight!).toBeGreaterThan(late.sunset!);
  });

  it('counts a trip through the night as dark, however light the day of its return', () => {
    const home = secondsOf('2026-10-11T12:00:00Z');
    expect(lightOfTrip(place, { departure, home })).toMatchObject({ answer: 'dark' });
  });

  it('says when the sun rises to a trip that starts before it', () => {
    const early = lightOfTrip(place, { departure: secondsOf('2026-10-10T05:00:00Z'), home: sunset - 5 * HOUR });
    expect(early.answer).toBe('dark');
    expect(Math.abs(early.sunrise! - secondsOf('2026-10-10T06:19:49Z'))).toBeLessThan(30);
  });

  it('heeds no sunset in the polar day and finds no light in the polar night', () => {
    const north = { lat: 69.65, lon: 18.96 };
    const trip = (day: string) => ({ departure: secondsOf(`${day}T22:00:00Z`), home: secondsOf(`${day}T23:30:00Z`) });
    expect(lightOfTrip(north, trip('2026-06-21'))).toEqual({ answer: 'polar-day' });
    expect(lightOfTrip(north, trip('2026-12-21'))).toEqual({ answer: 'polar-night' });
  });
});
