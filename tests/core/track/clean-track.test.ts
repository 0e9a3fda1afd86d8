import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import { cleanTrack } from '../../../src/core/track/clean-track.ts';
import type { Track, TrackPoint } from '../../../src/core/track/shapes.ts';
import { MORNING, recorded } from './made-tracks.ts';

const sailed = recorded([
  { seconds: 60, speed: 6, headingDeg: 80 },
  { seconds: 60, speed: 8, headingDeg: 200 },
]);

/** The same track with some points elsewhere: m and degrees from where they were. */
function displaced(indices: readonly number[], distance: number, bearingDeg = 30): Track {
  const points = sailed.points.map((point, index) =>
    indices.includes(index) ? { ...point, ...destination(point, bearingDeg, distance) } : point,
  );
  return { ...sailed, points };
}

function without(indices: readonly number[]): readonly TrackPoint[] {
  return sailed.points.filter((_, index) => !indices.includes(index));
}

const codes = (track: Track) => cleanTrack(track).notes.map(({ code, count }) => ({ code, count }));

describe('cleanTrack', () => {
  it('leaves a sound track as it is, turns and stops included', () => {
    expect(cleanTrack(sailed)).toEqual({ track: sailed, notes: [] });
    const halting = recorded([
      { seconds: 30, speed: 12, headingDeg: 0 },
      { seconds: 30, speed: 0, headingDeg: 0, change: 2 },
      { seconds: 30, speed: 6, headingDeg: 180, change: 1 },
    ]);
    expect(cleanTrack(halting).notes).toEqual([]);
  });

  it('leaves out fixes a kilometre off, alone or a few in a row', () => {
    for (const indices of [[40], [40, 41, 42], [40, 60, 100], [0], [0, 1], [120]]) {
      const { track, notes } = cleanTrack(displaced(indices, 1000));
      expect(track.points).toEqual(without(indices));
      expect(notes).toMatchObject([{ code: 'jump', count: indices.length, at: MORNING + indices[0]! }]);
    }
  });

  it('leaves out a fix only 25 m beside the way, but not scatter of 5 m', () => {
    expect(cleanTrack(displaced([40], 25)).track.points).toEqual(without([40]));
    expect(codes(displaced([40], 5))).toEqual([]);
  });

  it('goes on where the boat is found to be, after several fixes say so', () => {
    const rest = sailed.points.map((_, index) => index).filter((index) => index >= 70);
    const { track, notes } = cleanTrack(displaced(rest, 5000));
    expect(track.points.length).toBe(sailed.points.length);
    expect(track.breaks).toEqual([70]);
    expect(notes).toMatchObject([{ code: 'moved', count: 1, at: MORNING + 70 }]);
  });

  it('is interrupted where nothing was recorded, and says for how long', () => {
    const silent = Array.from({ length: 39 }, (_, at) => 20 + at);
    const { track, notes } = cleanTrack({ ...sailed, points: without(silent) });
    expect(track.breaks).toEqual([20]);
    expect(notes).toMatchObject([{ code: 'gap', count: 1, seconds: 40 }]);
  });

  it('takes a fix every ten seconds as usual for a recorder that writes so', () => {
    expect(codes(recorded([{ seconds: 600, speed: 6, headingDeg: 80 }], { every: 10 }))).toEqual([]);
  });

  it('keeps interruptions of the recorder at the same moment when points before them go', () => {
    const track = displaced([30], 1000);
    expect(cleanTrack({ ...track, breaks: [30, 80] }).track.breaks).toEqual([30, 79]);
  });

  it('leaves out what lies beyond the latitudes that can be charted', () => {
    const points = sailed.points.map((point, index) => (index === 3 ? { ...point, lat: 88 } : point));
    expect(codes({ ...sailed, points })).toEqual([{ code: 'beyond-latitude', count: 1 }]);
  });

  it('takes empty tracks and single points', () => {
    expect(cleanTrack({ name: '', points: [], breaks: [] }).notes).toEqual([]);
    const single = { name: '', points: sailed.points.slice(0, 1), breaks: [] };
    expect(cleanTrack(single)).toEqual({ track: single, notes: [] });
  });

  it('changes nothing when done again', () => {
    const once = cleanTrack(displaced([5, 40, 41, 90], 800)).track;
    expect(cleanTrack(once).track).toEqual(once);
  });
});
