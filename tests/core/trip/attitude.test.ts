import { describe, expect, it } from 'vitest';
import petrolDay from '../../../shared/trips/petrol-day.json' with { type: 'json' };
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { attitudeOf } from '../../../src/core/trip/attitude.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';

const day = petrolDay as unknown as Trip;
const SPEED = 7.7;

/** The trip with the mate sitting this far forward, m. */
function mateAt(x: number): Trip {
  const items = day.load.items.map(({ station, ...item }) => {
    return item.name === 'Mate' ? { ...item, at: { x, y: -0.42, z: 0.6 } } : { ...item, ...(station && { station }) };
  });
  return { ...day, load: { ...day.load, items } };
}

describe('attitudeOf', () => {
  it('lowers the bow at rest and under way, and comes onto the plane sooner, the further forward somebody sits', () => {
    const places = [0.3, 0.8, 1.3, 1.8, 2.3].map((x) => attitudeOf(mateAt(x), SPEED));
    for (let i = 1; i < places.length; i++) {
      const [before, now] = [places[i - 1]!, places[i]!];
      if (typeof before.float === 'string' || typeof now.float === 'string') throw new Error('it floats');
      if (before.float.rest.state !== 'afloat' || now.float.rest.state !== 'afloat') throw new Error('it floats');
      expect(now.float.rest.trimDeg).toBeLessThan(before.float.rest.trimDeg);
      expect(now.planned.trimDeg).toBeLessThan(before.planned.trimDeg);
      expect(now.hump.trimDeg).toBeLessThan(before.hump.trimDeg);
      expect(now.planesFrom!).toBeLessThanOrEqual(before.planesFrom!);
    }
    expect(places.at(-1)!.planesFrom!).toBeLessThan(0.8 * places[0]!.planesFrom!);
  });

  it('rises out of the water from rest to planing', () => {
    const { float, hump, planned } = attitudeOf(day, SPEED);
    if (typeof float === 'string' || float.rest.state !== 'afloat') throw new Error('it floats');
    expect(planned.planes).toBe(true);
    expect(hump.trimDeg).toBeGreaterThan(planned.trimDeg);
    expect(planned.sternUnder).toBeLessThan(hump.sternUnder + 0.02);
  });

  it('has no planing view for a boat that does not get there', () => {
    const weak: Trip = {
      ...day,
      craft: { ...day.craft, drive: craftFrom('catamaran-3-6', 'petrol-2-5hp-4s', 'tank-12').drive },
    };
    const { planing, planesFrom } = attitudeOf(weak, 2);
    expect(planing).toBeUndefined();
    expect(planesFrom).toBeUndefined();
  });
});
