import fc from 'fast-check';
import type { ReactiveControllerHost } from 'lit';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptTrip } from '../../src/components/checklist/kept-trip.ts';
import { TickKeeper } from '../../src/components/checklist/tick-keeper.ts';
import { keptNotes } from '../../src/components/passage-plan/passage-notes.ts';
import { DraftKeeper } from '../../src/components/planner/draft-keeper.ts';
import { keptToday } from '../../src/components/reserve-check/today.ts';
import { plannerDraft } from '../../src/components/trials/to-planner.ts';
import { WorkKeeper } from '../../src/components/trials/work-keeper.ts';
import { readFuelNote, readHire, readMorning } from '../../src/core/files/desk-file.ts';
import { readSavedEntry } from '../../src/core/files/saved-file.ts';
import type { Result } from '../../src/core/units/result.ts';
import { holds, holdsLater } from '../properties/hold.ts';
import { shipped } from '../trips.ts';
import { hostile } from './hostile.ts';
import { changedJson, changedText } from './mutate.ts';

const trip = shipped('petrol-day');
const now = new Date('2026-07-15T10:00:00Z');
const host = { addController() {}, requestUpdate() {} } as unknown as ReactiveControllerHost;

/** What the device kept as text, and who reads it. */
const texts: readonly [string, string, () => unknown][] = [
  ['the trip', JSON.stringify({ trip, origin: { hullId: 'a' } }), () => new DraftKeeper(host, () => 'kept').load()],
  ['the trip, for a checklist', JSON.stringify({ trip, origin: {} }), () => keptTrip('kept')],
  ['the trip, for trials', JSON.stringify({ trip, origin: {} }), () => plannerDraft()],
  ['the trials', JSON.stringify({ profile: {}, origins: {} }), () => new WorkKeeper(host, () => 'kept').load()],
  ['the notes of a passage', JSON.stringify({ who: 'A', margin: 15, onPaper: true }), () => keptNotes()],
  ['the desk of today', JSON.stringify({ day: '2026-7-15', conditions: trip.conditions }), () => keptToday(now)],
  ['the ticks of a checklist', JSON.stringify({ ticked: ['a'], at: 1 }), () => new TickKeeper('x').ticked.size],
];

/** What the device kept as records. */
const records: readonly [string, unknown, (value: unknown) => Result<unknown>][] = [
  ['a hire', { id: 'h', trip }, readHire],
  ['the morning', { day: '2026-07-15', conditions: trip.conditions }, readMorning],
  ['a fuel note', { id: 'n', boatId: 'b', refill: {} }, readFuelNote],
  ['a saved trip', { kind: 'trip', name: 'Day', savedAt: '2026-07-15', trip }, readSavedEntry],
];

// Machines that do other work meanwhile take their time.
describe('what the device kept', { timeout: 180_000 }, () => {
  const before = Object.getOwnPropertyDescriptor(globalThis, 'localStorage');
  let kept = '';

  beforeAll(() => {
    // Every key holds the same odd text.
    const storage = { getItem: () => kept, setItem() {}, removeItem() {} };
    Object.defineProperty(globalThis, 'localStorage', { value: storage, configurable: true });
  });

  afterAll(() => {
    if (before) Object.defineProperty(globalThis, 'localStorage', before);
    else Reflect.deleteProperty(globalThis, 'localStorage');
  });

  for (const [name, sound, read] of texts) {
    it(`is read or left alone, however it was damaged: ${name}`, async () => {
      const damaged = fc.oneof(changedJson(sound), changedText(sound));
      await holdsLater(
        fc.asyncProperty(damaged, async (text) => {
          kept = text;
          await read();
        }),
        { seed: 6021, numRuns: 60 },
      );
      for (const [what, text] of hostile()) {
        kept = text;
        await expect(Promise.resolve().then(read), what).resolves.not.toThrow();
      }
      expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    });
  }

  for (const [name, sound, read] of records) {
    it(`is let in or refused with a reason: ${name}`, () => {
      holds(
        fc.property(changedJson(JSON.stringify(sound)), (text) => {
          const result = read(JSON.parse(text));
          if (!result.ok) expect(result.problems.every(({ code, message }) => code && message)).toBe(true);
        }),
        { seed: 6022, numRuns: 100 },
      );
    });
  }
});
