import { describe, expect, it } from 'vitest';
import haven from '../../../shared/tides/haven.json' with { type: 'json' };
import stations from '../../../shared/tides/stations.json' with { type: 'json' };
import { readTideStation } from '../../../src/core/files/tide-station-file.ts';

function faults(change: object): string[] {
  const found = readTideStation(JSON.stringify({ ...haven, ...change }));
  return found.ok ? [] : found.problems.map(({ code, path }) => `${code} ${path}`);
}

describe('readTideStation', () => {
  it('reads every shipped station as one that a user brings', () => {
    for (const station of [haven, ...stations]) {
      expect(readTideStation(JSON.stringify(station))).toEqual({ ok: true, value: station });
    }
  });

  it('names what is missing, unknown or out of bounds', () => {
    expect(faults({ meanLevel: undefined })).toEqual(['missing meanLevel']);
    expect(faults({ height: 3 })).toEqual(['unknown-field height']);
    expect(faults({ lat: 91 })).toEqual(['invalid lat']);
    expect(faults({ constituents: [] })).toEqual(['invalid constituents']);
    expect(faults({ constituents: [{ name: 'M2', amplitude: -1, phaseDeg: 0 }] })).toEqual([
      'invalid constituents.0.amplitude',
    ]);
  });

  it('refuses a constituent that stands twice, which would count double', () => {
    expect(faults({ constituents: [haven.constituents[0], haven.constituents[0]] })).toEqual([
      'repeated constituents.1.name',
    ]);
  });

  it('refuses what is no station', () => {
    for (const text of ['', '[]', 'null', '"x"', '{', '{"constructor": 1}']) {
      expect(readTideStation(text).ok, text).toBe(false);
    }
  });
});
