import { describe, expect, it } from 'vitest';
import { afloatIn } from '../../../src/core/trip/afloat-in.ts';
import { givenOf, prepare } from '../../../src/core/trip/prepare.ts';
import { Remembered } from '../../../src/core/trip/remembered.ts';
import { expected } from '../../../src/core/trip/scenario.ts';
import { haven, soundTrip } from '../../trips.ts';

const prepared = prepare(soundTrip(), haven());
const scenario = expected(givenOf(prepared));
const [warm, cold] = [prepared.boatAt(20), prepared.boatAt(5)];
const afloat = afloatIn(prepared, scenario, 10);
const changes = [{ mass: afloat.mass + 1 }, { lcg: afloat.lcg + 0.01 }, { airArea: afloat.airArea + 0.1 }] as const;

describe('what runs of one trip ask alike', () => {
  it('is worked out once for a boat as heavy, however charged', () => {
    const remembered = new Remembered();
    const slow = remembered.slow(warm, afloat);
    const climb = remembered.climb(warm, afloat);
    expect(remembered.slow(warm, { ...afloat, charge: 0.3 })).toBe(slow);
    expect(remembered.climb(warm, { ...afloat, charge: 0.3 })).toBe(climb);
    expect(climb).toEqual([]);
  });

  it('is worked out anew for another boat, mass, centre or frontal area', () => {
    for (const change of changes) {
      const remembered = new Remembered();
      const slow = remembered.slow(warm, afloat);
      const climb = remembered.climb(warm, afloat);
      expect(remembered.slow(warm, { ...afloat, ...change })).not.toBe(slow);
      expect(remembered.climb(warm, { ...afloat, ...change })).not.toBe(climb);
    }
    const remembered = new Remembered();
    const [slow, climb] = [remembered.slow(warm, afloat), remembered.climb(warm, afloat)];
    expect(remembered.slow(cold, afloat)).not.toBe(slow);
    expect(remembered.climb(cold, afloat)).not.toBe(climb);
  });

  it('is slow ahead in flat water: heavier needs more', () => {
    const remembered = new Remembered();
    const light = remembered.slow(warm, afloat).resistance;
    expect(remembered.slow(warm, { ...afloat, mass: afloat.mass + 200 }).resistance).toBeGreaterThan(light);
    expect(remembered.slow(warm, afloat).resistance).toBe(light);
  });
});
