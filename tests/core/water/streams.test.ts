import { describe, expect, it } from 'vitest';
import { HOUR } from '../../../src/core/units/convert.ts';
import { secondsOf } from '../../../src/core/water/clock.ts';
import type { StreamPlace } from '../../../src/core/water/shapes.ts';
import { reachOf, type StreamFound, streamAt, streamTable } from '../../../src/core/water/streams.ts';
import { place, reversing, rotary, tide } from './made-streams.ts';

const highWater = secondsOf(tide.highWater);
const open = () => false;
const spot = { lat: 46, lon: -32 };
/** Degrees of latitude in 1000 m. */
const KM = 1 / 111.1;

function known(found: StreamFound) {
  if (!found.known) throw new Error(found.why);
  return found;
}

function at(places: readonly StreamPlace[], hour: number, courseDeg = 90, of = tide) {
  const table = streamTable(places, of);
  return streamAt(table, reachOf(table, spot, open), { seconds: highWater + hour * HOUR, courseDeg });
}

describe('streamAt', () => {
  const gut = place('The Gut', 46 + KM, -32, reversing(90, 1.2));

  it('lies midway between neaps and springs on a day of a middling range', () => {
    // Springs 1.2, neaps 0.6, range halfway.
    expect(known(at([gut], -3)).stream).toEqual({ setDeg: 90, rate: expect.closeTo(0.9, 9) });
    expect(known(at([gut], 3)).stream).toEqual({ setDeg: 270, rate: expect.closeTo(0.9, 9) });
  });

  it('goes on beyond springs and never below zero at dead neaps', () => {
    expect(known(at([gut], -3, 90, { ...tide, range: 5 })).stream.rate).toBeCloseTo(1.5, 9);
    expect(known(at([gut], -3, 90, { ...tide, range: 0 })).stream.rate).toBe(0);
    expect(known(at([gut], -3, 90, { ...tide, range: 0.5 })).stream.rate).toBeCloseTo(0.15, 9);
  });

  it('runs through slack where it reverses', () => {
    const turning = place('Turning', 46, -32, [
      { setDeg: 90, rate: 0.4 },
      { setDeg: 270, rate: 0.4 },
    ]);
    expect(known(at([{ ...turning, firstHour: 0 }], 0.5)).stream.rate).toBeCloseTo(0, 12);
    expect(known(at([{ ...turning, firstHour: 0 }], 0.25)).stream).toMatchObject({ setDeg: 90 });
    expect(known(at([{ ...turning, firstHour: 0 }], 0.25)).stream.rate).toBeCloseTo(0.15, 9);
  });

  it('keeps its rate while it turns where it is rotary', () => {
    const bay = place('Bay', 46, -32, rotary(1));
    const { stream } = known(at([bay], 0.5));
    expect(stream.rate).toBeCloseTo(0.75, 12);
    expect(stream.setDeg).toBeCloseTo(195, 9);
    // From 330 to 360 over north.
    expect(known(at([bay], 5.5)).stream.setDeg).toBeCloseTo(345, 9);
  });

  it('takes the place that hurts more on the course, and says which and instead of what', () => {
    const with90 = place('Fair', 46 + KM, -32, reversing(90, 1));
    const against = place('Foul', 46 - 1.5 * KM, -32, reversing(270, 1));
    const far = place('Far', 46 + 5 * KM, -32, reversing(270, 3));
    const out = known(at([with90, against, far], -3, 90));
    expect(out).toMatchObject({ place: 'Foul', insteadOf: ['Fair'], stream: { setDeg: 270 } });
    const home = known(at([with90, against, far], -3, 270));
    expect(home).toMatchObject({ place: 'Fair', insteadOf: ['Foul'], stream: { setDeg: 90 } });
  });

  it('is in no doubt about places more than twice as far as the nearest', () => {
    const near = place('Near', 46 + KM, -32, reversing(90, 1));
    const foul = (far: number) => place('Foul', 46 - far * KM, -32, reversing(270, 3));
    expect(known(at([near, foul(2.1)], -3, 90))).toMatchObject({ place: 'Near', insteadOf: [] });
    expect(known(at([near, foul(1.9)], -3, 90))).toMatchObject({ place: 'Foul', insteadOf: ['Near'] });
  });

  it('of a place spread by rule is unknown outside its hours too, however the doubt about the hour would reach in', () => {
    const spread = {
      flood: { setDeg: 90, springs: 1, neaps: 0.5 },
      ebb: { setDeg: 270, springs: 1, neaps: 0.5 },
      turns: 0,
    };
    const guessed = { ...place('Guessed', 46 + KM, -32, reversing(90, 1)), spread };
    expect(at([guessed], 5.9)).toMatchObject({ known: true });
    expect(at([guessed], 6.5)).toMatchObject({ known: false, why: 'outside-hours' });
    expect(at([guessed], -6.5)).toMatchObject({ known: false, why: 'outside-hours' });
  });

  it('never averages a race down with the slack water beside it', () => {
    const race = place('Race', 46 + KM, -32, reversing(270, 3));
    const slack = place('Lee', 46 - KM, -32, reversing(270, 0));
    expect(known(at([race, slack], -3, 90)).stream.rate).toBeCloseTo(2.25, 9);
    // With the race, the boat is not promised it either.
    expect(known(at([race, slack], -3, 270)).stream.rate).toBe(0);
  });

  it('is unknown outside the hours of the table, and says between which it speaks', () => {
    expect(at([gut], 6.01)).toEqual({
      known: false,
      why: 'outside-hours',
      place: 'The Gut',
      from: highWater - 6 * HOUR,
      to: highWater + 6 * HOUR,
    });
    expect(at([gut], 6).known).toBe(true);
    expect(at([gut], -6.01)).toMatchObject({ known: false, why: 'outside-hours' });
  });

  it('is unknown more than 13 hours from the high water it counts from', () => {
    const [from, to] = [highWater - 13 * HOUR, highWater + 13 * HOUR];
    expect(at([gut], 13.1)).toEqual({ known: false, why: 'far-from-high-water', from, to });
    expect(at([gut], -13.1)).toEqual({ known: false, why: 'far-from-high-water', from, to });
    expect(at([gut], 12.9)).toMatchObject({ why: 'outside-hours' });
  });

  it('is unknown when the springs of the tide do not exceed its neaps', () => {
    expect(at([gut], 0, 90, { ...tide, meanNeapRange: 4 })).toEqual({ known: false, why: 'bad-ranges' });
  });
});

describe('reachOf', () => {
  const north = place('North', 46 + KM, -32, reversing(90, 1));
  const south = place('South', 46 - 4 * KM, -32, reversing(90, 2));
  const table = streamTable([south, north], tide);

  it('sees no place across land, however near', () => {
    const landNorth = (_: unknown, to: { lat: number }) => to.lat > 46;
    const reach = reachOf(table, spot, landNorth);
    if (!reach.reached) throw new Error(reach.why);
    expect(reach.near.map(({ today }) => today.place.name)).toEqual(['South']);
    expect(reach.near[0]!.distance).toBeGreaterThan(3950);
    expect(reach.near[0]!.distance).toBeLessThan(4050);
  });

  it('says when every place lies behind land, is too far or does not exist', () => {
    expect(reachOf(table, spot, () => true)).toEqual({ reached: false, why: 'behind-land' });
    expect(reachOf(table, { lat: 47, lon: -32 }, open)).toEqual({ reached: false, why: 'too-far' });
    expect(reachOf(streamTable([], tide), spot, open)).toEqual({ reached: false, why: 'no-places' });
  });
});
