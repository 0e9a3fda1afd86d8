import { planTrip } from '../trip/plan-trip.ts';
import type { ReserveRule, Trip } from '../trip/shapes.ts';
import { HOUR } from '../units/convert.ts';
import { BEAUFORT } from '../water/beaufort.ts';
import { windSea } from '../water/sea-growth.ts';
import type { Conditions } from '../water/shapes.ts';
import { areaWaters } from './area-waters.ts';
import { hireTrip } from './hire-trip.ts';
import { OUT_DEG } from './hired-trip.ts';
import type { HireBoat } from './shapes.ts';

/** What a card is worked out for. SI. */
export interface CardAsked {
  readonly boat: HireBoat;
  readonly water: 'sea' | 'fresh';
  /** Share of full at departure, measured. */
  readonly fill: number;
  /** Open water to windward, m; makes the waves of each wind. */
  readonly fetch: number;
  /** Strongest stream, m/s; runs against the way home. */
  readonly stream: number;
  readonly batteryTemperatureC?: number;
  readonly reserve: readonly ReserveRule[];
}

export interface SeasonCard {
  /** Crew and their things, up to so many kg by so many people. */
  readonly rows: readonly { readonly mass: number; readonly persons: number }[];
  /** Up to the top of a force of the Beaufort scale, m/s, with its waves, m. */
  readonly columns: readonly { readonly force: number; readonly wind: number; readonly waveHeight: number }[];
  /** Longest hire that is a plain go, s, by row and column; 0: none. Never more than with less weight or wind. */
  readonly longest: readonly (readonly number[])[];
}

const FORCES = [1, 2, 3, 4, 5];
/** Hires are let by the half hour, up to eight hours. */
const STEP = HOUR / 2;
const MOST_STEPS = 16;
/** Rows, kg; an adult clothed, with their things, each (common practice, no source). */
const ONE = 80;
/** Rows at most, so that a card stays one page. */
const MOST_ROWS = 10;
/** The wind from ahead on the way out, from ahead on the way home, and from the side. */
const WINDS_FROM = [OUT_DEG, OUT_DEG - 180, OUT_DEG - 90];
const START = { lat: 0, lon: 0 };

/**
 * How long a boat may go, by crew and wind: the engine running all the time at the hire speed, straight out and home,
 * the wind from the worst side. Yields the share done; the trip's boat gets its calibration from `measured`.
 */
export function* seasonCard(asked: CardAsked, measured: (trip: Trip) => Trip): Generator<number, SeasonCard> {
  const rows = rowsOf(asked.boat);
  const columns = FORCES.map((force) => {
    const wind = BEAUFORT[force]!.max;
    const { height } = windSea({ wind, fetch: asked.fetch });
    return { force, wind, waveHeight: height };
  });
  const waters = areaWaters('card', START);
  const goes = (row: (typeof rows)[number], column: (typeof columns)[number], steps: number): boolean =>
    WINDS_FROM.every((fromDeg) => {
      const trip = measured(cardTrip(asked, row, { ...column, fromDeg }, steps * STEP));
      const plan = planTrip(trip, waters, { quick: true });
      return plan.ok && plan.value.verdict === 'go';
    });
  const longest: number[][] = [];
  for (const [i, row] of rows.entries()) {
    const line: number[] = [];
    for (const [j, column] of columns.entries()) {
      // More weight or wind never gives more, so that "up to" holds for every crew and wind below.
      const most = Math.min(longest[i - 1]?.[j] ?? MOST_STEPS, line[j - 1] ?? MOST_STEPS);
      let [good, bad] = [0, most + 1];
      while (bad - good > 1) {
        const steps = good === 0 && bad === most + 1 ? most : Math.floor((good + bad) / 2);
        if (steps > 0 && goes(row, column, steps)) good = steps;
        else bad = steps;
      }
      line.push(good);
      yield (i * columns.length + j + 1) / (rows.length * columns.length);
    }
    longest.push(line);
  }
  return { rows, columns, longest: longest.map((line) => line.map((steps) => steps * STEP)) };
}

function rowsOf({ plate }: HireBoat): SeasonCard['rows'] {
  const persons = plate === 'none' ? undefined : plate.persons;
  const most = plate === 'none' ? undefined : plate.maxLoad;
  const rows: { mass: number; persons: number }[] = [];
  for (let n = 1; n <= Math.min(persons ?? 6, MOST_ROWS); n++) {
    if (most !== undefined && n * ONE > most) break;
    rows.push({ mass: n * ONE, persons: n });
  }
  return rows;
}

function cardTrip(
  asked: CardAsked,
  row: SeasonCard['rows'][number],
  { wind, waveHeight, fromDeg }: { readonly wind: number; readonly waveHeight: number; readonly fromDeg: number },
  time: number,
): Trip {
  const { boat, water, fill, stream, batteryTemperatureC, reserve } = asked;
  const conditions: Conditions = {
    water,
    wind: { fromDeg, speed: wind },
    sea: { height: waveHeight },
    stream: stream > 0 ? { setDeg: OUT_DEG, rate: stream } : 'slack',
    batteryTemperatureC,
  };
  return hireTrip({
    boat,
    weights: Array.from({ length: row.persons }, () => row.mass / row.persons),
    fill,
    fillKnownBy: 'measured',
    route: undefined,
    timeAllowed: time,
    conditions,
    policy: { reserve },
    start: START,
  });
}
