import { describe, expect, it } from 'vitest';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { choiceOf, speedOf } from '../../../src/components/waypoint-table/planned-speeds.ts';
import { type FieldName, rowEdit } from '../../../src/components/waypoint-table/row-edits.ts';
import { readAddition } from '../../../src/components/waypoint-table/typed-fields.ts';
import { TypedTexts } from '../../../src/components/waypoint-table/typed-texts.ts';
import { legBetween } from '../../../src/core/route/distance.ts';
import type { Waypoint } from '../../../src/core/route/shapes.ts';

const nautical = measuresFor('nautical', 'en');
const slip: Waypoint = { lat: 46, lon: -32, name: 'Slip' };
const buoy: Waypoint = { lat: 46.01, lon: -32, stop: 600 };
const route = [slip, buoy];

function edited(field: FieldName, text: string, index = 1): Waypoint {
  const read = rowEdit(route, { index, field, text }, nautical);
  if (!read.ok) throw new Error(read.problem);
  return read.value.waypoints[index]!;
}

describe('rowEdit', () => {
  it('moves a waypoint to a place, and keeps its stop', () => {
    expect(edited('place', '46.5, -32.5')).toEqual({ lat: 46.5, lon: -32.5, stop: 600 });
  });

  it('turns a leg about its start, at the same length', () => {
    const before = legBetween(slip, buoy).distance;
    const { distance, trackDeg } = legBetween(slip, edited('bearing', '090'));
    expect(trackDeg).toBeCloseTo(90, 2);
    expect(distance).toBeCloseTo(before, 0);
  });

  it('lengthens a leg on the same track', () => {
    const { distance, trackDeg } = legBetween(slip, edited('distance', '2'));
    expect(distance).toBeCloseTo(3704, 0);
    expect(trackDeg).toBeCloseTo(0, 2);
  });

  it('takes away a name or a stop that was emptied', () => {
    expect(edited('name', '  ', 0)).not.toHaveProperty('name');
    expect(edited('stop', '')).not.toHaveProperty('stop');
  });

  it('gives a leg a speed of its own in the units shown', () => {
    expect(edited('speed', '10').speed).toBeCloseTo(5.1444, 4);
  });

  it('says whether it moved or changed a waypoint', () => {
    expect(rowEdit(route, { index: 1, field: 'distance', text: '1' }, nautical)).toMatchObject({
      value: { what: 'moved' },
    });
    expect(rowEdit(route, { index: 1, field: 'stop', text: '1' }, nautical)).toMatchObject({
      value: { what: 'changed' },
    });
  });

  it.each(['place', 'bearing', 'distance', 'stop', 'speed'] as const)(
    'refuses nonsense for a %s with a message',
    (field) => {
      const read = rowEdit(route, { index: 1, field, text: 'soon' }, nautical);
      expect(read).toMatchObject({ ok: false, problem: expect.stringMatching(/^Please/) });
    },
  );
});

describe('readAddition', () => {
  const none = { place: '', bearing: '', distance: '' };

  it('goes by the place where one is typed', () => {
    expect(readAddition({ ...none, place: '46, -32', bearing: '90' }, slip, nautical).at).toEqual({
      lat: 46,
      lon: -32,
    });
  });

  it('goes by bearing and distance from the last waypoint otherwise', () => {
    const { at } = readAddition({ ...none, bearing: '180', distance: '1' }, slip, nautical);
    expect(legBetween(slip, at!).distance).toBeCloseTo(1852, 1);
    expect(at!.lat).toBeLessThan(slip.lat);
  });

  it('says which of the two is missing', () => {
    const { at, problems } = readAddition({ ...none, bearing: '180' }, slip, nautical);
    expect(at).toBeUndefined();
    expect(Object.keys(problems)).toEqual(['distance']);
  });

  it('asks for a place where nothing is typed, or nothing to count from', () => {
    expect(Object.keys(readAddition(none, slip, nautical).problems)).toEqual(['place']);
    expect(Object.keys(readAddition({ ...none, bearing: '1', distance: '1' }, undefined, nautical).problems)).toEqual([
      'place',
    ]);
  });
});

describe('TypedTexts', () => {
  it('keeps what is typed, then what is wrong with it, until it is accepted', () => {
    const texts = new TypedTexts();
    texts.typed(7, 'place', 'the jetty');
    expect(texts.get(7, 'place')).toEqual({ text: 'the jetty' });
    expect(texts.wrong(7)).toBe(false);
    texts.refused(7, 'place', 'Where?');
    expect(texts.get(7, 'place')).toEqual({ text: 'the jetty', problem: 'Where?' });
    expect(texts.wrong(7)).toBe(true);
    texts.accepted(7, 'place');
    expect(texts.get(7, 'place')).toBeUndefined();
    expect(texts.wrong(7)).toBe(false);
  });

  it('asks for a new drawing of that row only, and not while typing', () => {
    const texts = new TypedTexts();
    const before = [texts.version(1), texts.version(2)];
    texts.typed(1, 'stop', '3');
    expect([texts.version(1), texts.version(2)]).toEqual(before);
    texts.refused(1, 'stop', 'No');
    expect(texts.version(1)).not.toBe(before[0]);
    expect(texts.version(2)).toBe(before[1]);
  });
});

describe('planned speeds', () => {
  it('start from the speed of the plan, to half a unit shown', () => {
    expect(speedOf('own', 5.2, nautical)).toBeCloseTo((10 * 1852) / 3600, 9);
    expect(speedOf('own', 0.01, nautical)).toBeCloseTo((0.5 * 1852) / 3600, 9);
  });

  it('are best, best on the plane, one of their own, or the route’s', () => {
    expect([undefined, 'best', 'best-planing', 3].map((speed) => choiceOf(speed as never))).toEqual([
      'as-planned',
      'best',
      'best-planing',
      'own',
    ]);
    expect(speedOf('as-planned', 5, nautical)).toBeUndefined();
    expect(speedOf('best', 5, nautical)).toBe('best');
  });
});
