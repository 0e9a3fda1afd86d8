import { describe, expect, it } from 'vitest';
import {
  draftOf,
  draftOfTable,
  newDraft,
  type PlaceDraft,
  readPlace,
  redrafted,
} from '../../../src/components/conditions-form/place-draft.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { KNOT } from '../../../src/core/units/convert.ts';
import { spreadStream } from '../../../src/core/water/spread-stream.ts';
import { place, reversing } from '../../core/water/made-streams.ts';

const nautical = measuresFor('nautical', 'en');
const none: ReadonlySet<string> = new Set();

function typed(draft: PlaceDraft, hours: Record<number, string>): PlaceDraft {
  return {
    ...draft,
    hours: draft.hours.map((row) => {
      const [set = '', springs = '', neaps = ''] = hours[row.hour]?.split(' ') ?? [];
      return { ...row, set, springs, neaps };
    }),
  };
}

const sill: PlaceDraft = { ...newDraft(1), name: ' The Sill ', position: '46°01.6′N 31°59.4′W' };

describe('a stream place as it is typed', () => {
  it('is whole with a name, a position and hours one after the other', () => {
    const { place: read, faults } = readPlace(
      typed(sill, { [-1]: '60 1.2 0.6', 0: ' 0 0', 1: 'wsw 2 1' }),
      none,
      nautical,
    );
    expect(faults).toEqual({});
    expect(read).toMatchObject({ name: 'The Sill', firstHour: -1, lat: expect.closeTo(46.02667, 4) });
    expect(read!.springs.map(({ rate }) => rate / KNOT)).toEqual([1.2, 0, 2].map((rate) => expect.closeTo(rate, 9)));
    expect(read!.neaps[2]).toEqual({ setDeg: 247.5, rate: expect.closeTo(KNOT, 9) });
  });

  it.each([
    [{ ...sill, name: ' ' }, { 0: '60 1 0.5' }, { name: 'no-name' }],
    [{ ...sill, name: 'Taken' }, { 0: '60 1 0.5' }, { name: 'same-name' }],
    [{ ...sill, position: '46' }, { 0: '60 1 0.5' }, { position: 'no-place' }],
    [{ ...sill, position: '89.9, 10' }, { 0: '60 1 0.5' }, { position: 'far-north' }],
    [sill, {}, { hours: 'no-hours' }],
    [sill, { 0: '60 1 0.5', 2: '60 1 0.5' }, { hours: 'gap' }],
    [sill, { 0: '400 1 0.5' }, { '0 set': 'no-set' }],
    [sill, { 0: ' 1 0.5' }, { '0 set': 'no-set' }],
    [sill, { 0: '60 1' }, { '0 neaps': 'no-rate' }],
    [sill, { 0: '60 -1 0.5' }, { '0 springs': 'no-rate' }],
    [sill, { 0: '60 99 0.5' }, { '0 springs': 'too-much' }],
  ])('says what is wrong at its field (%#)', (draft, hours, wrong) => {
    const { place: read, faults } = readPlace(typed(draft, hours), new Set(['Taken']), nautical);
    expect(read).toBeUndefined();
    expect(faults).toEqual(wrong);
  });

  it('loses no figure of a place by being shown and read, in any units', () => {
    const race = place('Race', 46.0123456, -31.98765432, reversing(83.4, 1.2345));
    for (const system of ['nautical', 'metric', 'imperial'] as const) {
      const m = measuresFor(system, 'de');
      expect(readPlace(draftOf(race, 1, m), none, m)).toEqual({ place: race, faults: {} });
    }
  });

  it('keeps another direction at neaps', () => {
    const turned = { ...place('Race', 46, -32, reversing(80, 1)), neaps: reversing(95, 0.5) };
    const { place: read } = readPlace(draftOf(turned, 1, nautical), none, nautical);
    expect(read!.neaps.map(({ setDeg }) => setDeg)[3]).toBe(95);
  });

  it('of which only the strongest are known asks when it turns, and stays a guess', () => {
    const run = { set: '60', springs: '2', neaps: '1', neapSet: '' };
    const narrows: PlaceDraft = { ...sill, known: 'two-runs', flood: run, ebb: { ...run, set: '240' } };
    expect(readPlace(narrows, none, nautical).faults).toEqual({ turns: 'no-turn' });
    const { place: read } = readPlace({ ...narrows, turns: '1' }, none, nautical);
    expect(read!.spread).toMatchObject({ flood: { setDeg: 60 }, turns: 1 });
    expect(readPlace(draftOf(read!, 2, nautical), none, nautical).place).toEqual(read);
    expect(read).toEqual({ name: 'The Sill', lat: read!.lat, lon: read!.lon, ...spreadStream(read!.spread!) });
  });

  it('means the same water in other units, also while it is half typed', () => {
    const metric = measuresFor('metric', 'de');
    const half = typed({ ...sill, name: '' }, { 0: '60 1 x' });
    const { springs, neaps } = redrafted(half, nautical, metric).hours.find(({ hour }) => hour === 0)!;
    expect(springs).toMatch(/^1,85|^1,9/);
    expect(neaps).toBe('x');
  });

  it('comes out of a table with what it leaves out still empty', () => {
    const tabled = {
      name: 'Gap',
      lat: undefined,
      lon: undefined,
      hours: [{ hour: 0, setDeg: 60, springs: 1, neaps: undefined }],
    };
    const { faults } = readPlace(draftOfTable(tabled, 1, nautical), none, nautical);
    expect(faults).toEqual({ position: 'no-place', '0 neaps': 'no-rate' });
  });
});
