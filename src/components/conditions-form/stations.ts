import type { Result } from '../../core/units/result.ts';
import { DAY, secondsOf } from '../../core/water/clock.ts';
import type { HarmonicTide } from '../../core/water/harmonic.ts';
import type { Tide, TideStation } from '../../core/water/shapes.ts';
import { tideOfDay } from '../../core/water/tide-of-day.ts';

/** Stations from files that were opened on this page; the shipped ones come first. */
const own: TideStation[] = [];
let shipped: Promise<readonly TideStation[]> | undefined;

/** Every station there is to choose from. Throws where they cannot be loaded. */
export async function tideStations(): Promise<readonly TideStation[]> {
  shipped ??= Promise.all([
    import('../../../shared/tides/stations.json'),
    import('../../../shared/tides/haven.json'),
  ]).then(([stations, haven]) => [haven.default as TideStation, ...(stations.default as readonly TideStation[])]);
  try {
    return [...(await shipped), ...own];
  } catch (error) {
    shipped = undefined;
    throw error;
  }
}

/** Adds a station of the user's own, in the place of one of the same id. */
export function addStation(station: TideStation): void {
  const at = own.findIndex(({ id }) => id === station.id);
  if (at >= 0) own[at] = station;
  else own.push(station);
}

/** What a station tells about a few days. */
export interface StationTide extends HarmonicTide {
  /** The tide that streams of an instant, s since 1970, are told for, on a clock so far from UTC, s. */
  tideAt(seconds: number, offset: number): Tide | undefined;
}

/** Tide of a station from a day before an instant to a day after another, s since 1970. Brings the predictor with it. */
export async function stationTide(station: TideStation, from: number, to: number): Promise<Result<StationTide>> {
  const { harmonicTide, meanRanges } = await import('../../core/water/harmonic.ts');
  const found = harmonicTide(station, { from: from - DAY, to: to + DAY });
  if (!found.ok) return found;
  const { turns, heightAt } = found.value;
  const ranges = meanRanges(station);
  const tideAt = (seconds: number, offset: number) =>
    tideOfDay(turns, seconds, { port: station.name, ...ranges, offset });
  return { ok: true, value: { turns, heightAt, tideAt } };
}

/** The station that a tide was worked out from; undefined: typed, or from a station that is no longer here. */
export async function stationOf(tide: Tide | undefined): Promise<TideStation | undefined> {
  if (!tide) return undefined;
  try {
    const station = (await tideStations()).find(({ name }) => name === tide.port);
    if (!station) return undefined;
    const at = secondsOf(tide.highWater);
    const worked = await stationTide(station, at, at);
    const again = worked.ok ? worked.value.tideAt(at, 0) : undefined;
    // Within a minute and a centimetre it is the same tide.
    return again &&
      Math.abs(secondsOf(again.highWater) - at) <= 60 &&
      Math.abs((again.highWaterHeight ?? 0) - (tide.highWaterHeight ?? 0)) < 0.01
      ? station
      : undefined;
  } catch {
    return undefined;
  }
}
