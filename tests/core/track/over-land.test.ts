import { describe, expect, it } from 'vitest';
import { prepareWaters } from '../../../src/core/route/waters.ts';
import { overLand } from '../../../src/core/track/over-land.ts';
import { box, waters, zone } from '../route/made-waters.ts';
import { recorded } from './made-tracks.ts';

/** East from 46 N 32 W: a kilometre, of which the last 300 m and more lie on the island. */
const track = recorded([{ seconds: 100, speed: 10, headingDeg: 90 }]);
const shore = track.points[70]!.lon;
const island = zone({ kind: 'land', name: 'Cold Rock' }, box(shore, 45.99, -31.98, 46.01));
const known = prepareWaters(waters([island], [-32.1, 45.9, -31.9, 46.1]));

describe('overLand', () => {
  it('tells how much of a track lies on land', () => {
    expect(overLand(known, track).land).toBeCloseTo(0.3, 3);
    expect(overLand(known, track, 0, 60)).toEqual({ land: 0, unknown: 0 });
    expect(overLand(known, track, 75, 100).land).toBeCloseTo(1, 6);
  });

  it('tells what lies outside the waters', () => {
    const away = recorded([{ seconds: 100, speed: 10, headingDeg: 90 }], { from: { lat: 47, lon: -32 } });
    expect(overLand(known, away)).toEqual({ land: 0, unknown: 1 });
  });

  it('puts no still boat ashore', () => {
    expect(overLand(known, { name: '', points: [], breaks: [] })).toEqual({ land: 0, unknown: 0 });
    expect(overLand(known, recorded([{ seconds: 10, speed: 0, headingDeg: 0 }])).land).toBe(0);
  });
});
