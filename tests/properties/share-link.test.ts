import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShareLink, writeShareLink } from '../../src/core/files/share-link.ts';
import { withoutNames } from '../../src/core/files/without-names.ts';
import type { Trip } from '../../src/core/trip/shapes.ts';
import { shipped } from '../trips.ts';
import { holds } from './hold.ts';
import { trips } from './trip-makers.ts';

/** As any file would hand it on: no undefined fields, no negative zero. */
const filed = (trip: Trip): Trip => JSON.parse(JSON.stringify(trip)) as Trip;

const link = (trip: Trip, names: boolean): string => {
  const written = writeShareLink(trip, 'https://club.example/', { names });
  if (!written.ok) throw new Error(written.problems[0]!.message);
  return written.value;
};

describe('a share link', () => {
  it('opens any trip again to the last digit, and without names every figure of it', () => {
    const named = fc.tuple(trips(), fc.string({ unit: 'binary', maxLength: 60 })).map(([trip, name]) => ({
      ...trip,
      name,
      load: { ...trip.load, items: trip.load.items.map((item) => ({ ...item, name })) },
    }));
    holds(
      fc.property(named, (trip) => {
        expect(readShareLink(link(trip, true))).toStrictEqual({ ok: true, value: filed(trip) });
        expect(readShareLink(link(trip, false))).toStrictEqual({ ok: true, value: filed(withoutNames(trip)) });
      }),
      { seed: 1790, numRuns: 150 },
    );
  });

  it('is refused in words or is a sound trip, however it was mangled', () => {
    const whole = link(shipped('petrol-day'), true);
    const alphabet = fc.constantFrom(...'ABCxyz019-_.#&=%+/ \u0000é');
    const mangled = fc.oneof(
      fc
        .tuple(fc.nat(whole.length), fc.nat(60), fc.string({ unit: alphabet, maxLength: 60 }))
        .map(([at, cut, put]) => whole.slice(0, at) + put + whole.slice(at + cut)),
      fc.string({ maxLength: 4000 }).map((text) => `#trip=1.${text}`),
      fc.string({ unit: fc.constantFrom(...'ABCDEFxyz0189-_'), maxLength: 4000 }).map((text) => `#trip=1.${text}`),
      fc.string({ unit: 'binary', maxLength: 400 }),
    );
    holds(
      fc.property(mangled, (text) => {
        const read = readShareLink(text);
        if (read.ok) return read.value.version === 1;
        return read.problems.length > 0 && read.problems.every(({ code, message }) => code !== '' && message !== '');
      }),
      { seed: 1791, numRuns: 3000 },
    );
  });
});
