import { describe, expect, it, vi } from 'vitest';
import fleet from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import { type DeskGiven, PageDesk } from '../../../src/components/reserve-check/page-desk.ts';
import type { ReserveCheck } from '../../../src/components/reserve-check/reserve-check.ts';

const OURS = { ...fleet, answers: 'The club', until: '2099-12-31', boats: [{ ...fleet.boats[0], id: 'ours' }] };
type Boats = ReserveCheck['boats'];

/** The element as far as the desk knows it; what it is given stands in accessors, as on the element. */
function desk(given: Partial<DeskGiven>, inline = '') {
  const updates = vi.fn();
  const told: string[] = [];
  const host = {
    localName: 'homeleg-reserve-check',
    requestUpdate: updates,
    querySelector: () => (inline ? { textContent: inline } : null),
    dispatchEvent: ({ detail }: CustomEvent<{ attribute: string }>) => told.push(detail.attribute),
  };
  const page = new PageDesk(host as unknown as ConstructorParameters<typeof PageDesk>[0]);
  const all = { units: 'metric', theme: '', reserve: '', boat: '', fleet: '', boats: fleet.boats, ...given };
  class Given {}
  for (const [name, value] of Object.entries({ fleetFile: undefined, ...all })) {
    Object.defineProperty(Given.prototype, name, { get: () => value });
  }
  page.look(new Given() as DeskGiven);
  return { page, told, updates };
}

describe('a reserve check on a page', () => {
  vi.spyOn(console, 'error').mockImplementation(() => {});

  it('has invented boats where the page names no fleet', () => {
    expect(desk({}).page.invented).toBe(true);
  });

  it('has no boat at all until the fleet that the page names is there', async () => {
    const { page, updates } = desk({ fleetFile: OURS as unknown as DeskGiven['fleetFile'], boat: 'ours' });
    expect(page.fleet).toBeUndefined();
    await vi.waitFor(() => expect(updates).toHaveBeenCalled());
    expect(page.fleet?.answers).toBe('The club');
    expect(page.invented).toBe(false);
    expect(page.boatId).toBe('ours');
  });

  it('takes no fleet past its date, and says so', async () => {
    const past = { ...OURS, surveyed: '2019-01-01', until: '2020-01-01' };
    const { page, told } = desk({ fleetFile: past as unknown as DeskGiven['fleetFile'] });
    await vi.waitFor(() => expect(told).toEqual(['fleet']));
    expect(page.fleet).toBeUndefined();
  });

  it('takes a fleet from the JSON inside', async () => {
    const { page } = desk({}, JSON.stringify({ fleet: OURS }));
    await vi.waitFor(() => expect(page.fleet?.answers).toBe('The club'));
  });

  it('keeps the reserve that the page insists on', async () => {
    const { page } = desk({ reserve: '50 %' });
    await vi.waitFor(() => expect(page.reserve).toEqual({ reserve: [{ kind: 'share', share: 0.5 }] }));
    expect(page.invented).toBe(true);
  });

  it('tells what it cannot use, a boat among those of the desk included', async () => {
    const { told } = desk({ units: 'miles', reserve: 'plenty', boat: 'catamaran-3-6' });
    await vi.waitFor(() => expect(told).toEqual(['units', 'reserve', 'boat']));
  });

  it('knows a boat of the desk by its id', async () => {
    const { page, told } = desk({ boat: fleet.boats[1]!.id, boats: fleet.boats as unknown as Boats });
    await vi.waitFor(() => expect(page.boatId).toBe(fleet.boats[1]!.id));
    expect(told).toEqual([]);
  });

  it('knows at once what the invented boats are, and a boat of shipped parts once the catalogue is there', async () => {
    const { page, updates } = desk({});
    const [invented] = page.fleet!.boats;
    expect(page.craftOf(invented!)?.hull.stations.length).toBeGreaterThan(0);
    expect(updates).not.toHaveBeenCalled();
    const named = { ...invented!, id: 'named' };
    expect(page.craftOf(named)).toBeUndefined();
    await vi.waitFor(() => expect(updates).toHaveBeenCalled());
    expect(page.craftOf(named)).toEqual(page.craftOf(invented!));
  });

  it('knows at once what a boat with figures of its own is', () => {
    const { page } = desk({});
    const craft = page.craftOf(page.fleet!.boats[0]!)!;
    const own = { id: 'own', name: 'Own', speed: 3, plate: 'none' as const, craft };
    expect(page.craftOf(own)).toBe(craft);
  });
});
