import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { spentOf } from '../../../src/components/trials/spent-of.ts';
import { readTracks, type TracksRead } from '../../../src/components/trials/track-reader.ts';
import {
  addedStretch,
  clockOf,
  moved,
  nextRunName,
  paired,
  runFrom,
  runName,
  runsToBe,
  timeAt,
} from '../../../src/components/trials/track-work.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { madeRun, newTrials } from './made-work.ts';

const file = (name: string) => ({
  name,
  text: async () => readFileSync(`shared/trials-demo/${name}`, 'utf8'),
});
const NOW = Date.parse('2027-01-01T00:00:00Z') / 1000;

let read: TracksRead;
beforeAll(async () => {
  const files = [file('track-two-aboard.gpx'), file('track-four-aboard.gpx')];
  read = (await readTracks(
    files,
    NOW,
    () => {},
    () => true,
  ))!;
});

describe('the sample tracks', () => {
  it('make the four runs they were simulated with, at the speeds through still water put into them', () => {
    const runs = runsToBe(paired(read.tracks));
    // What scripts/trials-demo.ts sails: 4.5 and 15 kn, 5.5 kn and full throttle.
    const knots = runs.map(({ still }) => still.speed / KNOT);
    expect(runs.map(({ passes }) => passes.length)).toEqual([2, 4, 2, 4]);
    [4.5, 15, 5.5].forEach((speed, i) => {
      expect(Math.abs(knots[i]! - speed)).toBeLessThan(0.15);
    });
  });

  it('leave the way to the trial water in no run', () => {
    const found = paired(read.tracks);
    expect(found.filter(({ run }) => run === '').length).toBeGreaterThan(0);
    expect(nextRunName(found)).toBe('E');
  });

  it('hand over runs with their passes, the load and the readings', () => {
    const [first] = runsToBe(paired(read.tracks));
    const { load } = madeRun('r1');
    const run = runFrom(
      first!,
      { setup: 's1', load, fullThrottle: true, reading: { kind: 'rate', rate: 0.001 } },
      newTrials(),
    );
    expect(run).toMatchObject({
      id: 'r1',
      setup: 's1',
      load,
      fullThrottle: true,
      consumed: { kind: 'rate', rate: 0.001 },
    });
    expect(run.passes.map(({ way }) => way)).toEqual(['out', 'back']);
    expect(run.day).toMatch(/^2026-06-(19|20|21)$/);
  });

  it('move an end by hand, but leave a stretch that would be too short', () => {
    const found = paired(read.tracks);
    const one = found[1]!;
    const open = read.tracks[0]!;
    const { start, end } = one.stretch;
    const shorter = moved(found, one.id, { start: start + 30, end }, open);
    expect(shorter[1]!.stretch.start).toBeCloseTo(start + 30, 3);
    expect(moved(found, one.id, { start, end: start + 5 }, open)[1]).toBe(one);
  });

  it('take a stretch added by hand, in order of time and in no run', () => {
    const found = paired(read.tracks);
    const open = read.tracks[0]!;
    const at = open.track.points[0]!.time;
    const more = addedStretch(found, open, { start: at + 5, end: at + 40 })!;
    expect(more).toHaveLength(found.length + 1);
    expect(more[0]).toMatchObject({ run: '' });
    expect(new Set(more.map(({ id }) => id)).size).toBe(more.length);
  });

  it('tell the time spent at each speed, all of it and at most twelve speeds', () => {
    const spent = spentOf(read.tracks[0]!.measured);
    const sum = spent.reduce((total, { seconds }) => total + seconds, 0);
    const { points } = read.tracks[0]!.track;
    expect(Math.abs(sum - (points.at(-1)!.time - points[0]!.time))).toBeLessThan(30);
    expect(spent.length).toBeLessThanOrEqual(12);
  });
});

describe('readTracks', () => {
  it('says what is wrong with a file and goes on with the others', async () => {
    const nonsense = { name: 'notes.gpx', text: async () => 'not a track' };
    const both = await readTracks(
      [nonsense, file('track-two-aboard.gpx')],
      NOW,
      () => {},
      () => true,
    );
    expect(both!.refused.map((each) => each.file)).toEqual(['notes.gpx']);
    expect(both!.tracks).toHaveLength(1);
  });
});

describe('clock readings', () => {
  it('are read back to the second, next to the time they were near', () => {
    const time = NOW + 4523;
    expect(timeAt(clockOf(time), time + 300)).toBe(time);
  });

  it('mean the nearest of three days past midnight', () => {
    const late = new Date(2026, 5, 20, 23, 59, 50).getTime() / 1000;
    expect(timeAt('00:00:10', late)).toBe(late + 20);
  });

  it('are refused when they are none', () => {
    expect(timeAt('25:00', NOW)).toBeUndefined();
    expect(timeAt('soon', NOW)).toBeUndefined();
  });
});

describe('runName', () => {
  it('goes on after Z', () => {
    expect([0, 25, 26, 27].map(runName)).toEqual(['A', 'Z', 'A2', 'B2']);
  });
});
