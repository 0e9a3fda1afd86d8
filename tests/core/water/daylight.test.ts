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

  it('is kept with just the hour to spare, and short, not dark, home at sunset itself', () => {
    const { sunset: sets } = lightOfTrip(place, { departure, home: departure });
    const at = (home: number, wanted?: number) => lightOfTrip(place, { departure, home }, wanted);
    expect(at(sets! - 60 * MINUTE)).toMatchObject({ answer: 'kept', margin: 60 * MINUTE });
    expect(at(sets! - 60 * MINUTE + 1).answer).toBe('short');
    expect(at(sets!)).toMatchObject({ answer: 'short', margin: 0 });
    expect(at(sets! + 1)).toMatchObject({ answer: 'dark', margin: -1 });
    expect(at(sets! - 30 * MINUTE, 30 * MINUTE).answer).toBe('kept');
  });

  it('begins at sunrise and ends at sunset: a trip that leaves then is in the light, or waits for the next', () => {
    const { sunset: sets } = lightOfTrip(place, { departure, home: departure });
    const { sunrise } = lightOfTrip(place, { departure: departure - 9 * HOUR, home: departure });
    const leaving = (at: number) => lightOfTrip(place, { departure: at, home: at + HOUR });
    expect(leaving(sunrise!)).toMatchObject({ answer: 'kept', sunset: sets });
    expect(leaving(sunrise! - 1)).toMatchObject({ answer: 'dark', sunrise });
    // From sunset on the next sunrise counts, about 13 hours later in October.
    const evening = leaving(sets!);
    expect(evening).toMatchObject({ answer: 'dark' });
    expect(evening.margin).toBeUndefined();
    expect(evening.sunrise! - sets!).toBeGreaterThan(12 * HOUR);
    expect(evening.sunrise! - sets!).toBeLessThan(14 * HOUR);
  });

  it('of a polar day that ends in the autumn is told by that first sunset', () => {
    // At 69.65 north the sun first sets again at the end of July.
    const north = { lat: 69.65, lon: 18.96 };
    const answers = Array.from({ length: 20 }, (_, day) => {
      const at = secondsOf('2026-07-20T10:00:00Z') + day * 24 * HOUR;
      return lightOfTrip(north, { departure: at, home: at + HOUR }).answer;
    });
    expect(answers[0]).toBe('polar-day');
    expect(answers.at(-1)).toBe('kept');
    expect(answers).not.toContain('dark');
    // Who leaves a day before it, and is home an hour after it, is home in the dark.
    const days = Array.from({ length: 20 }, (_, day) =>
      daylightOn(north, secondsOf('2026-07-20T10:00:00Z') + day * 24 * HOUR, 0),
    );
    const first = days.findIndex(({ sunset }) => sunset !== undefined);
    const { sunset } = days[first]!;
    const departure = days[first - 1]!.solarNoon;
    expect(lightOfTrip(north, { departure, home: sunset! + HOUR })).toMatchObject({ answer: 'dark', margin: -HOUR });
  });
});

describe('twilight', () => {
  it('comes before sunrise and after sunset, half an hour and more at middle latitudes', () => {
    const day = daylightOn({ lat: 50.77, lon: -1.3 }, secondsOf('2026-10-10T12:00:00Z'), 0);
    for (const twilight of [day.sunrise! - day.civilDawn!, day.civilDusk! - day.sunset!]) {
      expect(twilight).toBeGreaterThan(28 * MINUTE);
      expect(twilight).toBeLessThan(40 * MINUTE);
    }
    expect(Math.abs(day.solarNoon - (day.sunrise! + day.sunset!) / 2)).toBeLessThan(2 * MINUTE);
  });
});
