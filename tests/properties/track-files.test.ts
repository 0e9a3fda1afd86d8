import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { craftFrom } from '../../src/core/files/catalogue.ts';
import { readGpx } from '../../src/core/files/gpx.ts';
import { gpxOfTracks } from '../../src/core/files/gpx-writer.ts';
import { runsFromTable } from '../../src/core/files/runs-table.ts';
import { runsTable } from '../../src/core/files/runs-table-writer.ts';
import { tableColumns } from '../../src/core/files/table-columns.ts';
import { textOfBytes } from '../../src/core/files/text-of-bytes.ts';
import type { Load } from '../../src/core/load/shapes.ts';
import { cleanTrack } from '../../src/core/track/clean-track.ts';
import type { Track } from '../../src/core/track/shapes.ts';
import { steadyStretches } from '../../src/core/track/steady-stretches.ts';
import { timeAtSpeeds } from '../../src/core/track/time-at-speeds.ts';
import type { Run } from '../../src/core/trials/shapes.ts';

const runs = { seed: 29, numRuns: 200 };
const NOW = 1.8e9;

const degrees = (most: number) => fc.integer({ min: -most * 1e7, max: most * 1e7 }).map((figure) => figure / 1e7);
const name = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 30 })
  .map((text) => text.replace(/[\p{Cc}\p{Cf}\s]/gu, '').slice(0, 60) || 'x');
const track: fc.Arbitrary<Track> = fc
  .record({
    name,
    steps: fc.array(fc.tuple(fc.integer({ min: 1, max: 4000 }), degrees(90), degrees(180)), {
      minLength: 1,
      maxLength: 30,
    }),
  })
  .map(({ name, steps }) => {
    let time = 1.7e9;
    const points = steps.map(([step, lat, lon]) => {
      time += step / 8;
      return { time, lat, lon };
    });
    return { name, points, breaks: points.length > 4 ? [3] : [] };
  });

describe('GPX', () => {
  it('reads back as it was written', () => {
    fc.assert(
      fc.property(fc.array(track, { minLength: 1, maxLength: 3 }), (tracks) => {
        expect(readGpx(gpxOfTracks(tracks), NOW)).toEqual({ ok: true, value: { tracks, notes: [] } });
      }),
      runs,
    );
  });

  it('is read or refused with a reason, whatever was done to the file; what is read can be worked with', () => {
    const damage = fc.record({
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      drop: fc.nat(40),
      put: fc.string({ maxLength: 8 }),
    });
    fc.assert(
      fc.property(track, fc.array(damage, { maxLength: 4 }), (whole, hits) => {
        let text = gpxOfTracks([whole]);
        for (const { at, drop, put } of hits) {
          const place = Math.floor(at * text.length);
          text = text.slice(0, place) + put + text.slice(place + drop);
        }
        const result = readGpx(text, NOW);
        if (!result.ok) {
          expect(result.problems[0]!.message).not.toBe('');
          return;
        }
        for (const each of result.value.tracks) {
          const clean = cleanTrack(each).track;
          expect(clean.points.length).toBeLessThanOrEqual(each.points.length);
          for (const { speed, deviation } of steadyStretches(clean)) {
            expect(Number.isFinite(speed) && Number.isFinite(deviation)).toBe(true);
          }
          for (const { speed, seconds } of timeAtSpeeds(clean).spent) {
            expect(speed >= 0 && seconds > 0).toBe(true);
          }
        }
      }),
      runs,
    );
  });

  it('takes any bytes for some text', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const text = textOfBytes(bytes);
        expect(readGpx(text, NOW).ok).toBe(false);
        tableColumns(text);
      }),
      runs,
    );
  });
});

const { drive, store } = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const motor = craftFrom('flat-floor-2-7', 'electric-1-1kw', 'battery-1-0-nmc');
const setups = [
  { id: 'p', drive, store },
  { id: 'e', drive: motor.drive, store: motor.store },
];
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const note = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 40 })
  .map((text) => text.trim().replace(/^['\-.?]+/, '') || 'x');
const id = fc
  .string({ unit: fc.constantFrom(...'abcXYZ-_;" ,@#/\\9'), minLength: 1, maxLength: 8 })
  .map((text) => `i${text.trim()}`);
const item = fc.record(
  {
    id,
    kind: fc.constantFrom('adult', 'child', 'dog', 'gear'),
    mass: between(1, 200),
    name: note,
    station: id,
    at: fc.record({ x: between(-1, 4), y: between(-1, 1), z: between(0, 1) }, { requiredKeys: ['x', 'y'] }),
    helm: fc.constant(true),
  },
  { requiredKeys: ['id', 'kind', 'mass'] },
);
const load: fc.Arbitrary<Load> = fc.record(
  { items: fc.uniqueArray(item, { maxLength: 4, selector: ({ id }) => id }), fill: between(0, 1) },
  { requiredKeys: ['items'] },
);
const run: fc.Arbitrary<Run> = fc
  .record(
    {
      id,
      setup: fc.constantFrom('p', 'e'),
      load,
      passes: fc.array(fc.record({ over: between(0.1, 30), way: fc.constantFrom('out', 'back') }), {
        minLength: 1,
        maxLength: 5,
      }),
      day: fc.constantFrom('2026-07-15', '2024-02-29'),
      stream: between(-3, 3),
      rpm: between(400, 9000),
      fullThrottle: fc.constant(true),
      reading: fc.record({ kind: fc.constantFrom('rate', 'amount'), size: between(0.1, 1), seconds: between(5, 5000) }),
      consumedError: between(0.01, 0.3),
      wind: fc.record({ speed: between(0, 20), offBowDeg: between(0, 360) }),
      waveHeight: between(0, 2),
      leftOut: fc.constant(true),
      note,
    },
    { requiredKeys: ['id', 'setup', 'load', 'passes'] },
  )
  .map(({ reading, ...rest }) => {
    if (!reading) return rest as Run;
    const { kind, size, seconds } = reading;
    const petrol = rest.setup === 'p';
    const consumed =
      kind === 'rate'
        ? { kind, rate: size * (petrol ? 0.002 : 3000) }
        : { kind, amount: size * (petrol ? 5 : 3e6), seconds };
    return { ...rest, consumed } as Run;
  });

describe('a table of runs', () => {
  const context = {
    setups: setups.map(({ id, drive }) => ({ id, name: drive.name, kind: drive.kind })),
    load: { items: [] },
    taken: [],
  };

  it('reads back to the same runs, whatever was noted and whoever was aboard', () => {
    fc.assert(
      fc.property(fc.uniqueArray(run, { minLength: 1, maxLength: 4, selector: ({ id }) => id }), (made) => {
        const table = tableColumns(runsTable({ setups, runs: made }));
        if (!table.ok) throw new Error(table.problems[0]!.message);
        const mapping = table.value.columns.map(({ meaning, unit }) => meaning && { meaning, ...(unit && { unit }) });
        const { runs: found, problems } = runsFromTable(table.value, mapping, context);
        expect(problems).toEqual([]);
        expect(rounded(found)).toEqual(rounded(made));
      }),
      runs,
    );
  });

  it('is read or refused, whatever it holds', () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 8 }),
      between(-1e9, 1e9).map(String),
      fc.constantFrom('', '5,5', '1e999', '=1+1', '٣'),
    );
    const head = fc.constantFrom(
      'Speed kn',
      'Out',
      'Back',
      'RPM',
      'Fuel L/h',
      'A',
      'V',
      'Load kg',
      'Aboard',
      'Date',
      'Wind Bft',
      '"',
      '',
    );
    fc.assert(
      fc.property(
        fc.array(head, { maxLength: 8 }),
        fc.array(fc.array(cell, { maxLength: 9 }), { maxLength: 6 }),
        (heads, rows) => {
          const table = tableColumns([heads, ...rows].map((cells) => cells.join(',')).join('\n'));
          if (!table.ok) return;
          const mapping = table.value.columns.map(({ meaning, unit }) => meaning && { meaning, ...(unit && { unit }) });
          for (const { passes } of runsFromTable(table.value, mapping, context).runs) {
            expect(passes.length).toBeGreaterThan(0);
            for (const { over } of passes) expect(over > 0 && over <= 40).toBe(true);
          }
        },
      ),
      runs,
    );
  });
});

/** Figures to nine places, as text: what is written has fourteen. */
function rounded(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, inner) => (typeof inner === 'number' ? Number(inner.toPrecision(9)) : inner)),
  );
}
