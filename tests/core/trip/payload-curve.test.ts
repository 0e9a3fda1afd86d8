import { describe, expect, it } from 'vitest';
import {
  type PayloadPoint,
  payloadOverLength,
  payloadOverSpeed,
  payloadStretches,
  tripLength,
} from '../../../src/core/trip/payload-curve.ts';
import { haven, planOf, soundTrip } from '../../trips.ts';

const trip = soundTrip();

describe('the payload over the length of a trip', () => {
  it('at its own length is that of the plan', () => {
    const length = tripLength(trip, haven());
    const [point, ...more] = [...payloadOverLength(trip, haven(), [length])];
    expect(more).toEqual([]);
    expect(point!.at).toBe(length);
    expect(point!.payload.binds).toBe(planOf(trip).payload.binds);
    expect(point!.payload.extra).toBeCloseTo(planOf(trip).payload.extra!, 9);
    const { legs } = planOf(trip);
    expect(length).toBeCloseTo(
      legs.reduce((sum, leg) => sum + leg.distance, 0),
      6,
    );
  });

  it('only falls with it, and ends bound by the reserve', () => {
    const points = [...payloadOverLength(trip, haven(), [2e3, 2e4, 4e4, 8e4])];
    for (let i = 1; i < points.length; i++) {
      expect(points[i]!.payload.extra!).toBeLessThanOrEqual(points[i - 1]!.payload.extra! + 0.5);
    }
    expect(points.at(-1)!.payload.binds).toBe('reserve');
  });
});

describe('the payload over speed', () => {
  it('at a speed is that of the trip planned at it, and told to plane where the boat does', () => {
    const points = [...payloadOverSpeed(trip, haven(), [2, 8])];
    expect(points.map(({ at, planes }) => [at, planes])).toEqual([
      [2, false],
      [8, true],
    ]);
    for (const { at, payload, planes, dropsOff } of points) {
      const planned = planOf({ ...trip, route: { ...trip.route, speed: at } }).payload;
      expect(payload.extra).toBeCloseTo(planned.extra!, 9);
      expect(dropsOff).toBe(planes && payload.binds === 'planing');
    }
  });
});

describe('the stretches of a curve', () => {
  const point = (at: number, binds: PayloadPoint['payload']['binds'], dropsOff = false) =>
    ({ at, payload: { binds }, dropsOff, planes: dropsOff }) as PayloadPoint;

  it('hand over half way between two points, and begin and end with the curve', () => {
    expect(payloadStretches([point(2, 'plate'), point(4, 'plate'), point(8, 'speed'), point(10, 'reserve')])).toEqual([
      { from: 2, to: 6, binds: 'plate', dropsOff: false },
      { from: 6, to: 9, binds: 'speed', dropsOff: false },
      { from: 9, to: 10, binds: 'reserve', dropsOff: false },
    ]);
    expect(payloadStretches([])).toEqual([]);
  });

  it('are two where the boat begins to drop off the plane', () => {
    expect(payloadStretches([point(2, 'planing'), point(4, 'planing', true)])).toEqual([
      { from: 2, to: 3, binds: 'planing', dropsOff: false },
      { from: 3, to: 4, binds: 'planing', dropsOff: true },
    ]);
  });
});
