import { describe, expect, it } from 'vitest';
import { pairPasses } from '../../../src/core/track/pair-passes.ts';
import { passGroup } from '../../../src/core/track/pass-group.ts';
import type { PassGroup } from '../../../src/core/track/shapes.ts';
import { steadyStretches } from '../../../src/core/track/steady-stretches.ts';
import { MORNING, type Part, pass, type Recording, recorded } from './made-tracks.ts';

/** Out and back at each speed through the water along a line heading 80, in a stream with the way out. */
function outAndBack(speeds: readonly number[], stream: number): Part[] {
  return speeds.flatMap((speed) => [
    { seconds: 90, speed: speed + stream, headingDeg: 80 },
    { seconds: 25, speed: 3, headingDeg: 170 },
    { seconds: 90, speed: speed - stream, headingDeg: 260 },
    { seconds: 25, speed: 3, headingDeg: 350 },
  ]);
}

function paired(parts: readonly Part[], recording?: Recording) {
  return pairPasses(steadyStretches(recorded(parts, recording)));
}

const counts = (groups: readonly PassGroup[]) => groups.map(({ passes }) => passes.length);

describe('pairPasses', () => {
  it('finds a pair for every throttle step, its speed through still water and the stream', () => {
    const steps = [3, 4, 5, 6.5, 8, 9.5];
    for (const noise of [0, 1.2]) {
      const { groups, alone } = paired(outAndBack(steps, 0.6), { noise });
      expect(counts(groups)).toEqual([2, 2, 2, 2, 2, 2]);
      expect(alone).toEqual([]);
      groups.forEach(({ speed, deviation, stream, headingDeg }, at) => {
        expect(Math.abs(speed - steps[at]!)).toBeLessThan(Math.max(0.01, 3 * deviation));
        expect(Math.abs(stream.along - 0.6)).toBeLessThan(Math.max(0.01, 3 * stream.deviation));
        expect(Math.abs(headingDeg - 80)).toBeLessThan(2);
      });
    }
  });

  it('takes four passes at one setting together, and the next setting by itself', () => {
    const { groups } = paired(outAndBack([6, 6, 8], 0.5), { noise: 1 });
    expect(counts(groups)).toEqual([4, 2]);
    expect(groups[0]!.passes.map(({ weight }) => weight)).toEqual([0.125, 0.375, 0.375, 0.125]);
    expect(groups[0]!.deviation).toBeLessThan(groups[1]!.deviation);
  });

  it('tells groups by when their first pass began, though one is ended within another', () => {
    const parts: Part[] = [
      { seconds: 90, speed: 6, headingDeg: 80 },
      { seconds: 40, speed: 2, headingDeg: 170 },
      { seconds: 90, speed: 6, headingDeg: 170 },
      { seconds: 40, speed: 2, headingDeg: 260 },
      { seconds: 90, speed: 6, headingDeg: 350 },
      { seconds: 40, speed: 2, headingDeg: 300 },
      { seconds: 90, speed: 6, headingDeg: 260 },
    ];
    const { groups, alone } = paired(parts);
    expect(alone).toEqual([]);
    expect(groups.map(({ passes }) => passes.map(({ stretch }) => Math.round(stretch.headingDeg / 10) * 10))).toEqual([
      [80, 260],
      [170, 350],
    ]);
  });

  it('leaves over the way to the trial ground, though it lies on the same line', () => {
    const transit: Part[] = [
      { seconds: 90, speed: 8, headingDeg: 260 },
      { seconds: 25, speed: 3, headingDeg: 0 },
    ];
    const { groups, alone } = paired([...transit, ...outAndBack([6, 8, 10], 0.5)]);
    expect(groups.map(({ speed }) => Math.round(speed * 10) / 10)).toEqual([6, 8, 10]);
    expect(alone.map(({ start }) => start < MORNING + 90)).toEqual([true]);
  });

  it('makes no pair of courses across, of passes far apart or long after one another', () => {
    const across: Part[] = [
      { seconds: 90, speed: 6, headingDeg: 80 },
      { seconds: 90, speed: 6, headingDeg: 170 },
    ];
    expect(paired(across).groups).toEqual([]);
    const away: Part[] = [
      { seconds: 90, speed: 6, headingDeg: 80 },
      { seconds: 400, speed: 7, headingDeg: 170 },
      { seconds: 90, speed: 6, headingDeg: 260 },
    ];
    expect(paired(away).groups).toEqual([]);
    const later: Part[] = [
      { seconds: 90, speed: 6, headingDeg: 80 },
      { seconds: 1800, speed: 0, headingDeg: 80 },
      { seconds: 90, speed: 6, headingDeg: 260 },
    ];
    expect(paired(later).groups).toEqual([]);
  });

  it('makes no pair of a fast pass and a slow one that only a race of a stream could explain', () => {
    const unlike: Part[] = [
      { seconds: 90, speed: 10, headingDeg: 80 },
      { seconds: 90, speed: 4, headingDeg: 260 },
    ];
    const { groups, alone } = paired(unlike);
    expect(groups).toEqual([]);
    expect(alone.length).toBe(2);
  });

  it('pairs passes from two recordings of the same morning', () => {
    const [out, back] = [outAndBack([7], 0.3).slice(0, 1), outAndBack([7], 0.3).slice(2, 3)];
    const first = steadyStretches(recorded(out));
    const second = steadyStretches(recorded(back, { start: MORNING + 300, from: first[0]!.finish }));
    const { groups } = pairPasses([...second, ...first]);
    expect(counts(groups)).toEqual([2]);
    expect(groups[0]!.speed).toBeCloseTo(7, 2);
  });

  const byTurns = (...speeds: number[]) =>
    speeds.map((speed, at) => pass(100 * at, 60, { speed, headingDeg: at % 2 === 0 ? 80 : 260 }));

  it('makes no pair of two passes the same way', () => {
    const { groups, alone } = pairPasses([pass(0, 60), pass(120, 60)]);
    expect(groups).toEqual([]);
    expect(alone.map(({ start }) => start - MORNING)).toEqual([0, 120]);
  });

  it('takes two fifths of the speed for a stream, up to 2.5 m/s, and more for two throttle settings', () => {
    const pairs = (out: number, back: number) => pairPasses(byTurns(out, back)).groups.length;
    expect([pairs(6.9, 3.1), pairs(3.1, 6.9)]).toEqual([1, 1]);
    expect([pairs(7.1, 2.9), pairs(2.9, 7.1)]).toEqual([0, 0]);
    expect([pairs(10.4, 5.6), pairs(10.6, 5.4)]).toEqual([1, 0]);
  });

  it('takes passes the same way that differ by little as one setting, by more as two', () => {
    // Out, back, out: three as one cost (d / unlike)^2 more, two and one left over 0.4 and the stream they ask for.
    const grouped = (speed: number, d: number) => counts(pairPasses(byTurns(speed + d, speed, speed - d)).groups);
    expect([grouped(6, 0.31), grouped(6, 0.316)]).toEqual([[3], [2]]);
    expect([grouped(3, 0.262), grouped(3, 0.27)]).toEqual([[3], [2]]);
    expect([grouped(6, -0.31), grouped(6, -0.316)]).toEqual([[3], [2]]);
  });

  it('takes two pairs for one of four where a group less is worth the scatter', () => {
    const grouped = (d: number) => counts(pairPasses(byTurns(6 + d, 6 + d, 6 - d, 6 - d)).groups);
    expect([grouped(0.115), grouped(0.121)]).toEqual([[4], [2, 2]]);
  });

  it('of a pass that fits two others takes the pair that needs the stream of the rest of the line', () => {
    for (const speeds of [
      [10.3, 9.7, 6.3, 5.7, 3.3, 2.7, 2.7],
      // Against the first way.
      [9.7, 10.3, 5.7, 6.3, 2.7, 3.3, 3.3],
    ]) {
      const { groups, alone } = pairPasses(byTurns(...speeds));
      expect(counts(groups)).toEqual([2, 2, 2]);
      expect(groups[2]!.speed).toBeCloseTo(3, 9);
      expect(alone.map(({ start }) => start - MORNING)).toEqual([600]);
    }
    // Of two groups both are heard alike, whichever way was sailed first.
    const left = (passes: ReturnType<typeof byTurns>) => pairPasses(passes).alone.map(({ start }) => start - MORNING);
    const before = pass(-100, 60, { speed: 20, headingDeg: 260 });
    for (const speeds of [
      [10.3, 9.7, 3.3, 2.7, 2.7],
      [9.7, 10.3, 2.7, 3.3, 3.3],
    ]) {
      const passes = byTurns(...speeds);
      expect(left([before, ...passes])).toEqual([-100, ...left(passes)]);
    }
    // With nothing else on the line the least stream is likeliest.
    const { groups, alone } = pairPasses(byTurns(3.3, 2.7, 2.7));
    expect(groups[0]!.speed).toBeCloseTo(2.7, 9);
    expect(alone.map(({ start }) => start - MORNING)).toEqual([0]);
  });

  it('tells groups in order of time where another line was sailed between them', () => {
    const found = pairPasses([
      ...[0, 100].map((start, at) => pass(start, 60, { headingDeg: 80 + 180 * at })),
      ...[200, 300].map((start, at) => pass(start, 60, { headingDeg: 170 + 180 * at })),
      ...[400, 500].map((start, at) => pass(start, 60, { speed: 8, headingDeg: 80 + 180 * at })),
    ]);
    expect(found.groups.map(({ passes }) => passes[0]!.stretch.start - MORNING)).toEqual([0, 200, 400]);
  });

  it('tells at most twelve passes as one group', () => {
    expect(counts(pairPasses(byTurns(...Array(12).fill(6))).groups)).toEqual([12]);
    const fourteen = counts(pairPasses(byTurns(...Array(14).fill(6))).groups);
    expect(fourteen.length).toBe(2);
    expect(fourteen.reduce((sum, count) => sum + count, 0)).toBe(14);
    expect(Math.max(...fourteen)).toBeLessThanOrEqual(12);
  });

  it('tells groups and passes alone in order of time, though lines cross', () => {
    const across = [pass(150, 60, { headingDeg: 170 }), pass(650, 60, { headingDeg: 350 })];
    const found = pairPasses([
      ...across,
      ...[0, 300, 900].map((start, at) => pass(start, 60, { headingDeg: at === 1 ? 260 : 80 })),
    ]);
    const starts = found.groups.map(({ passes }) => passes[0]!.stretch.start - MORNING);
    expect(starts).toEqual([0, 150]);
    expect(counts(found.groups)).toEqual([3, 2]);
    const apart = pairPasses([pass(500, 60), pass(0, 60), pass(250, 60, { headingDeg: 170 })]);
    expect(apart.alone.map(({ start }) => start - MORNING)).toEqual([0, 250, 500]);
  });

  it('says nothing of nothing', () => {
    expect(pairPasses([])).toEqual({ groups: [], alone: [] });
  });
});

describe('passGroup', () => {
  const stretches = steadyStretches(recorded(outAndBack([6, 6, 6], 0.4)));

  it('flags the one pass that was sailed at another throttle setting', () => {
    const group = passGroup(stretches.map((each, at) => (at === 2 ? { ...each, speed: each.speed + 0.6 } : each)))!;
    expect(group.passes.map(({ odd }) => odd)).toEqual([false, false, true, false, false, false]);
    expect(group.passes[2]!.residual).toBeCloseTo(0.6, 1);
    expect(passGroup(stretches)!.passes.some(({ odd }) => odd)).toBe(false);
  });

  it('is surer with more passes, and less sure where they scatter', () => {
    const [two, four, six] = [2, 4, 6].map((count) => passGroup(stretches.slice(0, count))!.deviation);
    expect(two!).toBeGreaterThan(four!);
    expect(four!).toBeGreaterThan(six!);
    const scattered = stretches.map((each, at) => ({ ...each, speed: each.speed + (at % 3) * 0.1 }));
    expect(passGroup(scattered)!.deviation).toBeGreaterThan(six!);
  });

  it('needs a pass each way', () => {
    expect(passGroup([])).toBeUndefined();
    expect(passGroup(stretches.slice(0, 1))).toBeUndefined();
    expect(passGroup([stretches[0]!, stretches[2]!])).toBeUndefined();
  });
});
