import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { destination, lonBetween } from '../../src/core/route/distance.ts';
import { meanOfMeans, type SteadyPass } from '../../src/core/track/mean-of-means.ts';
import { pairPasses } from '../../src/core/track/pair-passes.ts';
import type { Stretch, Track } from '../../src/core/track/shapes.ts';
import { steadyStretches } from '../../src/core/track/steady-stretches.ts';
import { timeAtSpeeds } from '../../src/core/track/time-at-speeds.ts';
import { type Part, recorded } from '../core/track/made-tracks.ts';

const runs = { seed: 23, numRuns: 300 };
const few = { seed: 23, numRuns: 40 };

const speed = fc.double({ min: 2, max: 12, noNaN: true });
const stream = fc.double({ min: -1.5, max: 1.5, noNaN: true });
const heading = fc.integer({ min: 0, max: 359 });
/** Out and back by turns, each pass its own speed through the water. */
const passes = fc
  .array(speed, { minLength: 2, maxLength: 9 })
  .map((speeds) => speeds.map((over, at): SteadyPass => ({ over, way: at % 2 === 0 ? 'out' : 'back' })));
/** A morning of steady parts on headings well apart. */
const morning = fc
  .array(fc.record({ seconds: fc.integer({ min: 70, max: 150 }), speed, turn: fc.integer({ min: 60, max: 180 }) }), {
    minLength: 2,
    maxLength: 6,
  })
  .map((parts) => {
    let headingDeg = 0;
    return parts.map(({ seconds, speed, turn }): Part => {
      headingDeg = (headingDeg + turn) % 360;
      return { seconds, speed, headingDeg };
    });
  });

function carried(sailed: readonly SteadyPass[], along: (pass: number) => number): SteadyPass[] {
  return sailed.map(({ over, way }, at) => ({ way, over: over + (way === 'out' ? 1 : -1) * along(at) }));
}

describe('the mean of means', () => {
  it('is changed by no steady stream, which it finds', () => {
    fc.assert(
      fc.property(passes, stream, (sailed, along) => {
        const still = meanOfMeans(sailed)!;
        const found = meanOfMeans(carried(sailed, () => along))!;
        expect(found.speed).toBeCloseTo(still.speed, 9);
        expect(found.stream - still.stream).toBeCloseTo(along, 9);
      }),
      runs,
    );
  });

  it('is changed by no stream that follows a polynomial two degrees below the number of passes', () => {
    const coefficients = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(passes, coefficients, (sailed, given) => {
        const terms = given.slice(0, sailed.length - 1);
        const polynomial = (pass: number) => terms.reduce((sum, term, power) => sum + term * (pass / 8) ** power, 0);
        expect(meanOfMeans(carried(sailed, polynomial))!.speed).toBeCloseTo(meanOfMeans(sailed)!.speed, 9);
      }),
      runs,
    );
  });

  it('is the same sailed in the other order', () => {
    fc.assert(
      fc.property(passes, (sailed) => {
        expect(meanOfMeans([...sailed].reverse())!.speed).toBeCloseTo(meanOfMeans(sailed)!.speed, 9);
      }),
      runs,
    );
  });
});

const timesOf = (stretches: readonly Stretch[]) => stretches.map(({ start, end }) => [start, end]);

function mirrored(track: Track): Track {
  const { lon } = track.points[0]!;
  return { ...track, points: track.points.map((point) => ({ ...point, lon: 2 * lon - point.lon })) };
}

describe('steady stretches', () => {
  it('are the same seen in a mirror, on the mirrored heading', () => {
    fc.assert(
      fc.property(morning, (parts) => {
        const track = recorded(parts);
        const found = steadyStretches(track);
        const other = steadyStretches(mirrored(track));
        expect(timesOf(other)).toEqual(timesOf(found));
        other.forEach((stretch, at) => {
          expect(stretch.speed).toBeCloseTo(found[at]!.speed, 6);
          expect(lonBetween(0, stretch.headingDeg + found[at]!.headingDeg)).toBeCloseTo(0, 6);
        });
      }),
      few,
    );
  });

  it('are the same in a recording that was cut in two where the boat turned', () => {
    fc.assert(
      fc.property(morning, fc.nat(), (parts, any) => {
        const track = recorded(parts);
        const part = 1 + (any % (parts.length - 1));
        const cut = parts.slice(0, part).reduce((sum, { seconds }) => sum + seconds, 0) + 4;
        const halves = [track.points.slice(0, cut), track.points.slice(cut)];
        const found = halves.flatMap((points) => steadyStretches({ ...track, points }));
        const whole = steadyStretches(track);
        expect(found.length).toBe(whole.length);
        found.forEach(({ start, end, speed }, at) => {
          // What settles at an end is seen a little differently where the recording stops there.
          expect(Math.abs(start - whole[at]!.start)).toBeLessThanOrEqual(10);
          expect(Math.abs(end - whole[at]!.end)).toBeLessThanOrEqual(10);
          expect(Math.abs(speed - whole[at]!.speed)).toBeLessThan(0.05);
        });
        expect(timesOf(steadyStretches({ ...track, breaks: [cut] }))).toEqual(timesOf(found));
      }),
      few,
    );
  });

  it('are the same elsewhere on the globe', () => {
    const place = fc.record({
      lat: fc.double({ min: -65, max: 65, noNaN: true }),
      lon: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    fc.assert(
      fc.property(morning, place, (parts, from) => {
        const found = steadyStretches(recorded(parts, { from }));
        const usual = steadyStretches(recorded(parts));
        expect(timesOf(found)).toEqual(timesOf(usual));
        found.forEach((stretch, at) => {
          expect(stretch.speed).toBeCloseTo(usual[at]!.speed, 4);
        });
      }),
      few,
    );
  });

  it('hold one part each, inside it, at its speed', () => {
    fc.assert(
      fc.property(morning, (parts) => {
        const track = recorded(parts, { noise: 0.5 });
        let start = track.points[0]!.time;
        const found = steadyStretches(track);
        for (const { seconds, speed } of parts) {
          const inside = found.filter((stretch) => stretch.start >= start && stretch.end <= start + seconds);
          expect(inside.length).toBe(1);
          expect(Math.abs(inside[0]!.speed - speed)).toBeLessThan(0.15);
          start += seconds;
        }
        expect(found.length).toBe(parts.length);
      }),
      few,
    );
  });

  it('know how far their speed may be out', () => {
    const parts = [{ seconds: 100, speed: 6, headingDeg: 80 }];
    for (const noise of [0.5, 1, 2]) {
      const ratios = Array.from({ length: 200 }, (_, seed) =>
        steadyStretches(recorded(parts, { noise, seed })),
      ).flatMap(([found]) => (found ? [(found.speed - 6) / found.deviation] : []));
      expect(ratios.length).toBeGreaterThan(190);
      const spread = Math.sqrt(ratios.reduce((sum, ratio) => sum + ratio ** 2, 0) / ratios.length);
      // A receiver that wanders little is trusted less than it deserves, never more.
      expect(spread).toBeGreaterThan(0.25);
      expect(spread).toBeLessThan(1);
    }
  });
});

/** The boat sails the parts through water that itself moves. */
function adrift(track: Track, { along, setDeg }: { along: number; setDeg: number }): Track {
  const start = track.points[0]!.time;
  const points = track.points.map((point) => ({
    ...point,
    ...destination(point, setDeg, along * (point.time - start)),
  }));
  return { ...track, points };
}

describe('passes out and back', () => {
  it('give the speed through still water in any stream along them', () => {
    fc.assert(
      fc.property(speed, heading, fc.double({ min: -0.25, max: 0.25, noNaN: true }), (through, outDeg, share) => {
        const there = { seconds: 90, speed: through, headingDeg: outDeg };
        const back = { ...there, headingDeg: (outDeg + 180) % 360 };
        const along = Math.max(-2, Math.min(2, share * through));
        const { groups } = pairPasses(
          steadyStretches(adrift(recorded([there, back, there, back]), { along, setDeg: outDeg })),
        );
        expect(groups.length).toBe(1);
        expect(groups[0]!.passes.length).toBe(4);
        expect(groups[0]!.speed).toBeCloseTo(through, 1);
        expect(groups[0]!.stream.along).toBeCloseTo(along, 1);
      }),
      few,
    );
  });
});

describe('time at speeds', () => {
  const seconds = ({ spent, stops }: ReturnType<typeof timeAtSpeeds>) =>
    spent.reduce((sum, each) => sum + each.seconds, 0) + stops.reduce((sum, { start, end }) => sum + end - start, 0);

  it('adds up to the whole trip, however it was cut', () => {
    fc.assert(
      fc.property(morning, fc.double({ min: 0, max: 1, noNaN: true }), (parts, share) => {
        const track = recorded(parts);
        const cut = Math.round(share * (track.points.length - 1));
        const whole = seconds(timeAtSpeeds(track));
        expect(whole).toBeCloseTo(track.points.at(-1)!.time - track.points[0]!.time, 6);
        const halves = [track.points.slice(0, cut + 1), track.points.slice(cut)];
        const sum = halves.reduce((total, points) => total + seconds(timeAtSpeeds({ ...track, points })), 0);
        expect(sum).toBeCloseTo(whole, 6);
      }),
      few,
    );
  });
});
