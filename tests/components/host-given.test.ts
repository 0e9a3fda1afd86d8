import { describe, expect, it, vi } from 'vitest';
import fleet from '../../shared/craft/hire-fleet.json' with { type: 'json' };
import { type HostGiven, reserveRule, takeGiven } from '../../src/components/host/host-given.ts';
import { firstDraft } from '../../src/components/planner/first-trip.ts';
import { withHostBoat } from '../../src/components/planner/with-host-boat.ts';

const plain: HostGiven = {
  units: 'nautical',
  theme: '',
  center: '',
  zoom: undefined,
  tiles: '',
  forecastSource: '',
  reserve: '',
  boat: '',
  fleet: '',
  fleetFile: undefined,
  inline: '',
  boats: undefined,
};
const DAY = '2026-06-01';
const take = (given: Partial<HostGiven>, today = DAY) => takeGiven({ ...plain, ...given }, today);

describe('what a page gives an element', () => {
  it('finds nothing wrong with a plain tag', async () => {
    expect(await take({})).toMatchObject({ problems: [], boats: [], boat: undefined, reserve: undefined });
  });

  it.each([
    ['units', { units: 'miles' }, 'nautical, metric, imperial'],
    ['theme', { theme: 'blue' }, 'light, dark'],
    ['center', { center: 'the harbour' }, '46.0, -32.0'],
    ['zoom', { zoom: Number.NaN }, 'from 2 to 18'],
    ['tiles', { tiles: 'https://tiles.example/map.png' }, '{z}, {x} and {y}'],
    ['reserve', { reserve: 'half' }, '"30 min"'],
    ['boat', { boat: 'the-red-one' }, 'catamaran-3-6'],
    ['script', { inline: '{ "trip": ' }, 'cannot be read'],
    ['script', { inline: '{ "trips": {} }' }, 'It may name trip, waters and fleet'],
    ['script', { inline: '{ "trip": { "version": 1 } }' }, 'craft'],
    ['fleet', { fleetFile: { format: 'homeleg-fleet' } }, 'version 1'],
  ])('says what is wrong with %s, and how to mend it', async (attribute, given, fix) => {
    const { problems } = await take(given as Partial<HostGiven>);
    expect(problems[0]?.attribute).toBe(attribute);
    expect(problems.map(({ message }) => message).join(' ')).toContain(fix);
  });

  it('takes a boat of the fleet with its plate, speed and name', async () => {
    const [first] = fleet.boats;
    const { boat, boats, problems } = await take({ fleetFile: fleet, boat: first!.id });
    expect(problems).toEqual([]);
    expect(boats).toHaveLength(fleet.boats.length);
    const trip = withHostBoat(firstDraft().trip, boat!);
    expect(trip.craft.hull.plate).toEqual(first!.plate);
    expect(trip.route.speed).toBe(first!.speed);
  });

  it('uses no boat of a fleet file that nobody answers for any more', async () => {
    const { boats, problems } = await take({ fleetFile: { ...fleet, until: '2026-05-31' } });
    expect(boats).toEqual([]);
    expect(problems[0]?.message).toContain('2026-05-31');
  });

  it('takes a hull of the catalogue with an engine that goes with it, and no plate that nobody has read', async () => {
    const { boat } = await take({ boat: 'catamaran-3-6' });
    expect(boat?.craft.hull.plate).toBeUndefined();
    const named = await take({ boat: 'catamaran-3-6 petrol-8hp-4s tank-12' });
    expect(named.boat?.craft.drive.kind).toBe('petrol');
    expect(named.problems).toEqual([]);
  });

  it('takes a trip from the JSON inside', async () => {
    const trip = { ...firstDraft().trip, name: 'From the page' };
    const taken = await take({ inline: JSON.stringify({ trip }) });
    expect(taken.problems).toEqual([]);
    expect(taken.trip?.name).toBe('From the page');
  });

  it('asks the network for a fleet only where one is named', async () => {
    const asked = vi.spyOn(globalThis, 'fetch').mockRejectedValue(new Error('no network'));
    await take({ boat: 'catamaran-3-6' });
    expect(asked).not.toHaveBeenCalled();
    const { problems } = await take({ fleet: '/fleet.json' });
    expect(problems[0]?.message).toContain('/fleet.json');
    asked.mockRestore();
  });
});

it('reads a reserve as words, share or minutes, and nothing else', () => {
  expect(reserveRule('thirds')).toEqual({ kind: 'thirds' });
  expect(reserveRule('25 %')).toEqual({ kind: 'share', share: 0.25 });
  expect(reserveRule('30min')).toEqual({ kind: 'minutes', minutes: 30 });
  for (const text of ['', '0 %', '100 %', '-3 min', 'third', '25']) expect(reserveRule(text), text).toBeUndefined();
});
