import { describe, expect, it } from 'vitest';
import { readSavedFile, type SavedEntry, savedFileText } from '../../../src/core/files/saved-file.ts';
import { shipped } from '../../trips.ts';
import { electricTrip, petrolTrip } from './full-trips.ts';

const savedAt = '2026-07-15T08:00:00.000Z';
const entries: SavedEntry[] = [
  { kind: 'trip', name: 'Day out', savedAt, trip: petrolTrip() },
  { kind: 'trip', name: 'Tender', savedAt, trip: electricTrip() },
  { kind: 'boat', name: 'Measured boat', savedAt, boat: { craft: petrolTrip().craft, trials: petrolTrip().trials } },
  { kind: 'boat', name: 'Hire boat', savedAt, boat: { craft: shipped('hire-hull').craft } },
];

const read = (text: string) => readSavedFile(text);
const codeOf = (text: string) => {
  const found = read(text);
  return found.ok ? undefined : found.problems[0]!.code;
};

describe('a file of saved trips and boats', () => {
  it('brings every trip and boat back as it was', () => {
    expect(read(savedFileText(entries))).toStrictEqual({ ok: true, value: { entries, problems: [] } });
  });

  it('leaves out what is not sound, says where, and keeps the rest', () => {
    const spoilt = JSON.parse(savedFileText(entries));
    spoilt.entries[1].trip.craft.hull.length = -3;
    spoilt.entries[2] = 'nonsense';
    const found = read(JSON.stringify(spoilt));
    if (!found.ok) throw new Error('refused');
    expect(found.value.entries.map(({ name }) => name)).toEqual(['Day out', 'Hire boat']);
    expect(found.value.problems.map(({ path }) => path.split('.').slice(0, 2).join('.'))).toEqual([
      'entries.1',
      'entries.2',
    ]);
  });

  it('refuses another file, a newer one and one with too much in it', () => {
    expect(codeOf('{"version":1}')).toBe('not-saved-file');
    expect(codeOf('[]')).toBe('not-saved-file');
    expect(codeOf('')).toBe('empty');
    expect(codeOf('{"format":"homeleg-saved","version":2,"entries":[]}')).toBe('unknown-version');
    const many = JSON.stringify({ format: 'homeleg-saved', version: 1, entries: Array(501).fill(0) });
    expect(codeOf(many)).toBe('too-big');
  });

  it('believes no calibration that somebody wrote into a boat', () => {
    const forged = JSON.parse(savedFileText(entries.slice(3)));
    forged.entries[0].boat.craft.calibration = { factors: [0.1], covariance: [[0]], runs: 9 };
    const found = read(JSON.stringify(forged));
    expect(found.ok && JSON.stringify(found.value)).not.toContain('calibration');
  });
});
