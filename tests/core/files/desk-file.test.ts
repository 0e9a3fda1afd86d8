import { describe, expect, it } from 'vitest';
import demo from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import {
  type DeskFile,
  readDeskFile,
  readFuelNote,
  readHire,
  readMorning,
  writeDeskFile,
} from '../../../src/core/files/desk-file.ts';
import type { Fleet } from '../../../src/core/hire/shapes.ts';
import type { Result } from '../../../src/core/units/result.ts';
import { aHire, aMorning } from '../hire/examples.ts';
import { type Loose, petrolTrip } from './full-trips.ts';
import { expectEntries, expectRange, from, over, withAt } from './limits.ts';

const WORDS = 'w'.repeat(1000);
const hire: Loose = JSON.parse(
  JSON.stringify(
    aHire({
      lastReturn: 1.8e9,
      route: 'bay',
      area: 'Inside the bar',
      contact: 'call',
      leftAt: 1.8e9,
      due: 1.8e9,
      returnedAt: 1.8e9,
      shown: { plate: 'ab' },
    } as Loose),
  ),
);
hire.told.turnWith = 4;
hire.told.turnAfter = 2700;
hire.back = { amount: 5, used: { running: 3600 }, note: 'fine' };
const morning: Loose = JSON.parse(JSON.stringify({ ...aMorning(), lastReturn: 1.8e9 }));
const note: Loose = { id: 'n1', boatId: 'b1', refill: petrolTrip().trials.refills[0] };
const desk = { fleet: demo as unknown as Fleet, morning, hires: [hire], fuelNotes: [note] } as Omit<
  DeskFile,
  'format' | 'version'
>;
const takesHire = (value: Loose) => readHire(value).ok;
const takesMorning = (value: Loose) => readMorning(value).ok;
const told = (read: Result<unknown>) =>
  read.ok ? [] : read.problems.map(({ code, path, message }) => [code, path, message]);
const spoilt = (change: (file: Loose) => void) => {
  const file = JSON.parse(writeDeskFile(desk));
  change(file);
  return told(readDeskFile(JSON.stringify(file)));
};

describe('what a desk kept', () => {
  it('comes back from its file as it went in, whole or with nothing in it yet', () => {
    const read = readDeskFile(writeDeskFile(desk));
    expect(told(read)).toEqual([]);
    if (read.ok)
      expect(JSON.parse(JSON.stringify(read.value))).toEqual({ format: 'homeleg-desk', version: 1, ...desk });
    expect(readDeskFile(writeDeskFile({ hires: [], fuelNotes: [] }))).toEqual({
      ok: true,
      value: { format: 'homeleg-desk', version: 1, hires: [], fuelNotes: [] },
    });
  });

  it('is told from other files, and from those of a newer page', () => {
    for (const text of ['[]', '3', 'null', '"desk"', '{}', '{"format":"homeleg-fleet","version":1}']) {
      expect(told(readDeskFile(text)), text).toEqual([
        ['not-a-desk', '', 'This is not what a hire desk kept: its format is not "homeleg-desk"'],
      ]);
    }
    expect(spoilt((file) => (file.version = 2))).toEqual([
      ['unknown-version', 'version', 'This file is of version 2; only version 1 can be read here'],
    ]);
    for (const change of [(file: Loose) => delete file.version, (file: Loose) => (file.version = 'two')]) {
      expect(spoilt(change)[0]![2]).toContain('of an unknown version');
    }
  });

  it('is refused where it is no JSON', () => {
    expect(told(readDeskFile('{'))).toHaveLength(1);
    expect(readDeskFile('{').ok).toBe(false);
  });

  it('is refused with the place of what is wrong, whichever part it stands in', () => {
    const place = (change: (file: Loose) => void) => spoilt(change).map(([code, path]) => [code, path]);
    expect(place((file) => delete file.hires)).toEqual([['missing', 'hires']]);
    expect(place((file) => (file.colour = 'red'))).toEqual([['unknown-field', 'colour']]);
    expect(place((file) => (file.hires[0].told.time = 'long'))).toEqual([['invalid', 'hires.0.told.time']]);
    expect(place((file) => delete file.hires[0].boat)).toEqual([['missing', 'hires.0.boat']]);
    expect(place((file) => (file.hires[0].trip = 3))[0]![1]).toBe('hires.0.trip');
    expect(place((file) => delete file.hires[0].trip.craft)[0]![1]).toMatch(/^hires\.0\.trip\.craft/);
    expect(place((file) => (file.fuelNotes[0].refill.amount = -1))).toEqual([['invalid', 'fuelNotes.0.refill.amount']]);
    expect(place((file) => (file.morning.slipLife = 1))).toEqual([['invalid', 'morning.slipLife']]);
    expect(place((file) => (file.fleet.boats[0].speed = 99))[0]![1]).toBe('fleet.boats.0.speed');
    expect(place((file) => (file.fleet = 3))[0]![1]).toBe('fleet');
    expect(place((file) => (file.hires[0] = 3))).toEqual([['invalid', 'hires.0']]);
  });

  it('says in words what it wants there', () => {
    const words = (change: (file: Loose) => void) => spoilt(change)[0]![2];
    expect(words((file) => (file.colour = 'red'))).toBe('"colour" is not a field');
    expect(words((file) => delete file.hires)).toBe('"hires" is missing');
    expect(words((file) => (file.hires = 3))).toBe('"hires" must be Array, not 3');
    expect(told(readHire(3))[0]![2]).toMatch(/^The file must be .*, not 3$/);
    expect(told(readFuelNote({ ...note, id: '' }))[0]![2]).toMatch(/^"id" /);
  });

  it('tells no more than fifty problems at once', () => {
    expect(spoilt((file) => (file.hires = Array(60).fill(3)))).toHaveLength(50);
    expect(spoilt((file) => (file.hires = Array(49).fill(3)))).toHaveLength(49);
  });

  it('is up to twenty thousand hires, judged before they are read', () => {
    expect(spoilt((file) => (file.hires = Array(20_001).fill(3))).map(([, path]) => path)).toEqual(['hires']);
    expect(spoilt((file) => (file.hires = Array(20_000).fill(3)))[0]![1]).toBe('hires.0');
  });

  it('is not read where it nests deeper than a hire does', () => {
    const deep = (depth: number) => Array.from({ length: depth }).reduce<unknown>((inside) => [inside], 1);
    for (const read of [readHire, readMorning, readFuelNote] as const) {
      // Twenty levels are judged by their fields, more are not looked at.
      const codes = [20, 21].map((depth) => told(read(deep(depth))).some(([code]) => code === 'too-deep'));
      expect(codes).toEqual([false, true]);
    }
    expect(
      readDeskFile(`{"format":"homeleg-desk","version":1,"hires":[],"fuelNotes":${JSON.stringify(deep(25))}}`).ok,
    ).toBe(false);
  });
});

describe('a hire', () => {
  it('with everything given is taken', () => {
    expect(told(readHire(hire))).toEqual([]);
  });

  it.each([
    // From 1970 to 2200.
    ['lastReturn', from(0, 7.3e9)],
    ['checkedAt', from(0, 7.3e9)],
    ['leftAt', from(0, 7.3e9)],
    ['told.full', from(-1e12, 1e12)],
    ['told.left.low', from(-1e12, 1e12)],
    ['told.time', from(0, 1e7)],
    ['told.distance', from(0, 1e8)],
    ['told.turnAfter', from(0, 1e7)],
    // A week.
    ['rule.seconds', over(0, 604_800)],
    ['back.used.running', from(0, 604_800)],
  ] as const)('has a %s within bounds', (path, range) => {
    expectRange(takesHire, hire, path, range);
  });

  it('has up to sixty lines of up to a thousand letters, and initials of up to twelve', () => {
    expectEntries(takesHire, hire, 'told.lines', from(0, 60));
    const takes = (path: string, value: string) => takesHire(withAt(hire, path, value));
    for (const path of ['told.lines.0', 'area', 'contact', 'back.note']) {
      expect([takes(path, WORDS), takes(path, `${WORDS}w`)]).toEqual([true, false]);
    }
    expect([takes('shown.plate', 'abcdefghijkl'), takes('shown.plate', 'abcdefghijklm')]).toEqual([true, false]);
  });
});

describe('a morning', () => {
  it('with everything given is taken', () => {
    expect(told(readMorning(morning))).toEqual([]);
  });

  it.each([
    ['setAt', from(0, 7.3e9)],
    ['limits.new.maxWind', from(0, 80)],
    ['limits.some.maxWave', from(0, 20)],
    // A slip is good for a minute at least, a day at most.
    ['slipLife', from(60, 86_400)],
  ] as const)('has a %s within bounds', (path, range) => {
    expectRange(takesMorning, morning, path, range);
  });
});

it('a note of fuel has a boat and a refill', () => {
  expect(readFuelNote(note)).toMatchObject({ ok: true, value: { id: 'n1', boatId: 'b1' } });
  expect(told(readFuelNote({ id: 'n1', boatId: 'b1' }))).toEqual([['missing', 'refill', '"refill" is missing']]);
});
