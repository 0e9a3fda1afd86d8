import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { textOfBytes } from '../../src/core/files/text-of-bytes.ts';
import { holds } from '../properties/hold.ts';
import { type Door, doors } from './doors.ts';
import { hostile } from './hostile.ts';
import { changedJson, changedText, oddBytes } from './mutate.ts';

const RUNS = { seed: 5120, numRuns: 80 };
/** ms: far above what any door takes, even on a machine that is busy; a door that hangs is beyond it. */
const PATIENCE = 10_000;

/** Let in and usable, or refused with a code and a sentence; in bounded time, and nothing of the language changed. */
function through({ name, read, use }: Door, text: string): void {
  const start = performance.now();
  const result = read(text);
  if (result.ok) use(result.value as never);
  else {
    expect(result.problems.length, name).toBeGreaterThan(0);
    for (const { code, message } of result.problems) {
      expect(code).toMatch(/^[a-z][a-z-]*$/);
      expect(message.length).toBeGreaterThan(0);
      // A name out of the file may be told, a file may not be told whole.
      expect(message.length).toBeLessThan(20_000);
    }
  }
  expect(performance.now() - start).toBeLessThan(PATIENCE);
}

afterEach(() => {
  expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect((globalThis as { homelegRan?: unknown }).homelegRan).toBeUndefined();
});

// Tracks and trips take their time on a machine that is busy.
describe('a reader', { timeout: 180_000 }, () => {
  for (const door of doors) {
    describe(door.name, () => {
      it('lets a sound file in', () => {
        for (const text of door.sound) {
          const result = door.read(text);
          expect(result).toMatchObject({ ok: true });
          through(door, text);
        }
      });

      it('lets in what can be used or says what is wrong, whatever was changed in a sound file', () => {
        const any = door.sound.flatMap((text) => [
          ...(door.form === 'json' ? [{ weight: 3, arbitrary: changedJson(text) }] : []),
          { weight: 1, arbitrary: changedText(text) },
        ]);
        holds(
          fc.property(fc.oneof(...any), (text) => through(door, text)),
          RUNS,
        );
      });

      it('does so in any encoding', () => {
        holds(
          fc.property(fc.constantFrom(...door.sound).chain(oddBytes), (bytes) => through(door, textOfBytes(bytes))),
          { ...RUNS, numRuns: 40 },
        );
      });

      it('refuses what is meant to hurt', () => {
        for (const [what, text] of hostile()) {
          try {
            through(door, text);
          } catch (error) {
            throw new Error(`${what}: ${String(error)}`);
          }
        }
      });
    });
  }
});
