import { cleanTrack } from '../../../src/core/track/clean-track.ts';
import { binomialWeights, meanOfMeans } from '../../../src/core/track/mean-of-means.ts';
import { measuredTrack } from '../../../src/core/track/measured-track.ts';
import { overLand } from '../../../src/core/track/over-land.ts';
import { pairPasses } from '../../../src/core/track/pair-passes.ts';
import { passGroup } from '../../../src/core/track/pass-group.ts';
import { passLines } from '../../../src/core/track/pass-lines.ts';
import type { Stretch, Track } from '../../../src/core/track/shapes.ts';
import { findingStretches, steadyStretches } from '../../../src/core/track/steady-stretches.ts';
import { streamByPower, streamOfAll } from '../../../src/core/track/stream-by-power.ts';
import { timeAtSpeeds } from '../../../src/core/track/time-at-speeds.ts';
import { haven } from '../../trips.ts';
import { pass, recorded } from '../track/made-tracks.ts';
import { Drawn } from './drawn.ts';
import { keeping } from './keeping.ts';

/** Out and back at four settings in a stream, with turns, a stop and a slow way home; a receiver's scatter on all of it. */
const morning = recorded(
  [
    { seconds: 40, speed: 1, headingDeg: 80 },
    ...[3, 4.6, 6.2, 8].flatMap((speed) => [
      { seconds: 95, speed: speed + 0.4, headingDeg: 80 },
      { seconds: 12, speed: 2, headingDeg: 170 },
      { seconds: 90, speed: speed - 0.4, headingDeg: 260 },
      { seconds: 12, speed: 2, headingDeg: 350 },
    ]),
    { seconds: 320, speed: 0, headingDeg: 350 },
    { seconds: 60, speed: 0.7, headingDeg: 20 },
    { seconds: 100, speed: 5, headingDeg: 30 },
  ],
  { noise: 1.2, seed: 3 },
);
const sparse = recorded(
  [
    { seconds: 200, speed: 5, headingDeg: 200 },
    { seconds: 200, speed: 5.6, headingDeg: 22 },
    { seconds: 150, speed: 7, headingDeg: 205, change: 60 },
  ],
  { every: 4, noise: 0.6, seed: 8, from: { lat: 45.98, lon: -32.04 } },
);

/** Spoilt as receivers spoil them: a fix twice, one far off, times out of order, and a quarter of an hour without any. */
function spoilt(track: Track): Track {
  const points = track.points.map((point, i) => (i < 300 ? point : { ...point, time: point.time + 900 }));
  const far = { ...points[120]!, lat: points[120]!.lat + 0.03 };
  const changed = [...points.slice(0, 120), far, ...points.slice(121, 200), points[199]!, points[201]!, points[200]!];
  return { ...track, points: [...changed, ...points.slice(202)], breaks: [150] };
}

function found(track: Track): unknown {
  const stretches = steadyStretches(track);
  const { groups, alone } = pairPasses(stretches);
  return {
    stretches,
    groups: groups.map((group) => [group]),
    alone,
    lines: passLines(stretches).map(({ length }) => length),
  };
}

const drawn = new Drawn(5);
/** Passes by dead reckoning, out and back, drawn about some settings; a few askew, a few alone. */
const days: readonly (readonly Stretch[])[] = Array.from({ length: 14 }, () => {
  const stream = drawn.between(-0.8, 0.8);
  const outDeg = drawn.between(0, 360);
  let time = 0;
  return Array.from({ length: Math.floor(drawn.between(2, 9)) }, (_, i) => {
    const seconds = drawn.between(45, 140);
    const still = 3 + 1.7 * Math.floor(i / drawn.of([2, 2, 3, 4]));
    const out = drawn.chance(0.9) === (i % 2 === 0);
    const one = pass(time, seconds, {
      speed: still + (out ? stream : -stream) + drawn.between(-0.15, 0.15),
      headingDeg: (outDeg + (out ? 0 : 180) + drawn.between(-9, 9) + 360) % 360,
      deviation: drawn.between(0.02, 0.2),
      trend: drawn.between(-0.05, 0.05),
    });
    time += seconds + drawn.between(10, drawn.chance(0.1) ? 2000 : 90);
    return one;
  });
});

const powered = (runs: readonly (readonly [number, 'out' | 'back', number])[]) =>
  runs.map(([over, way, power]) => ({ over, way, power }));

keeping('track-passes', {
  'a morning of passes': () => found(morning),
  'a sparse track': () => found(sparse),
  'a sparse track, shorter stretches asked for': () => steadyStretches(sparse, 15),
  'how far the search was at each rest': () => [...findingStretches({ ...morning, breaks: [200, 500] })],
  'a morning measured': () => measuredTrack(morning),
  'a spoilt track made clean': () => {
    const { track, ...notes } = cleanTrack(spoilt(morning));
    return { ...notes, points: track.points, breaks: track.breaks, found: found(track) };
  },
  'a track too short to tell': () => [
    cleanTrack({ ...sparse, points: sparse.points.slice(0, 2) }),
    steadyStretches({ ...sparse, points: sparse.points.slice(0, 1) }),
  ],
  'time at each speed': () => timeAtSpeeds(morning),
  'time at each speed, with a break and finer bins': () => timeAtSpeeds({ ...spoilt(morning), breaks: [300] }, 0.3),
  'how much of a track is on land': () => [
    overLand(haven(), sparse),
    overLand(haven(), sparse, 20, 60),
    overLand(haven(), {
      ...sparse,
      points: [
        { lat: 46.03, lon: -32.06, time: 0 },
        { lat: 46.0, lon: -31.96, time: 9 },
        { lat: 45.9, lon: -31.96, time: 99 },
      ],
    }),
    overLand(haven(), { ...sparse, points: [] }),
  ],
  ...Object.fromEntries(
    days.map((day, i) => [
      `drawn day ${i + 1}`,
      () => {
        const { groups, alone } = pairPasses(day);
        return {
          groups,
          alone: alone.map(({ start }) => start),
          group: passGroup(day),
          lines: passLines(day).map(({ length }) => length),
        };
      },
    ]),
  ),
  'means of means': () => [
    binomialWeights(1),
    binomialWeights(5),
    meanOfMeans([
      { over: 5, way: 'out' },
      { over: 4.2, way: 'back' },
      { over: 5.1, way: 'out' },
    ]),
    meanOfMeans([
      { over: 5, way: 'back' },
      { over: 5.4, way: 'out' },
      { over: 5.2, way: 'out' },
      { over: 4.4, way: 'back' },
    ]),
    meanOfMeans([
      { over: 5, way: 'out' },
      { over: 5.4, way: 'out' },
    ]),
  ],
  'the stream by power': () => {
    const runs = powered([
      [2.1, 'out', 300],
      [1.5, 'back', 320],
      [2.6, 'out', 520],
      [2.0, 'back', 560],
      [1.2, 'back', 900],
      [2.9, 'out', 700],
    ]);
    return [
      streamByPower(runs),
      streamOfAll(runs),
      streamByPower(runs.slice(0, 4)),
      streamByPower(runs.slice(0, 3)),
      streamByPower(runs.map((run) => ({ ...run, power: 0 }))),
    ];
  },
});
