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

  it('takes a fix for sound that a boat at 30 m/s can have reached, with 10 m of scatter', () => {
    const two = (seconds: number, metres: number): Track => {
      const from: TrackPoint = { lat: 46, lon: -32, time: MORNING };
      return { name: '', points: [from, { ...destination(from, 70, metres), time: MORNING + seconds }], breaks: [] };
    };
    expect(codes(two(1, 39.9))).toEqual([]);
    expect(codes(two(1, 40.1))).toEqual([{ code: 'jump', count: 1 }]);
    expect(codes(two(10, 309.9))).toEqual([]);
    expect(codes(two(10, 310.1))).toEqual([{ code: 'jump', count: 1 }]);
  });

  it('lets a fix lie as far beside its neighbours as scatter and hard braking between them explain', () => {
    // 10 m and half of 10 m/s2 by the seconds since and until: 15 m at one each, 30 m at two each, 25 m at one and three.
    const beside = (times: readonly number[], off: number): Track => {
      const from = { lat: 46, lon: -32 };
      const points = times.map((time, at) => {
        const on = destination(from, 80, 5 * time);
        return { ...(at === 3 ? destination(on, 350, off) : on), time: MORNING + time };
      });
      return { name: '', points, breaks: [] };
    };
    for (const [times, most] of [
      [[0, 1, 2, 3, 4, 5], 15],
      [[0, 2, 4, 6, 8, 10], 30],
      [[0, 1, 2, 3, 6, 7], 25],
    ] as const) {
      expect(codes(beside(times, most - 0.1))).toEqual([]);
      expect(cleanTrack(beside(times, most + 0.1)).notes).toMatchObject([{ code: 'jump', at: MORNING + times[3] }]);
    }
  });

  it('believes five fixes elsewhere that agree, and no four', () => {
    const first = (count: number) => Array.from({ length: count }, (_, at) => at);
    const amid = (count: number) => first(count).map((at) => at + 40);
    expect(codes(displaced(amid(4), 5000))).toEqual([{ code: 'jump', count: 4 }]);
    expect(codes(displaced(amid(5), 5000))).toEqual([{ code: 'moved', count: 2 }]);
    expect(cleanTrack(displaced(amid(5), 5000)).track.breaks).toEqual([40, 45]);
    expect(codes(displaced(first(4), 5000))).toEqual([{ code: 'jump', count: 4 }]);
    expect(codes(displaced(first(5), 5000))).toEqual([{ code: 'moved', count: 1 }]);
  });

  it('leaves out every fix that agrees with none, where they come first from here and then from there', () => {
    const apart = sailed.points.map((point, at) =>
      at >= 40 && at < 44 ? { ...point, ...destination(point, at % 2 === 0 ? 0 : 180, 5000) } : point,
    );
    const { track, notes } = cleanTrack({ ...sailed, points: apart });
    expect(track.points).toEqual(without([40, 41, 42, 43]));
    expect(notes).toMatchObject([{ code: 'jump', count: 4, at: MORNING + 40 }]);
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

  it('calls 20 s no gap, and what is longer one; of several it tells how many, which came first and the longest', () => {
    const silent = (from: number, seconds: number) => Array.from({ length: seconds - 1 }, (_, at) => from + 1 + at);
    expect(codes({ ...sailed, points: without(silent(20, 20)) })).toEqual([]);
    expect(codes({ ...sailed, points: without(silent(20, 21)) })).toEqual([{ code: 'gap', count: 1 }]);
    const { notes, track } = cleanTrack({
      ...sailed,
      points: without([...silent(10, 22), ...silent(40, 30), ...silent(80, 25)]),
    });
    expect(notes).toMatchObject([{ code: 'gap', count: 3, seconds: 30, at: MORNING + 32 }]);
    expect(track.breaks.map((at) => track.points[at]!.time - MORNING)).toEqual([32, 70, 105]);
  });

  it('lets a recorder that thins out be silent for six times its usual interval', () => {
    const thin = recorded([{ seconds: 600, speed: 6, headingDeg: 80 }], { every: 10 });
    const gone = (count: number) => thin.points.filter((_, at) => at <= 20 || at > 20 + count);
    expect(codes({ ...thin, points: gone(5) })).toEqual([]);
    expect(codes({ ...thin, points: gone(6) })).toEqual([{ code: 'gap', count: 1 }]);
  });

  it('is interrupted once where the recorder paused and nothing was recorded for long', () => {
    const silent = Array.from({ length: 39 }, (_, at) => 20 + at);
    expect(cleanTrack({ ...sailed, points: without(silent), breaks: [20] }).track.breaks).toEqual([20]);
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
    expect(cleanTrack({ ...sailed, points }).track.points).toEqual(without([3]));
    expect(cleanTrack({ ...sailed, points }).notes[0]!.at).toBe(MORNING + 3);
    const north = [{ lat: 85, lon: 10, time: MORNING }];
    expect(codes({ ...sailed, points: north })).toEqual([]);
  });

  it('tells the first of all that was left out, beside the way or far off', () => {
    const { points } = displaced([40], 25);
    const both = points.map((point, at) => (at === 20 || at === 100 ? displaced([at], 1000).points[at]! : point));
    expect(cleanTrack({ ...sailed, points: both }).notes).toMatchObject([{ code: 'jump', count: 3, at: MORNING + 20 }]);
    const late = points.map((point, at) => (at === 100 ? displaced([at], 1000).points[at]! : point));
    expect(cleanTrack({ ...sailed, points: late }).notes).toMatchObject([{ code: 'jump', count: 2, at: MORNING + 40 }]);
  });

  it('is interrupted in the order of time, wherever the reasons come from', () => {
    const silent = Array.from({ length: 39 }, (_, at) => 20 + at);
    expect(cleanTrack({ ...sailed, points: without(silent), breaks: [60] }).track.breaks).toEqual([20, 60]);
  });

  it('has no interruption before its first point', () => {
    expect(cleanTrack({ ...sailed, breaks: [0, 50] }).track.breaks).toEqual([50]);
    expect(cleanTrack({ ...displaced([0], 1000), breaks: [1, 50] }).track.breaks).toEqual([49]);
    expect(cleanTrack({ ...sailed, breaks: [1] }).track.breaks).toEqual([1]);
  });

  it('finds a gap in the very middle, which is not the usual interval', () => {
    const silent = Array.from({ length: 40 }, (_, at) => 41 + at);
    expect(codes({ ...sailed, points: without(silent) })).toEqual([{ code: 'gap', count: 1 }]);
  });

  it('says in words how many points and how often', () => {
    const texts = (track: Track) => cleanTrack(track).notes.map(({ message }) => message);
    expect(texts(displaced([40], 1000))).toEqual(['1 point where the boat cannot have been, left out']);
    expect(texts(displaced([40, 60], 1000))).toEqual(['2 points where the boat cannot have been, left out']);
    const rest = sailed.points.map((_, index) => index).filter((index) => index >= 70);
    expect(texts(displaced(rest, 5000))[0]).toContain('in time, once');
    expect(texts(displaced([40, 41, 42, 43, 44], 5000))[0]).toContain('in time, 2 times');
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
