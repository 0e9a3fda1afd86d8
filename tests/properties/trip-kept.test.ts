import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSavedFile, savedFileText } from '../../src/core/files/saved-file.ts';
import { readShareLink, writeShareLink } from '../../src/core/files/share-link.ts';
import { readTripText } from '../../src/core/files/trip-schema.ts';
import type { Trip } from '../../src/core/trip/shapes.ts';
import type { Result } from '../../src/core/units/result.ts';
import { haven } from '../trips.ts';
import { holds } from './hold.ts';
import { changing, ESTUARY, planned, trips } from './trip-makers.ts';

const RUNS = { seed: 4099, numRuns: 120 };

const anyTrip: fc.Arbitrary<Trip> = fc
  .tuple(trips(), fc.option(changing(ESTUARY), { nil: undefined }))
  .map(([trip, change]) => ({ ...trip, conditions: { ...trip.conditions, ...change } }));

function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(({ path, message }) => `${path}: ${message}`).join(' '));
  return result.value;
}

const ways: readonly [string, (trip: Trip) => Trip][] = [
  ['a trip file', (trip) => must(readTripText(JSON.stringify(trip)))],
  [
    'a file of saved trips',
    (trip) => {
      const text = savedFileText([{ kind: 'trip', name: 'kept', savedAt: '2026-07-15T09:00:00Z', trip }]);
      const { entries, problems } = must(readSavedFile(text));
      const [entry] = entries;
      if (entry?.kind !== 'trip') throw new Error(problems.map(({ message }) => message).join(' '));
      return entry.trip;
    },
  ],
  ['a link', (trip) => must(readShareLink(must(writeShareLink(trip, 'https://club.example/', { names: true }))))],
];

describe('a trip kept and opened again', () => {
  for (const [name, again] of ways) {
    it(`from ${name} has the same plan, bit by bit`, () => {
      holds(
        fc.property(anyTrip, (trip) => {
          expect(planned(again(trip), haven())).toEqual(planned(trip, haven()));
        }),
        RUNS,
      );
    });
  }
});
