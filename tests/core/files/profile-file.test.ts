import { describe, expect, it } from 'vitest';
import { readProfile, writeProfile } from '../../../src/core/files/profile-file.ts';
import { parametersOf } from '../../../src/core/trials/parameters.ts';
import type { BoatProfile } from '../../../src/core/trials/shapes.ts';
import { catamaran, planned, sailed, TWO, trialsOf } from '../trials/made-trials.ts';
import { withAt } from './full-trips.ts';

const asked = trialsOf(catamaran, [planned('a', TWO, 6), planned('b', TWO, 7)], { measuredBy: 'nobody' });
const trials = sailed(
  asked,
  parametersOf(asked).list.map(({ mean }) => mean),
);

const profile: BoatProfile = {
  format: 'homeleg-profile',
  version: 1,
  name: 'invented boat',
  usual: 'usual',
  trials,
};

const read = (value: unknown) => readProfile(JSON.stringify(value));
const problemOf = (value: unknown) => {
  const found = read(value);
  return found.ok ? undefined : found.problems[0];
};

describe('a boat profile', () => {
  it('reads back as it was written', () => {
    expect(readProfile(writeProfile(profile))).toEqual({ ok: true, value: profile });
  });

  it('says what it is not', () => {
    expect(problemOf({})).toMatchObject({ code: 'not-a-profile' });
    expect(problemOf({ version: 1 })).toMatchObject({ code: 'not-a-profile' });
    expect(problemOf({ ...profile, version: 2 })).toMatchObject({ code: 'unknown-version', path: 'version' });
    expect(readProfile('{"format":').ok).toBe(false);
  });

  it('holds runs and no factors: a calibration written into it is refused', () => {
    expect(problemOf({ ...profile, calibration: { factors: [] } })).toMatchObject({
      code: 'unknown-field',
      path: 'calibration',
    });
  });

  it('finds what does not fit together', () => {
    expect(problemOf({ ...profile, usual: 'other' })).toMatchObject({ code: 'no-such-setup', path: 'usual' });
    expect(problemOf(withAt(profile, ['trials', 'runs', '1', 'setup'], 'other'))).toMatchObject({
      code: 'no-such-setup',
      path: 'trials.runs.1.setup',
    });
    expect(problemOf(withAt(profile, ['trials', 'runs', '1', 'id'], 'a'))).toMatchObject({ code: 'duplicate' });
    expect(problemOf(withAt(profile, ['trials', 'runs', '0', 'load', 'items', '0', 'station'], 'mast'))).toMatchObject({
      code: 'no-such-station',
      path: 'trials.runs.0.load.items.0.station',
    });
  });

  it('names an impossible value in a run with its place', () => {
    for (const [keys, value, code] of [
      [['passes', '0', 'over'], 70, 'too-large'],
      [['passes'], [], 'too-few'],
      [['rpm'], -5, 'too-small'],
      [['consumed', 'rate'], 0, 'too-small'],
      [['day'], 'yesterday', 'not-a-time'],
      [['load', 'items', '0', 'mass'], 5000, 'too-large'],
    ] as const) {
      const place = ['trials', 'runs', '0', ...keys];
      expect(problemOf(withAt(profile, place, value))).toMatchObject({ code, path: place.join('.') });
    }
  });
});
