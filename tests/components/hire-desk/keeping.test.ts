import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { DatabasePlace } from '../../../src/components/hire-desk/database-place.ts';
import { deskOf } from '../../../src/components/hire-desk/desk-keeper.ts';
import { MemoryPlace } from '../../../src/components/hire-desk/memory-place.ts';
import { departed } from '../../../src/core/hire/hire-times.ts';
import type { Hire } from '../../../src/core/hire/shapes.ts';
import { aHire, aMorning, NOON } from '../../core/hire/examples.ts';

const asHire = (kept: unknown) => kept as Hire;

describe.each([
  ['in the database', () => new DatabasePlace()],
  ['in memory', () => new MemoryPlace()],
])('a desk kept %s', (_, place) => {
  let desk = place();
  beforeEach(async () => {
    desk = place();
    await desk.replace({ singles: {}, hires: [], notes: [] });
  });

  it('gives back what was put', async () => {
    await desk.put('morning', aMorning());
    await desk.addHire(aHire());
    const all = await desk.all();
    expect(all.singles.morning).toEqual(aMorning());
    expect(all.hires).toEqual([aHire()]);
  });

  it('lets a boat leave once, though two tabs press it at the same time', async () => {
    await desk.addHire(aHire());
    const leave = (now: number) => desk.changeHire('h1', (kept) => departed(asHire(kept), now));
    const both = await Promise.all([leave(NOON + 1), leave(NOON + 2)]);
    expect(both.filter(Boolean)).toHaveLength(1);
    expect(asHire((await desk.all()).hires[0]).leftAt).toBe(NOON + 1);
  });

  it('loses nothing when two tabs change different things of one hire', async () => {
    await desk.addHire(aHire());
    const tick = (change: Partial<Hire['shown']>) =>
      desk.changeHire('h1', (kept) => ({ ...asHire(kept), shown: { ...asHire(kept).shown, ...change } }));
    await Promise.all([tick({ plate: 'KM' }), tick({ jackets: 'RS' })]);
    expect(asHire((await desk.all()).hires[0]).shown).toEqual({ plate: 'KM', jackets: 'RS' });
  });

  it('keeps the note of a return together with the return, or neither', async () => {
    await desk.addHire(aHire());
    const note = {
      id: 'h1',
      boatId: 'open-hull',
      refill: { id: 'h1', setup: 'desk', load: { items: [] }, spent: [{ speed: 3, seconds: 60 }], amount: 1 },
    };
    await desk.changeHire(
      'h1',
      () => undefined,
      () => note,
    );
    expect((await desk.all()).notes).toEqual([]);
    await desk.changeHire(
      'h1',
      (kept) => ({ ...asHire(kept), returnedAt: NOON }),
      () => note,
    );
    expect((await desk.all()).notes).toEqual([note]);
  });

  it('clears the hires and leaves the morning', async () => {
    await desk.put('morning', aMorning());
    await desk.addHire(aHire());
    await desk.clearHires();
    const { hires, singles } = await desk.all();
    expect(hires).toEqual([]);
    expect(singles.morning).toBeDefined();
  });
});

describe('what comes out of storage', () => {
  it('passes the doors or is counted as unreadable', () => {
    const desk = deskOf({ singles: { morning: { until: 'soon' } }, hires: [aHire(), { id: 'broken' }], notes: [7] });
    expect(desk.hires).toEqual([aHire()]);
    expect(desk.unreadable).toBe(3);
    expect(desk.morning).toBeUndefined();
    expect(desk.demo).toBe(true);
  });
});
