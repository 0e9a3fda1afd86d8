import { createTidePredictor } from '@neaps/tide-predictor';
import { describe, expect, it } from 'vitest';
import haven from '../../../shared/tides/haven.json' with { type: 'json' };
import stations from '../../../shared/tides/stations.json' with { type: 'json' };
import { HOUR } from '../../../src/core/units/convert.ts';
import { DAY, secondsOf } from '../../../src/core/water/clock.ts';
import { harmonicTide, meanRanges } from '../../../src/core/water/harmonic.ts';
import type { TideStation } from '../../../src/core/water/shapes.ts';
import { tideOfDay } from '../../../src/core/water/tide-of-day.ts';

const start = secondsOf('2026-07-01T00:00:00Z');
const month = { from: start, to: start + 30 * DAY };

function tide(station: TideStation, span = month) {
  const found = harmonicTide(station, span);
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

function height(of: ReturnType<typeof tide>, seconds: number): number {
  const found = of.heightAt(seconds);
  if (!found.known) throw new Error(found.why);
  return found.height;
}

describe('harmonicTide', () => {
  it('joins its heights to less than a millimetre of the predictor asked directly', () => {
    const station = stations[0]!;
    const span = { from: start, to: start + DAY };
    const made = tide(station, span);
    const predictor = createTidePredictor(
      station.constituents.map(({ name, amplitude, phaseDeg }) => ({ name, amplitude, phase: phaseDeg })),
      { offset: station.meanLevel },
    );
    // Minute by minute, between the ten minutes at which ours are computed.
    const minutes = { start: new Date(start * 1000), end: new Date((start + DAY) * 1000), timeFidelity: 60 };
    const asked = predictor.getTimelinePrediction(minutes);
    expect(asked.length).toBeGreaterThan(1440);
    for (const { time, level } of asked) {
      expect(Math.abs(height(made, time.getTime() / 1000) - level)).toBeLessThan(0.001);
    }
  });

  it('turns high and low by turns, each a height of its curve and no instant beyond them', () => {
    const made = tide(stations[2]!);
    expect(made.turns.length).toBeGreaterThan(110);
    made.turns.forEach((turn, i) => {
      const before = made.turns[i - 1];
      if (!before) return;
      expect(turn.kind).not.toBe(before.kind);
      expect(Math.abs(height(made, turn.at) - turn.height)).toBeLessThan(0.002);
      const [least, most] = [Math.min(turn.height, before.height), Math.max(turn.height, before.height)];
      for (const share of [0.1, 0.37, 0.5, 0.8]) {
        const between = height(made, before.at + share * (turn.at - before.at));
        expect(between).toBeGreaterThan(least - 0.002);
        expect(between).toBeLessThan(most + 0.002);
      }
    });
  });

  it('has one high water on most days where the tide is daily', () => {
    const galveston = stations.find(({ id }) => id === 'noaa/8771450')!;
    const highs = tide(galveston).turns.filter(({ kind }) => kind === 'high').length;
    expect(highs).toBeLessThan(50);
    expect(highs).toBeGreaterThan(25);
  });

  it('knows nothing outside its span', () => {
    const made = tide(stations[0]!, { from: start, to: start + DAY });
    expect(made.heightAt(start - 1)).toEqual({ known: false, why: 'before-first', until: start });
    expect(made.heightAt(start + DAY + 1)).toEqual({ known: false, why: 'after-last', until: start + DAY });
  });

  it('says which constituent it does not know, and when the span is empty or too long', () => {
    const odd = { ...haven, constituents: [...haven.constituents, { name: 'X99', amplitude: 1, phaseDeg: 0 }] };
    const codes = (station: TideStation, span = month) => {
      const found = harmonicTide(station, span);
      return found.ok ? [] : found.problems.map(({ code, path }) => `${code} ${path}`);
    };
    expect(codes(odd)).toEqual(['unknown-constituent constituents.2.name']);
    const worded = { ...haven, constituents: [{ name: 'constructor', amplitude: 1, phaseDeg: 0 }] };
    expect(codes(worded)).toEqual(['unknown-constituent constituents.0.name']);
    expect(codes({ ...haven, constituents: [] })).toEqual(['no-constituents constituents']);
    expect(codes(haven, { from: start, to: start })).toEqual(['no-span ']);
    expect(codes(haven, { from: start, to: start + 41 * DAY })).toEqual(['span-too-long ']);
  });
});

describe('meanRanges', () => {
  it('has the springs and neaps of the invented haven', () => {
    // Levels of the waters file: springs 4.6 to 0.6 m, neaps 3.55 to 1.65 m.
    const { meanSpringRange, meanNeapRange } = meanRanges(haven);
    expect(meanSpringRange).toBeCloseTo(4.6 - 0.6, 12);
    expect(meanNeapRange).toBeCloseTo(3.55 - 1.65, 12);
    const ranges = tide(haven).turns.flatMap(({ height: h, kind }, i, all) =>
      kind === 'high' && all[i + 1] ? [h - all[i + 1]!.height] : [],
    );
    // Within the 4 % by which the moon's node stretches and shrinks M2.
    expect(Math.abs(Math.max(...ranges) - 4)).toBeLessThan(0.16);
    expect(Math.abs(Math.min(...ranges) - 1.9)).toBeLessThan(0.16);
  });
});

describe('tideOfDay', () => {
  const port = { port: haven.name, ...meanRanges(haven), offset: HOUR };
  const { turns } = tide(haven);

  it('is the nearest high water with the mean of the falls beside it', () => {
    const at = turns.findIndex(({ kind }, i) => kind === 'high' && i > 3);
    const [before, high, after] = [turns[at - 1]!, turns[at]!, turns[at + 1]!];
    const found = tideOfDay(turns, high.at + 2 * HOUR, port)!;
    expect(Math.abs(secondsOf(found.highWater) - high.at)).toBeLessThan(1);
    expect(found.range).toBeCloseTo(high.height - (before.height + after.height) / 2, 9);
    expect(found.highWaterHeight).toBe(high.height);
    expect(found.highWater.endsWith('+01:00')).toBe(true);
  });

  it('is undefined where no high water is known within 13 hours', () => {
    expect(tideOfDay(turns, month.to + 14 * HOUR, port)).toBeUndefined();
    expect(tideOfDay([], start, port)).toBeUndefined();
  });
});
