import { describe, expect, it } from 'vitest';
import { zonesAlong } from '../../../src/core/route/waters.ts';
import { nearestLandings } from '../../../src/core/trip/nearest-landing.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { type Standing, standingOf } from '../../../src/core/trip/standing.ts';
import { haven } from '../../trips.ts';
import { dayOut } from './day-on-the-water.ts';

function opened(trip: Trip): Standing {
  const found = standingOf(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

const from = (lat: number, lon: number, standing = opened(dayOut())) =>
  [...nearestLandings(standing, [{ at: { lat, lon }, leg: 0, arrives: 600 }])][0];

describe('the nearest landing', () => {
  it('at a landing is that landing, at no cost', () => {
    expect(from(46.02739, -31.99008)).toMatchObject({ name: 'Marl Haven slip', distance: 0, fuel: true, power: true });
  });

  it('over open water is straight ahead', () => {
    const found = from(46.0105, -32.0084)!;
    expect(found.name).toBe('Ward jetty');
    expect(found.distance).toBeGreaterThan(900);
    expect(found.distance).toBeLessThan(1100);
    expect(found.need).toBeGreaterThan(0);
    expect(found.time).toBeGreaterThan(60);
  });

  it('behind land is reached by a way round it, which is longer than the straight one', () => {
    const south = { lat: 45.985, lon: -32.0084 };
    const jetty = { lat: 46.00145, lon: -32.0084 };
    expect(zonesAlong(haven(), south, jetty).crossings.some(({ kind }) => kind === 'land')).toBe(true);
    const found = from(south.lat, south.lon)!;
    expect(found.name).toBe('Ward jetty');
    expect(found.distance).toBeGreaterThan(1.1 * 1830);
  });

  it('is another one at the hour at which the nearest has too little water', () => {
    const pell = { lat: 46.0195, lon: -31.9525 };
    const lowWater = opened(dayOut({ departure: '2027-06-19T07:00:00-02:00' }));
    const highWater = opened(dayOut({ departure: '2027-06-19T13:00:00-02:00' }));
    expect(from(pell.lat, pell.lon, highWater)?.name).toBe('Pell landing');
    expect(from(pell.lat, pell.lon, lowWater)?.name).not.toBe('Pell landing');
  });

  it('is not told without local waters', () => {
    const found = standingOf(dayOut(), undefined);
    if (!found.ok) throw new Error('not opened');
    expect([...nearestLandings(found.value, [{ at: { lat: 46, lon: -32 }, leg: 0, arrives: 0 }])]).toEqual([undefined]);
  });
});
