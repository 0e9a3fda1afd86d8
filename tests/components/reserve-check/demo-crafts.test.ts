import { describe, expect, it } from 'vitest';
import { DEMO_CRAFTS } from '../../../src/components/reserve-check/demo-crafts.ts';
import { DEMO_FLEET } from '../../../src/components/reserve-check/demo-fleet.ts';
import { hireCraft } from '../../../src/core/hire/hire-trip.ts';

describe('the boats of the invented fleet', () => {
  it('are what the catalogue says they are; after a change of it: node scripts/hire-crafts.ts', () => {
    const said = Object.fromEntries(DEMO_FLEET.boats.map((boat) => [boat.id, hireCraft(boat)]));
    expect(DEMO_CRAFTS).toEqual(said);
  });
});
