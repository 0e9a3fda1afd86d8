import type { StartDay, StartTime } from '../../core/trip/start-times.ts';
import { DAY, dayStart, secondsOf } from '../../core/water/clock.ts';
import type { Interval } from '../../core/water/depth-windows.ts';
import type { Conditions } from '../../core/water/shapes.ts';
import type { HeightAt } from '../../core/water/tide-height.ts';
import { placeClock } from '../conditions-form/place-clock.ts';
import { stationOf, stationTide } from '../conditions-form/stations.ts';

/** What is known of a departure's day beyond the trip: its clock, and the tide where a station tells it. */
export interface StartsDay extends StartDay {
  readonly span: Interval;
  readonly heightAt: HeightAt | undefined;
}

/** The day of a departure on the clock of its place; with the tide of its station, if it has one. */
export async function startsDay(
  conditions: Conditions & { readonly departure: string },
  duration: number,
): Promise<StartsDay> {
  const clock = placeClock(conditions);
  const seconds = secondsOf(conditions.departure);
  const from = dayStart(seconds, clock.offsetAt(seconds));
  const day = { offsetAt: clock.offsetAt, span: { from, to: from + DAY } };
  const station = await stationOf(conditions.tide);
  const half = Number.isFinite(duration) ? duration / 2 : 0;
  const found = station && (await stationTide(station, from, from + DAY + half));
  if (!found?.ok) return { ...day, heightAt: undefined };
  const { tideAt, heightAt } = found.value;
  return { ...day, heightAt, tideAt: (start) => tideAt(start + half, clock.offsetAt(start)) };
}

/** Without the hours before and after the day's light, if some of it is light. */
export function inTheLight(starts: readonly StartTime[]): readonly StartTime[] {
  const first = starts.findIndex(({ dark }) => !dark);
  const last = starts.findLastIndex(({ dark }) => !dark);
  return first < 0 ? starts : starts.slice(first, last + 1);
}

/** Departures in a row with the wanted answer, as first and last of each row. */
export function rowsOf(
  starts: readonly StartTime[],
  fits: (start: StartTime) => boolean,
): readonly (readonly [StartTime, StartTime])[] {
  const rows: [StartTime, StartTime][] = [];
  starts.forEach((start, i) => {
    if (!fits(start)) return;
    const row = rows.at(-1);
    if (row && i > 0 && row[1] === starts[i - 1]) row[1] = start;
    else rows.push([start, start]);
  });
  return rows;
}
