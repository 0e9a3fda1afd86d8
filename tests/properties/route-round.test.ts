import booleanPointInPolygon from '@turf/boolean-point-in-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { interpolate, legBetween } from '../../src/core/route/distance.ts';
import type { LatLon, ZoneFeature, ZoneKind } from '../../src/core/route/shapes.ts';
import { type RoundTrack, takeRound } from '../../src/core/route/take-round.ts';
import { prepareWaters } from '../../src/core/route/waters.ts';
import { waters, zone } from '../core/route/made-waters.ts';

type Ring = [number, number][];

/** Ragged islands in a box of 0.1 degrees; kinds that a track is taken round. */
const KNOWN: [number, number, number, number] = [-32, 46, -31.9, 46.1];
const within = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const island = fc
  .tuple(
    fc.constantFrom<ZoneKind[]>('land', 'land', 'keep-out', 'shoal'),
    fc.tuple(within(-31.985, -31.915), within(46.015, 46.085)),
    fc.array(within(0.002, 0.014), { minLength: 3, maxLength: 30 }),
  )
  .map(([kind, [x, y], radii]) => {
    const ring = radii.map((radius, at): [number, number] => {
      const angle = (at / radii.length) * 2 * Math.PI;
      return [x + radius * Math.cos(angle), y + 0.7 * radius * Math.sin(angle)];
    });
    return zone({ kind, name: `${kind} ${x}` }, [...ring, ring[0]!]);
  });
const place = fc.tuple(within(-31.999, -31.901), within(46.001, 46.099)).map(([lon, lat]): LatLon => ({ lon, lat }));
const scene = fc.record({
  zones: fc.array(island, { minLength: 1, maxLength: 8 }),
  from: place,
  to: place,
  clearance: fc.constantFrom(10, 30, 100),
});

interface Scene {
  readonly zones: readonly ZoneFeature[];
  readonly from: LatLon;
  readonly to: LatLon;
  readonly clearance: number;
}

function found({ zones, from, to, clearance }: Scene): RoundTrack | undefined {
  const read = takeRound(prepareWaters(waters([...zones], KNOWN)), from, to, { clearance });
  return read.ok ? read.value : undefined;
}

/** Places all along a track, every few metres. */
function along({ from, to }: Scene, { via }: RoundTrack): LatLon[] {
  const points = [from, ...via, to];
  return points.slice(1).flatMap((end, i) => {
    const start = points[i]!;
    const pieces = Math.ceil(legBetween(start, end).distance / 8);
    return Array.from({ length: pieces + 1 }, (_, k) => interpolate(start, end, k / Math.max(pieces, 1)));
  });
}

/** Plain distance, m, from the nearest edge: every edge is looked at. */
function fromEdges(zones: readonly ZoneFeature[], at: LatLon): number {
  const kx = legBetween({ lat: at.lat, lon: 0 }, { lat: at.lat, lon: 0.01 }).distance * 100;
  const ky = legBetween({ lat: at.lat - 0.005, lon: 0 }, { lat: at.lat + 0.005, lon: 0 }).distance * 100;
  let nearest = Infinity;
  for (const { geometry } of zones) {
    const ring = geometry.coordinates[0] as Ring;
    for (let i = 1; i < ring.length; i++) {
      const ax = (ring[i - 1]![0] - at.lon) * kx;
      const ay = (ring[i - 1]![1] - at.lat) * ky;
      const sx = (ring[i]![0] - at.lon) * kx - ax;
      const sy = (ring[i]![1] - at.lat) * ky - ay;
      const share = Math.min(1, Math.max(0, -(ax * sx + ay * sy) / (sx * sx + sy * sy)));
      nearest = Math.min(nearest, Math.hypot(ax + share * sx, ay + share * sy));
    }
  }
  return nearest;
}

describe('takeRound', () => {
  it('never crosses land or a keep-out, wherever islands lie', () => {
    fc.assert(
      fc.property(scene, (made) => {
        const track = found(made);
        if (!track) return;
        const hard = made.zones.filter(({ properties }) => properties.kind !== 'shoal');
        for (const { lat, lon } of along(made, track)) {
          expect(hard.some((shape) => booleanPointInPolygon([lon, lat], shape))).toBe(false);
        }
      }),
      { seed: 21, numRuns: 120 },
    );
  });

  it('keeps the clearance beyond what the ends themselves do not allow, and never less than it says', () => {
    fc.assert(
      fc.property(scene, (made) => {
        const track = found(made);
        if (!track || track.shoals.length > 0) return;
        const ends = [made.from, made.to].map((end) => ({ end, room: fromEdges(made.zones, end) }));
        for (const at of along(made, track)) {
          const room = fromEdges(made.zones, at);
          expect(room).toBeGreaterThan(track.kept - 0.5);
          const excused = ends.some(
            ({ end, room }) => room < made.clearance && legBetween(end, at).distance < 2 * made.clearance + 1,
          );
          if (track.clear && !excused) expect(room).toBeGreaterThan(made.clearance - 0.5);
        }
      }),
      { seed: 22, numRuns: 120 },
    );
  });

  it('is never shorter than the straight leg, and is that where the leg is clear', () => {
    fc.assert(
      fc.property(scene, (made) => {
        const track = found(made);
        if (!track) return;
        const straight = legBetween(made.from, made.to).distance;
        expect(track.distance).toBeGreaterThan(straight * (1 - 1e-6));
        const room = Math.min(...along(made, { ...track, via: [] }).map((at) => fromEdges(made.zones, at)));
        if (room > made.clearance + 1) expect(track.via).toEqual([]);
      }),
      { seed: 23, numRuns: 100 },
    );
  });

  it('is as long the other way, and in mirrored waters', () => {
    const flipped = ({ lat, lon }: LatLon) => ({ lat, lon: -63.9 - lon });
    const turned = (file: readonly ZoneFeature[]) =>
      file.map((shape) => ({
        ...shape,
        geometry: {
          type: 'Polygon' as const,
          coordinates: (shape.geometry.coordinates as Ring[]).map((ring) =>
            ring.map(([lon, lat]): [number, number] => [-63.9 - lon, lat]),
          ),
        },
      }));
    fc.assert(
      fc.property(scene, (made) => {
        const track = found(made);
        const back = found({ ...made, from: made.to, to: made.from });
        const mirrored = found({ ...made, zones: turned(made.zones), from: flipped(made.from), to: flipped(made.to) });
        expect([back === undefined, mirrored === undefined]).toEqual([track === undefined, track === undefined]);
        if (!track?.clear) return;
        expect(back!.distance / track.distance).toBeCloseTo(1, 5);
        expect(mirrored!.distance / track.distance).toBeCloseTo(1, 5);
      }),
      { seed: 24, numRuns: 80 },
    );
  });

  it('is no shorter with one island more', () => {
    fc.assert(
      fc.property(scene, ({ zones, ...rest }) => {
        const all = found({ ...rest, zones });
        const fewer = found({ ...rest, zones: zones.slice(1) });
        if (!all?.clear || !fewer?.clear) return;
        // Ends nearer to the added shore than the clearance are asked for less.
        expect(fewer.distance).toBeLessThan(all.distance * 1.01 + rest.clearance);
      }),
      { seed: 25, numRuns: 120 },
    );
  });
});
