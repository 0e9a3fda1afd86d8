import { describe, expect, it } from 'vitest';
import { measuresFor } from '../../../src/components/units/measures.ts';
import {
  legFrom,
  placeForRow,
  readBearing,
  readDistance,
  readPlace,
  readSpeed,
  readStop,
} from '../../../src/components/waypoint-table/typed-fields.ts';
import { legBetween } from '../../../src/core/route/distance.ts';

const nautical = measuresFor('nautical', 'en');
const german = measuresFor('metric', 'de');

describe('what is typed in the table', () => {
  it('takes a pasted pair in degrees and minutes or in decimals', () => {
    expect(readPlace("46°01.5'N 031°59.4'W")).toEqual({ ok: true, value: { lat: 46.025, lon: -31.99 } });
    expect(readPlace('46.025, -31.99')).toEqual({ ok: true, value: { lat: 46.025, lon: -31.99 } });
  });

  it('says what is wrong with a place, and refuses the poles', () => {
    expect(readPlace('the jetty')).toMatchObject({ ok: false, problem: expect.stringContaining('latitude') });
    expect(readPlace('88, 10')).toMatchObject({ ok: false, problem: expect.stringContaining('85 degrees') });
  });

  it('takes bearings from 0 to 360 with or without a degree sign', () => {
    expect(readBearing('085°', nautical)).toEqual({ ok: true, value: 85 });
    expect(readBearing('361', nautical).ok).toBe(false);
    expect(readBearing('-1', nautical).ok).toBe(false);
  });

  it('takes distances in the units and the figures of the page', () => {
    expect(readDistance('2', nautical)).toEqual({ ok: true, value: 3704 });
    expect(readDistance('1,5', german)).toEqual({ ok: true, value: 1500 });
    expect(readDistance('-1', nautical).ok).toBe(false);
    expect(readDistance('99999', nautical).ok).toBe(false);
  });

  it('counts an empty stop, and one of no minutes, as none', () => {
    expect(readStop(' ', nautical)).toEqual({ ok: true, value: undefined });
    expect(readStop('0', nautical)).toEqual({ ok: true, value: undefined });
    expect(readStop('30', nautical)).toEqual({ ok: true, value: 1800 });
    expect(readStop('-5', nautical).ok).toBe(false);
  });

  it('refuses to stand still, and speeds of no boat', () => {
    expect(readSpeed('0', nautical).ok).toBe(false);
    expect(readSpeed('500', nautical).ok).toBe(false);
    expect(readSpeed('10', nautical)).toMatchObject({ ok: true, value: expect.closeTo(5.1444, 4) });
  });
});

describe('placeForRow', () => {
  const slip = { lat: 46, lon: -32 };

  it('puts a second waypoint one mile north of an only one', () => {
    const at = placeForRow({ shape: 'one-way', waypoints: [slip], speed: 'best' }, 1, nautical)!;
    const { distance, trackDeg } = legBetween(slip, at);
    expect(distance).toBeCloseTo(1852, 1);
    expect(trackDeg).toBeCloseTo(0, 6);
  });

  it('knows no place on a route without any', () => {
    expect(placeForRow({ shape: 'one-way', waypoints: [], speed: 'best' }, 0, nautical)).toBeUndefined();
  });
});

describe('legFrom', () => {
  it('lays no leg to where none can be laid', () => {
    expect(legFrom(undefined, { lat: 46, lon: 0 })).toBeUndefined();
    expect(legFrom({ lat: 46, lon: 0 }, { lat: 89, lon: 0 })).toBeUndefined();
  });
});
