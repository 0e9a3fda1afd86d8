import { describe, expect, it } from 'vitest';
import { type Company, company, type Member } from '../../../src/core/trip/company.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven, planOf, shipped, soundTrip } from '../../trips.ts';

const sound = soundTrip();
const tender = shipped('electric-tender');
const slower: Trip = { ...sound, route: { ...sound.route, speed: 3 } };
const lowOnFuel: Trip = { ...sound, load: { ...sound.load, fill: 0.35 } };

function together(...members: readonly Member[]): Company {
  const answer = company(members, haven());
  if (!answer.ok) throw new Error(`boat ${answer.boat}: ${answer.message}`);
  return answer.value;
}

describe('company', () => {
  it('goes at the speed of the slowest, and all are home with it', () => {
    const found = together({ name: 'fast', trip: sound }, { name: 'slow', trip: slower });
    expect(found.slowest).toBe(1);
    expect(found.pace).toBeCloseTo(3, 6);
    expect(found.boats[0]!.plan.time).toBeCloseTo(found.boats[1]!.plan.time, 6);
    expect(found.boats[0]!.plan.time).toBeGreaterThan(found.boats[0]!.alone.time);
  });

  it('changes nothing for a boat that goes alone', () => {
    const found = together({ name: 'only', trip: sound });
    const plan = planOf(sound, { quick: true });
    expect(found.boats[0]!.plan).toEqual(plan);
    expect(found.helps).toEqual([]);
    expect(found.verdict).toBe(plan.verdict);
  });

  it('finds who runs short first, wherever that boat stands in the list', () => {
    const [full, low] = [
      { name: 'full', trip: sound },
      { name: 'low', trip: lowOnFuel },
    ];
    expect(together(full, low).shortest).toBe(1);
    expect(together(low, full).shortest).toBe(0);
  });

  it('is no better than its worst boat', () => {
    const empty: Trip = { ...sound, load: { ...sound.load, fill: 0.03 } };
    expect(together({ name: 'full', trip: sound }, { name: 'empty', trip: empty }).verdict).toBe('no-go');
  });

  it('takes a heavier boat in tow at more cost than a lighter one', () => {
    const heavy: Trip = {
      ...sound,
      craft: { ...sound.craft, hull: { ...sound.craft.hull, mass: sound.craft.hull.mass + 250 } },
    };
    const left = (other: Trip) => {
      const { helps } = together(
        { name: 'tug', trip: slower },
        { name: 'tow', trip: { ...other, route: slower.route } },
      );
      return helps.find(({ from }) => from === 0)!.tow!.left;
    };
    expect(left(heavy)).toBeLessThan(left(sound));
  });

  it('says that a boat with all its seats taken cannot take everybody of another', () => {
    const [help] = together({ name: 'a', trip: sound }, { name: 'b', trip: { ...sound, load: crowd(4) } }).helps;
    expect(help!.aboard.people).toBe(4);
    expect(help!.aboard.verdict).toBe('no-go');
    expect(help!.aboard.against).toContain('over-plate-persons');
  });

  it('sails petrol and electric boats together, each in its own fuel or charge', () => {
    const found = together({ name: 'petrol', trip: slower }, { name: 'electric', trip: tender });
    expect(found.boats.map(({ plan }) => plan.store)).toEqual(['fuel', 'charge']);
    for (const { plan, minimums } of found.boats) expect(minimums.length === 0).toBe(plan.need.median === Infinity);
  });

  it('says which boat cannot be planned', () => {
    const nowhere: Trip = { ...sound, route: { ...sound.route, waypoints: [] } };
    expect(company([{ name: 'a', trip: nowhere }], haven())).toMatchObject({ ok: false, boat: 0 });
  });
});

function crowd(people: number): Trip['load'] {
  const items = Array.from({ length: people }, (_, i) => ({
    id: `p${i}`,
    kind: 'adult' as const,
    mass: 80,
    station: ['helm', 'seat-mid', 'seat-fore-port', 'seat-aft-port'][i]!,
    ...(i === 0 && { helm: true }),
  }));
  return { ...sound.load, items };
}
