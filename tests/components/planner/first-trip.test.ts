import { describe, expect, it } from 'vitest';
import { firstDraft } from '../../../src/components/planner/first-trip.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { readDraft } from '../../../src/core/files/trip-schema.ts';

describe('the trip a newcomer sees', () => {
  it('is a boat of the catalogue that nobody has read a plate of', () => {
    const { trip, origin } = firstDraft();
    expect(trip.craft).toEqual(craftFrom(origin.hullId!, origin.engineId!, origin.storeId!));
    expect(trip.craft.hull.plate).toBeUndefined();
  });

  it('passes its own door and says nothing about day, fill or route', () => {
    const { trip } = firstDraft();
    expect(readDraft(trip).ok).toBe(true);
    expect(trip.conditions).toEqual({ water: 'sea' });
    expect(trip.load.fill).toBeUndefined();
    expect(trip.route.waypoints).toEqual([]);
  });
});
