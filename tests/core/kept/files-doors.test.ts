import fleetJson from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import stationJson from '../../../shared/tides/haven.json' with { type: 'json' };
import profileJson from '../../../shared/trials-demo/sample-boat.json' with { type: 'json' };
import { readDeskFile, readFuelNote, readHire, readMorning, writeDeskFile } from '../../../src/core/files/desk-file.ts';
import { readFleet } from '../../../src/core/files/fleet-file.ts';
import { readProfile, writeProfile } from '../../../src/core/files/profile-file.ts';
import { readSavedEntry, readSavedFile, savedFileText } from '../../../src/core/files/saved-file.ts';
import { readStreamPlaces, streamPlacesText } from '../../../src/core/files/stream-places-file.ts';
import { readTideStation } from '../../../src/core/files/tide-station-file.ts';
import { readWaters } from '../../../src/core/files/waters-file.ts';
import type { Fleet } from '../../../src/core/hire/shapes.ts';
import type { BoatProfile } from '../../../src/core/trials/shapes.ts';
import { haven } from '../../trips.ts';
import { petrolTrip } from '../files/full-trips.ts';
import { aHire, aMorning } from '../hire/examples.ts';
import { box, waters, zone } from '../route/made-waters.ts';
import { keeping } from './keeping.ts';
import { spoilt } from './spoilt.ts';

const fleet = fleetJson as unknown as Fleet;
const profile = profileJson as unknown as BoatProfile;
const asText =
  <T>(read: (text: string) => T) =>
  (value: unknown) =>
    read(JSON.stringify(value));
const note = { id: 'n', boatId: 'b', refill: { ...petrolTrip().trials.refills[0] } };
const hire = aHire({
  leftAt: 1.8e9,
  due: 1.81e9,
  returnedAt: 1.82e9,
  back: { used: { running: 900 }, amount: 2 },
  shown: { plate: 'AB' },
} as Partial<ReturnType<typeof aHire>>);
const small = waters(
  [
    zone({ kind: 'land', name: 'Land' }, box(0.1, 0.1, 0.2, 0.2)),
    zone({ kind: 'shoal', name: 'Bank', dries_m: -1, note: 'x' }, box(0.3, 0.1, 0.4, 0.2)),
    zone({ kind: 'speed-limit', name: 'Slow', limit_kn: 5 }, box(0.3, 0.3, 0.4, 0.4)),
    zone({ kind: 'keep-out', name: 'Out', season: '03-01/08-31', reason: 'birds' }, box(0.5, 0.3, 0.6, 0.4)),
    {
      type: 'Feature',
      properties: {
        kind: 'landing',
        name: 'Slip',
        id: 's',
        fuel: true,
        power: false,
        hire_desk: true,
        dries_m: 0.4,
        usable: 'HW',
        access: 'slip',
      },
      geometry: { type: 'Point', coordinates: [0.05, 0.05] },
    },
    {
      type: 'Feature',
      properties: { kind: 'stream', name: 'Gut', id: 'g', hours: [{ h: -1, set_deg: 40, spring_kn: 2, neap_kn: 1 }] },
      geometry: { type: 'Point', coordinates: [0.06, 0.05] },
    },
  ],
  [0, 0, 1, 1],
);
const known = { ...small, name: 'made', responsible: 'Nobody', surveyed: '2026-01-01', validUntil: '2027-01-01' };

keeping('files-doors', {
  'a boat profile': () =>
    spoilt({ ...profile, trials: { ...profile.trials, runs: profile.trials.runs.slice(0, 2) } }, asText(readProfile)),
  'a fleet': () => spoilt({ ...fleet, routes: fleet.routes.slice(0, 1), boats: fleet.boats.slice(0, 1) }, readFleet),
  waters: () => [
    spoilt(known, readWaters),
    ...small.features.map((feature) => spoilt({ ...known, features: [feature] }, readWaters)),
  ],
  'a morning, a hire and a note of fuel': () => [
    spoilt(aMorning({ lastReturn: 1.8e9 }), readMorning),
    spoilt({ ...hire, trip: null }, readHire),
    spoilt(note, readFuelNote),
  ],
  'a desk': () => {
    const text = writeDeskFile({ fleet, morning: aMorning(), hires: [hire], fuelNotes: [note] });
    return [
      readDeskFile(text).ok,
      text.length,
      readDeskFile('[]'),
      readDeskFile('{'),
      readDeskFile(text.replace('"version":1', '"version":2')),
    ];
  },
  'a tide station': () => spoilt(stationJson, asText(readTideStation)),
  'places of streams': () =>
    spoilt(JSON.parse(streamPlacesText(haven().streams.slice(0, 1))), asText(readStreamPlaces)),
  'saved entries': () => {
    const entry = {
      kind: 'boat' as const,
      name: 'B',
      savedAt: '2026-07-15T08:00:00.000Z',
      boat: { craft: petrolTrip().craft },
    };
    return [
      [
        entry,
        { ...entry, kind: 'trip' },
        { ...entry, name: '' },
        { ...entry, savedAt: 'then' },
        { ...entry, boat: {} },
        null,
        3,
      ].map((one) => {
        const found = readSavedEntry(one);
        return found.ok ? found.value.name : found.problems;
      }),
      savedFileText([entry]).length,
      ['{}', '[]', savedFileText([]), savedFileText([entry]).replace('"version": 1', '"version": 2')].map((text) =>
        readSavedFile(text),
      ),
    ];
  },
  'texts that are written': () => [
    writeProfile(profile).length,
    readProfile(writeProfile(profile)).ok,
    readProfile('{"format":"homeleg-profile"}'),
    readProfile('{"a":'),
    readProfile(''),
  ],
});
