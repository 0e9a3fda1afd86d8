import { readFileSync } from 'node:fs';
import type { ReactiveControllerHost } from 'lit';
import { afterAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepNotes, keptNotes, NO_NOTES } from '../../../src/components/passage-plan/passage-notes.ts';
import { DraftKeeper } from '../../../src/components/planner/draft-keeper.ts';
import { keptToday } from '../../../src/components/reserve-check/today.ts';
import { plannerDraft, useInPlanner } from '../../../src/components/trials/to-planner.ts';
import { WorkKeeper } from '../../../src/components/trials/work-keeper.ts';
import { readProfile } from '../../../src/core/files/profile-file.ts';
import { shipped } from '../../trips.ts';

const host = { addController() {}, requestUpdate() {} } as unknown as ReactiveControllerHost;
const LATER = '{"trip":{"version":9,"legs":"as a later version has them"}}';
const kept = new Map<string, string>();
let room = true;

/** The device's storage, which may be full. */
const storage = {
  getItem: (key: string) => kept.get(key) ?? null,
  removeItem: (key: string) => kept.delete(key),
  setItem: (key: string, text: string) => {
    if (!room) throw new DOMException('full', 'QuotaExceededError');
    kept.set(key, text);
  },
};
const before = Object.getOwnPropertyDescriptor(globalThis, 'localStorage');
Object.defineProperty(globalThis, 'localStorage', { value: storage, configurable: true });

beforeEach(() => {
  kept.clear();
  room = true;
});
afterAll(() => {
  if (before) Object.defineProperty(globalThis, 'localStorage', before);
  else Reflect.deleteProperty(globalThis, 'localStorage');
});

/** Keeping waits for the hand to rest. */
function keptBy<T>(keeper: { keep(value: T): void }, value: T): void {
  vi.useFakeTimers();
  keeper.keep(value);
  vi.runAllTimers();
  vi.useRealTimers();
}

function boat() {
  const file = new URL('../../../shared/trials-demo/sample-boat.json', import.meta.url);
  const read = readProfile(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error('the sample boat is sound');
  return read.value;
}

describe('a trip kept by a version that this one cannot read', () => {
  it('is put by before a new one takes its place', async () => {
    kept.set('homeleg-trip', LATER);
    const keeper = new DraftKeeper(host, () => 'homeleg-trip');
    expect(await keeper.load()).toEqual({ unreadable: true });
    keptBy(keeper, { trip: shipped('petrol-day'), origin: {} });
    expect(kept.get('homeleg-trip')).toContain('waypoints');
    expect([...kept.values()]).toContain(LATER);
  });

  it('stays where there is no room to put it by, and the page says that it keeps nothing', async () => {
    kept.set('homeleg-trip', LATER);
    room = false;
    const keeper = new DraftKeeper(host, () => 'homeleg-trip');
    await keeper.load();
    // Room again, but not for both.
    room = true;
    keptBy(keeper, { trip: shipped('petrol-day'), origin: {} });
    expect(kept.get('homeleg-trip')).toBe(LATER);
    expect(keeper.failed).toBe(true);
  });

  it('is put by beside another one that was put by before', async () => {
    for (const text of [LATER, '{"trip":', LATER]) {
      kept.set('homeleg-trip', text);
      await new DraftKeeper(host, () => 'homeleg-trip').load();
      kept.delete('homeleg-trip');
    }
    expect([...kept.values()].toSorted()).toEqual(['{"trip":', LATER].toSorted());
  });

  it('is put by before a measured boat is handed to the planner', async () => {
    kept.set('homeleg-trip', LATER);
    expect(await useInPlanner(boat(), {})).toBe(true);
    expect((await plannerDraft())?.trip.trials).toBeDefined();
    expect([...kept.values()]).toContain(LATER);
  });
});

describe('trials that this version cannot read', () => {
  it('are put by before new ones take their place', async () => {
    kept.set('homeleg-trials', '{"profile":{"version":9}}');
    const keeper = new WorkKeeper(host, () => 'homeleg-trials');
    expect(await keeper.load()).toEqual({ unreadable: true });
    keptBy(keeper, { profile: boat(), origins: {} });
    expect([...kept.values()]).toContain('{"profile":{"version":9}}');
    expect(await new WorkKeeper(host, () => 'homeleg-trials').load()).toHaveProperty('work');
  });
});

describe('notes of a passage that cannot be read', () => {
  it('are put by before new ones take their place', () => {
    kept.set('homeleg-passage', '{"who":"Two of us');
    expect(keptNotes()).toEqual(NO_NOTES);
    keepNotes({ ...NO_NOTES, who: 'Us' });
    expect(keptNotes().who).toBe('Us');
    expect([...kept.values()]).toContain('{"who":"Two of us');
  });
});

describe('conditions of the desk that no water has', () => {
  it('count as not given', () => {
    const now = new Date('2026-07-15T10:00:00');
    const conditions = {
      water: 'sea',
      wind: { fromDeg: 90, speed: -20 },
      stream: { setDeg: 9000, rate: 1 },
      sea: { height: -3 },
      batteryTemperatureC: 1e9,
    };
    kept.set('homeleg-today', JSON.stringify({ day: '2026-7-15', conditions }));
    expect(keptToday(now)).toEqual({ water: 'sea' });
  });
});
