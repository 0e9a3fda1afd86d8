/**
 * node scripts/tide-stations.ts [ID ...]: takes stations from the tide database into shared/tides/stations.json. Only
 * stations that are in the public domain are taken, or, if asked for by id, those free for any use with attribution.
 */
import { writeFileSync } from 'node:fs';
import { stationsById } from '@neaps/tide-database';
import type { TideStation } from '../src/core/water/shapes.ts';

/** Tides of every kind: twice a day with small and great range, mixed, and once a day. */
const USUAL = [
  'noaa/8410140',
  'noaa/8418150',
  'noaa/8443970',
  'noaa/8518750',
  'noaa/8665530',
  'noaa/8724580',
  'noaa/8771450',
  'noaa/9414290',
  'noaa/9447130',
  'noaa/1612340',
];

/** The database holds 32-bit numbers; what it was given had this many decimals, m and degrees. */
const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

const asked = process.argv.slice(2);
const stations = (asked.length > 0 ? asked : USUAL).map((id): TideStation => {
  const station = stationsById.get(id);
  if (!station) throw new Error(`no station ${id}`);
  const { license, datums, chart_datum: chartDatum = 'MLLW' } = station;
  const free = license.commercial_use && (license.type === 'public domain' || license.type === 'cc-by-4.0');
  if (!free) throw new Error(`${id} is not free for every use: ${license.type}`);
  const [mean, datum] = [datums.MSL, datums[chartDatum]];
  if (station.type !== 'reference' || mean === undefined || datum === undefined) {
    throw new Error(`${id} has no constants or no datum of its own`);
  }
  return {
    id,
    name: station.name,
    lat: rounded(station.latitude, 5),
    lon: rounded(station.longitude, 5),
    timezone: station.timezone,
    meanLevel: rounded(mean - datum, 3),
    chartDatum,
    constituents: station.harmonic_constituents
      .filter(({ amplitude }) => amplitude > 0)
      .map(({ name, amplitude, phase }) => ({ name, amplitude: rounded(amplitude, 4), phaseDeg: rounded(phase, 2) })),
    licence: `${license.type}, ${license.url}`,
    attribution: `${station.source.name}; ${station.attribution}`,
    source: station.source.url,
  };
});

const file = new URL('../shared/tides/stations.json', import.meta.url);
writeFileSync(file, `[\n${stations.map((station) => JSON.stringify(station)).join(',\n')}\n]\n`);
console.log(`${stations.length} stations`);
