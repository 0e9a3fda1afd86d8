import { readFileSync } from 'node:fs';
import { readChecklist } from '../../src/components/checklist/read-checklist.ts';
import { parsePosition } from '../../src/components/units/coordinates.ts';
import { parseDecimal } from '../../src/components/units/decimal.ts';
import { aboardFromText, aboardText } from '../../src/core/files/aboard-text.ts';
import { craftFrom } from '../../src/core/files/catalogue.ts';
import { readDeskFile, writeDeskFile } from '../../src/core/files/desk-file.ts';
import { readFleetText } from '../../src/core/files/fleet-file.ts';
import { readForecastTable } from '../../src/core/files/forecast-table.ts';
import { readGpx } from '../../src/core/files/gpx.ts';
import { readProfile } from '../../src/core/files/profile-file.ts';
import { runsFromTable } from '../../src/core/files/runs-table.ts';
import { runsTable } from '../../src/core/files/runs-table-writer.ts';
import { readSavedFile, savedFileText } from '../../src/core/files/saved-file.ts';
import { readShareLink, writeShareLink } from '../../src/core/files/share-link.ts';
import { readStreamPlaces, streamPlacesText } from '../../src/core/files/stream-places-file.ts';
import { readStreamTable } from '../../src/core/files/stream-table.ts';
import { tableColumns } from '../../src/core/files/table-columns.ts';
import { readTideStation } from '../../src/core/files/tide-station-file.ts';
import { readTripText } from '../../src/core/files/trip-schema.ts';
import { readWatersText } from '../../src/core/files/waters-file.ts';
import { prepareWaters } from '../../src/core/route/waters.ts';
import { cleanTrack } from '../../src/core/track/clean-track.ts';
import { pairPasses } from '../../src/core/track/pair-passes.ts';
import { steadyStretches } from '../../src/core/track/steady-stretches.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import type { Trip } from '../../src/core/trip/shapes.ts';
import type { Result } from '../../src/core/units/result.ts';
import { harmonicTide } from '../../src/core/water/harmonic.ts';
import { shipped } from '../trips.ts';

/** Where something from outside comes in: how it is read, sound examples, and what is done with what was let in. */
export interface Door {
  readonly name: string;
  readonly form: 'json' | 'text';
  readonly sound: readonly string[];
  read(text: string): Result<unknown>;
  /** Throws where what was let in cannot be worked with. */
  use(value: never): void;
}

const shared = new URL('../../shared/', import.meta.url);
const file = (name: string): string => readFileSync(new URL(name, shared), 'utf8');

function door<T>(
  name: string,
  form: Door['form'],
  sound: readonly string[],
  read: (text: string) => Result<T>,
  use: (value: T) => void,
): Door {
  return { name, form, sound, read, use: use as Door['use'] };
}

function planned(trip: Trip): void {
  const plan = planTrip(trip, undefined, { quick: true });
  if (plan.ok && !['go', 'marginal', 'no-go'].includes(plan.value.verdict)) throw new Error('no verdict');
  if (plan.ok && Number.isNaN(plan.value.need.median)) throw new Error('no figure for the need');
}

const trips = ['petrol-day', 'electric-tender', 'hire-hull'].map((name) => file(`trips/${name}.json`));
const tripLinks = (['petrol-day', 'electric-tender'] as const).map((name) => {
  const link = writeShareLink(shipped(name), 'https://club.example/', { names: true });
  if (!link.ok) throw new Error('a shipped trip makes a link');
  return link.value;
});
const saved = savedFileText([
  { kind: 'trip', name: 'Day', savedAt: '2026-07-15T09:00:00Z', trip: shipped('petrol-day') },
]);
const desk = writeDeskFile({ fleet: JSON.parse(file('craft/hire-fleet.json')), hires: [], fuelNotes: [] });
const profile = file('trials-demo/sample-boat.json');
/** The beginning of a recording is enough, and quick. */
const track = `${file('trials-demo/track-two-aboard.gpx').slice(0, 9000).split('</trkpt>').slice(0, -1).join('</trkpt>')}</trkpt></trkseg></trk></gpx>`;
const forecast = `time,dir,speed,gust\n${Array.from({ length: 12 }, (_, h) => `2026-07-15T${String(h + 6).padStart(2, '0')}:00:00Z,${200 + h},${4 + h / 10},${7 + h / 10}`).join('\n')}\n`;
const { drive, store } = craftFrom('catamaran-3-6', 'petrol-15hp-4s', 'tank-25');
const runs = runsTable({
  setups: [{ id: 'p', drive, store }],
  runs: [
    {
      id: 'one',
      setup: 'p',
      load: { items: [{ id: 'a', kind: 'adult', mass: 80, station: 'helm', helm: true }], fill: 0.8 },
      passes: [
        { over: 6, way: 'out' },
        { over: 6.4, way: 'back' },
      ],
      rpm: 4300,
      consumed: { kind: 'rate', rate: 0.0021 },
    },
  ],
});
const hours = (rate: number) =>
  Array.from({ length: 13 }, (_, i) => ({ setDeg: 20 * i, rate: rate * Math.abs(i - 6) }));
const streams = streamPlacesText([
  { name: 'Gut', lat: 46, lon: -32, firstHour: -6, springs: hours(0.2), neaps: hours(0.1) },
]);
const streamTable = `hour,sets,springs,neaps\n${Array.from({ length: 13 }, (_, i) => `${i - 6},${20 * i},${Math.abs(i - 6) / 3},${Math.abs(i - 6) / 6}`).join('\n')}\n`;
const notRead = { ok: false, problems: [{ code: 'not-read', path: '', message: 'not read' }] } as const;
const NOW = Date.parse('2026-07-15T12:00:00Z') / 1000;

export const doors: readonly Door[] = [
  door('a trip file', 'json', trips, readTripText, planned),
  door('a boat profile', 'json', [profile], readProfile, ({ trials }) => {
    if (!Number.isFinite(trials.hull.mass)) throw new Error('a boat without a mass');
  }),
  door('local waters', 'json', [file('waters/haven.geojson')], readWatersText, (waters) => {
    prepareWaters(waters);
  }),
  door('the fleet of a hire desk', 'json', [file('craft/hire-fleet.json')], readFleetText, ({ boats }) => {
    for (const { craft } of boats)
      if (craft && !Number.isFinite(craft.hull.mass)) throw new Error('a boat without a mass');
  }),
  door('what a desk kept', 'json', [desk], readDeskFile, ({ hires }) => {
    for (const { trip } of hires) planned(trip);
  }),
  door('saved trips and boats', 'json', [saved], readSavedFile, ({ entries }) => {
    for (const entry of entries) if (entry.kind === 'trip') planned(entry.trip);
  }),
  door('a tide station', 'json', [file('tides/haven.json')], readTideStation, (station) => {
    const tide = harmonicTide(station, { from: NOW, to: NOW + 86_400 });
    if (!tide.ok) return;
    const at = tide.value.heightAt(NOW);
    if (!at.known || !Number.isFinite(at.height)) throw new Error('no height of tide');
  }),
  door(
    'a recorded track',
    'text',
    [track],
    (text) => readGpx(text, NOW),
    ({ tracks }) => {
      for (const one of tracks) {
        const { groups } = pairPasses(steadyStretches(cleanTrack(one).track));
        if (!Array.isArray(groups)) throw new Error('no passes');
      }
    },
  ),
  door('a table of runs', 'text', [runs], tableColumns, (table) => {
    const mapping = table.columns.map(({ meaning, unit }) => meaning && { meaning, ...(unit && { unit }) });
    const read = runsFromTable(table, mapping, {
      setups: [{ id: 'p', name: drive.name, kind: drive.kind }],
      load: { items: [] },
      taken: [],
    });
    for (const { passes } of read.runs) {
      for (const { over } of passes) if (!(over > 0 && over <= 40)) throw new Error(`a pass at ${over} m/s`);
    }
  }),
  door(
    'a forecast table',
    'text',
    [forecast],
    (text) =>
      readForecastTable(text, { time: 'time', direction: 'dir', speed: 'speed', gust: 'gust', speedUnit: 'm/s' }),
    (winds) => {
      for (const { speed, fromDeg } of winds) {
        if (!(speed >= 0 && speed <= 75 && fromDeg >= 0 && fromDeg <= 360)) throw new Error(`wind of ${speed}`);
      }
    },
  ),
  door(
    'who is aboard, in a cell',
    'text',
    [aboardText(shipped('petrol-day').load.items)],
    (text) => {
      const value = aboardFromText(text);
      return value ? { ok: true, value } : notRead;
    },
    (items) => {
      for (const { mass } of items) if (!(mass > 0 && mass <= 2000)) throw new Error(`${mass} kg`);
    },
  ),
  door('a link', 'text', tripLinks, readShareLink, planned),
  door('places of a stream', 'json', [streams], readStreamPlaces, (places) => {
    for (const { springs, neaps } of places) if (springs.length !== neaps.length) throw new Error('hours of one tide');
  }),
  door(
    'a table of streams',
    'text',
    [streamTable],
    (text) =>
      readStreamTable(text, { hour: 'hour', direction: 'sets', springs: 'springs', neaps: 'neaps', unit: 'kn' }),
    (places) => {
      for (const { setDeg, springs } of places.flatMap(({ hours }) => hours)) {
        if (!(setDeg >= 0 && setDeg <= 360 && springs >= 0 && springs <= 10)) throw new Error(`${springs} m/s`);
      }
    },
  ),
  door(
    'a checklist of a page',
    'json',
    [file('checklists/before-launch.json')],
    (text) => {
      try {
        return readChecklist(JSON.parse(text));
      } catch (error) {
        if (error instanceof SyntaxError) return notRead;
        throw error;
      }
    },
    ({ sections }) => {
      if (sections.length === 0) throw new Error('nothing to tick');
    },
  ),
  door(
    'a position typed',
    'text',
    ['46°01.64′N 031°59.4′W', '46.0274, -31.99'],
    (text) => {
      const value = parsePosition(text);
      return value ? { ok: true, value } : notRead;
    },
    ({ lat, lon }) => {
      if (!(Math.abs(lat) <= 90 && Math.abs(lon) <= 180)) throw new Error(`${lat}, ${lon}`);
    },
  ),
  door(
    'a number typed',
    'text',
    ['1.234,5', '12'],
    (text) => {
      const value = parseDecimal(text, 'de');
      return value === undefined ? notRead : { ok: true, value };
    },
    (value) => {
      if (!Number.isFinite(value)) throw new Error(`${value}`);
    },
  ),
];
