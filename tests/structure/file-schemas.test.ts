import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileSchemas, type SchemaName } from '../../scripts/site/file-schemas.ts';
import { readDeskFile, writeDeskFile } from '../../src/core/files/desk-file.ts';
import { readFleet } from '../../src/core/files/fleet-file.ts';
import { readProfile } from '../../src/core/files/profile-file.ts';
import { readSavedFile, savedFileText } from '../../src/core/files/saved-file.ts';
import { readTrip } from '../../src/core/files/trip-schema.ts';
import { readWaters } from '../../src/core/files/waters-file.ts';
import type { Fleet } from '../../src/core/hire/shapes.ts';
import type { Trip } from '../../src/core/trip/shapes.ts';
import type { Problem, Result } from '../../src/core/units/result.ts';
import { type Loose, petrolTrip, shippedTrips } from '../core/files/full-trips.ts';
import { aHire, aMorning } from '../core/hire/examples.ts';

const shared = (path: string): Loose =>
  JSON.parse(readFileSync(new URL(`../../shared/${path}`, import.meta.url), 'utf8'));

const schemas = fileSchemas('https://boats.example');
const ajv = new Ajv2020({ strict: false, allErrors: false });
for (const schema of Object.values(schemas)) ajv.addSchema(schema);
const follows = (name: SchemaName, value: unknown): boolean =>
  ajv.validate(`https://boats.example/schemas/${name}.json`, value) as boolean;

const fleet = shared('craft/hire-fleet.json');
const profile = shared('trials-demo/sample-boat.json');
const trip = petrolTrip();
const fullFleet: Loose = {
  ...fleet,
  localWaters: shared('waters/haven.geojson'),
  boats: [...fleet.boats, { id: 'm', name: 'Measured', speed: 3, plate: 'none', profile }],
};
const { calibration: _, ...craft } = trip.craft;
const saved = JSON.parse(
  savedFileText([
    { kind: 'trip', name: 'A day', savedAt: '2026-06-20T10:00Z', trip: trip as Trip },
    { kind: 'boat', name: 'The boat', savedAt: '2026-06-20T10:00Z', boat: { craft, trials: trip.trials } },
  ]),
);
const desk = JSON.parse(writeDeskFile({ fleet: fleet as Fleet, morning: aMorning(), hires: [aHire()], fuelNotes: [] }));

interface Door {
  readonly name: SchemaName;
  readonly files: readonly Loose[];
  readonly read: (value: Loose) => Result<unknown>;
  /** What the reader knows beside the schema, by code and place of its problem. */
  readonly beyond: readonly RegExp[];
}

/** One field against another, an id met twice or not at all: a schema speaks of one value at a time. */
const BETWEEN_FIELDS = [
  /^(duplicate|uneven|no-such-setup|no-such-station|wrong-store|helm-not-person|two-helms) /,
  /^too-small .*(meanSpringRange|until)$/,
  /^too-large .*(wettedLength|planingBeam|unusableL)$/,
  /^out-of-range .*propeller\.pitch$/,
];

/** A ring that does not close, a box of nothing, a coordinate system named in another way. */
const WATERS_ONLY = [/^(not-closed|duplicate|wrong-system|empty-box) /, /^too-small .*validUntil$/];

const DOORS: readonly Door[] = [
  { name: 'trip', files: [...Object.values(shippedTrips), trip], read: readTrip, beyond: BETWEEN_FIELDS },
  { name: 'profile', files: [profile], read: (value) => readProfile(JSON.stringify(value)), beyond: BETWEEN_FIELDS },
  {
    name: 'waters',
    files: [shared('waters/haven.geojson')],
    read: readWaters,
    beyond: WATERS_ONLY,
  },
  { name: 'fleet', files: [fleet, fullFleet], read: readFleet, beyond: [...BETWEEN_FIELDS, ...WATERS_ONLY] },
  {
    name: 'saved',
    files: [saved],
    read: (value) => {
      const read = readSavedFile(JSON.stringify(value));
      return read.ok && read.value.problems.length > 0 ? { ok: false, problems: [...read.value.problems] } : read;
    },
    beyond: BETWEEN_FIELDS,
  },
  { name: 'desk', files: [desk], read: (value) => readDeskFile(JSON.stringify(value)), beyond: BETWEEN_FIELDS },
];

/** Every object and list inside a value, with what holds it. */
function holders(value: Loose, found: Loose[] = []): Loose[] {
  if (typeof value !== 'object' || value === null) return found;
  found.push(value);
  // The first few of a list stand for all: outlines have thousands of positions.
  for (const inner of Array.isArray(value) ? value.slice(0, 6) : Object.values(value)) holders(inner, found);
  return found;
}

const OTHERS = [null, true, 0, -1, 1.5, 1e9, '', 'x', 'calm', '2026-13-01', [], {}, 'x'.repeat(201)];

/** Never a list for an object: to the reader an empty one is an object without fields, to a schema it is not. */
function other(value: Loose, pick: number): Loose {
  const one = OTHERS[pick % OTHERS.length];
  return Array.isArray(one) && typeof value === 'object' && !Array.isArray(value) ? null : structuredClone(one);
}

/** A copy with one thing changed: a field gone, another value in its place, or a field that nobody knows. */
function spoilt(file: Loose, seed: { at: number; field: number; how: number; with: number }): Loose {
  const copy = structuredClone(file);
  const all = holders(copy);
  const holder = all[seed.at % all.length];
  const keys = Object.keys(holder).slice(0, 40);
  if (keys.length === 0) return copy;
  const key = keys[seed.field % keys.length]!;
  if (seed.how === 0 && !Array.isArray(holder)) delete holder[key];
  else if (seed.how === 1 && !Array.isArray(holder)) holder.surely_not_known = 1;
  else if (seed.how === 2 && Array.isArray(holder)) holder.length = seed.with % 3;
  else holder[key] = other(holder[key], seed.with);
  return copy;
}

const seeds = fc.record({ at: fc.nat(), field: fc.nat(), how: fc.nat(4), with: fc.nat() });

describe.each(DOORS)('the schema of a $name', ({ name, files, read, beyond }) => {
  it('takes what is shipped, with the schema named in it or not', () => {
    for (const file of files) {
      for (const given of [file, { $schema: `https://boats.example/schemas/${name}.json`, ...file }]) {
        expect(read(given)).toMatchObject({ ok: true });
        expect(follows(name, given), ajv.errorsText()).toBe(true);
      }
    }
  });

  it('agrees with the reader over spoilt files, but for what only the reader can know', () => {
    let [both, sound, readerOnly] = [0, 0, 0];
    fc.assert(
      fc.property(fc.nat(files.length - 1), seeds, (which, seed) => {
        const file = spoilt(files[which], seed);
        const found = read(file);
        const fits = follows(name, file);
        const problems: readonly Problem[] = found.ok ? [] : found.problems;
        const told = `${JSON.stringify(problems.slice(0, 3))} ${fits ? '' : ajv.errorsText()}`;
        if (found.ok) expect(fits, told).toBe(true);
        else if (fits)
          expect(
            problems.filter(({ code, path }) => !beyond.some((known) => known.test(`${code} ${path}`))),
            told,
          ).toEqual([]);
        if (found.ok) sound++;
        else if (fits) readerOnly++;
        else both++;
      }),
      { numRuns: 500, seed: 6 },
    );
    // Otherwise nothing was tried.
    expect(both).toBeGreaterThan(100);
    expect(sound).toBeGreaterThan(3);
    expect(readerOnly).toBeLessThan(100);
  });
});
