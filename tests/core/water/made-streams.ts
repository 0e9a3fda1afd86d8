import type { Stream, StreamPlace, Tide } from '../../../src/core/water/shapes.ts';

/** An invented tide: high water at noon UTC, halfway between neaps and springs. */
export const tide: Tide = {
  port: 'Standard Port',
  highWater: '2026-07-15T13:00:00+01:00',
  range: 3,
  meanSpringRange: 4,
  meanNeapRange: 2,
  highWaterHeight: 4,
};

/** Hourly from six hours before to six after, springs twice the neaps; invented. */
export function place(name: string, lat: number, lon: number, springs: readonly Stream[]): StreamPlace {
  return {
    name,
    lat,
    lon,
    firstHour: -6,
    springs,
    neaps: springs.map(({ setDeg, rate }) => ({ setDeg, rate: rate / 2 })),
  };
}

/** Floods towards a direction for six hours, ebbs back for six, greatest at three hours. */
export function reversing(floodDeg: number, most: number): Stream[] {
  return Array.from({ length: 13 }, (_, i) => {
    const rate = most * Math.sin(((i - 6) * Math.PI) / 6);
    return { setDeg: (floodDeg + (rate > 0 ? 180 : 0)) % 360, rate: Math.abs(Math.round(rate * 1e6) / 1e6) };
  });
}

/** Turns once round in twelve hours at one rate. */
export function rotary(rate: number): Stream[] {
  return Array.from({ length: 13 }, (_, i) => ({ setDeg: (i * 30) % 360, rate }));
}
