import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { freeName } from '../../../src/components/saved/names.ts';
import { keepEntries, removeEntry, type Saved, savedEntries } from '../../../src/components/saved/saved-store.ts';
import { openStore } from '../../../src/components/store/open-store.ts';
import { whyUnkept } from '../../../src/components/store/why-unkept.ts';
import { shipped } from '../../trips.ts';

const saved = (id: string, name: string, hour: number): Saved => ({
  id,
  name,
  kind: 'trip',
  savedAt: `2026-07-15T${String(hour).padStart(2, '0')}:00:00.000Z`,
  trip: shipped('petrol-day'),
});

beforeEach(async () => {
  await (await openStore()).clear('saved');
});

describe('what is saved on the device', () => {
  it('comes back whole, the last saved first', async () => {
    const [early, late] = [saved('a', 'Early', 8), saved('b', 'Late', 9)];
    await keepEntries([early, late]);
    expect(await savedEntries()).toEqual({ entries: [late, early], unreadable: 0 });
    await removeEntry('b');
    expect((await savedEntries()).entries).toEqual([early]);
  });

  it('is renamed in place', async () => {
    await keepEntries([saved('a', 'Early', 8)]);
    await keepEntries([saved('a', 'Dawn', 8)]);
    expect((await savedEntries()).entries.map(({ name }) => name)).toEqual(['Dawn']);
  });

  it('counts what it cannot read and leaves it where it is', async () => {
    const database = await openStore();
    await database.put('saved', { id: 'x', kind: 'hovercraft', name: 'From a newer page' });
    await keepEntries([saved('a', 'Early', 8)]);
    expect(await savedEntries()).toMatchObject({ unreadable: 1, entries: [{ name: 'Early' }] });
    expect(await database.get('saved', 'x')).toBeDefined();
  });

  it('knows a full device from a newer page and from a browser that keeps nothing', () => {
    expect(whyUnkept(new DOMException('', 'QuotaExceededError'))).toBe('full');
    expect(whyUnkept(new DOMException('', 'VersionError'))).toBe('newer');
    expect(whyUnkept(new DOMException('', 'SecurityError'))).toBe('blocked');
    expect(whyUnkept(undefined)).toBe('blocked');
  });
});

describe('freeName', () => {
  it('counts on where a name is taken', () => {
    expect(freeName('Day out', [])).toBe('Day out');
    expect(freeName('Day out', ['Day out'])).toBe('Day out 2');
    expect(freeName('Day out 2', ['Day out', 'Day out 2'])).toBe('Day out 3');
  });
});
