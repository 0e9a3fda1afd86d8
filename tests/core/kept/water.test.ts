import havenStation from '../../../shared/tides/haven.json' with { type: 'json' };
import stations from '../../../shared/tides/stations.json' with { type: 'json' };
import { BEAUFORT, beaufortMiddle, beaufortOf, oneForceMore } from '../../../src/core/water/beaufort.ts';
import { DAY, dayStart, offsetOf, secondsOf, timeAt } from '../../../src/core/water/clock.ts';
import { wavesOnStream, windAgainstStream } from '../../../src/core/water/current-on-waves.ts';
import { daylightOn, lightOfTrip } from '../../../src/core/water/daylight.ts';
import { depthWindows } from '../../../src/core/water/depth-windows.ts';
import {
  averagedWind,
  bretschneiderWaves,
  fetchOfTime,
  manualWaves,
  northSeaWaves,
  timeToFetchLimit,
} from '../../../src/core/water/growth-laws.ts';
import { harmonicTide, meanRanges } from '../../../src/core/water/harmonic.ts';
import { headwind } from '../../../src/core/water/headwind.ts';
import { localTime, zoneOffset } from '../../../src/core/water/local-time.ts';
import { windSea, withSwell } from '../../../src/core/water/sea-growth.ts';
import { planingSpeedKept, seaLimits } from '../../../src/core/water/sea-speed.ts';
import { oneUp, seaStateOf } from '../../../src/core/water/sea-state.ts';
import type { StreamPlace, TideStation } from '../../../src/core/water/shapes.ts';
import { spreadStream } from '../../../src/core/water/spread-stream.ts';
import { reachOf, reachOfNamed, streamAt, streamTable } from '../../../src/core/water/streams.ts';
import { fiftyNinety, heightBetween, rateOfRange, twelfths } from '../../../src/core/water/tidal-rules.ts';
import { heightByHighWater, heightByTurns } from '../../../src/core/water/tide-height.ts';
import { tideOfDay } from '../../../src/core/water/tide-of-day.ts';
import { deepWaterWave, heightsMet } from '../../../src/core/water/waves-seen.ts';
import { meanWindBefore, strongestWind, windAt, windTable } from '../../../src/core/water/wind-by-time.ts';
import { haven } from '../../trips.ts';
import { SPRINGS } from '../trip/day-on-the-water.ts';
import { keeping } from './keeping.ts';

const station = havenStation as TideStation;
const others = stations as readonly TideStation[];
const noon = secondsOf('2027-06-19T12:00:00-02:00');
const span = { from: noon - DAY, to: noon + 2 * DAY };
const range = (from: number, to: number, count: number) =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

const guessed: StreamPlace = {
  name: 'Guessed',
  lat: 46.0,
  lon: -32.02,
  ...spreadStream({
    flood: { setDeg: 40, springs: 1.2, neaps: 0.6 },
    ebb: { setDeg: 225, springs: 1.5, neaps: 0.8 },
    turns: 1.5,
  }),
};
const short: StreamPlace = {
  ...guessed,
  name: 'Short',
  lat: 46.01,
  spread: undefined,
  firstHour: -2,
  springs: guessed.springs.slice(0, 4),
  neaps: guessed.neaps.slice(0, 4),
} as StreamPlace;

function streams(places: readonly StreamPlace[], tide = SPRINGS): unknown {
  const table = streamTable(places, tide);
  return [
    { lat: 46.0, lon: -32.03 },
    { lat: 46.02, lon: -31.96 },
    { lat: 45.9, lon: -32.3 },
  ].map((spot) => {
    const reach = reachOf(table, spot, (from, to) => from.lon < -32.025 && to.lat > 46.005);
    return [
      reach.reached ? reach.near.map(({ distance, others: names }) => ({ distance, names })) : reach,
      range(-14, 14, 15).flatMap((hour) =>
        [40, 230].map((courseDeg) => streamAt(table, reach, { seconds: table.highWater + hour * 3600, courseDeg })),
      ),
    ];
  });
}

const forecast = windTable([
  { time: '2027-06-19T12:00:00-02:00', fromDeg: 350, speed: 6, gust: 9 },
  { time: '2027-06-19T06:00:00-02:00', fromDeg: 20, speed: 3 },
  { time: '2027-06-19T18:00:00-02:00', fromDeg: 190, speed: 8, gust: 7 },
  { time: '2027-06-19T18:00:00-02:00', fromDeg: 200, speed: 10, gust: 13 },
  { time: '2027-06-20T12:00:00-02:00', fromDeg: 90, speed: 2 },
]);
const hours = [-8, -6, -5.5, -3, 0, 1, 3.2, 6, 6.5, 24, 25].map((hour) => noon + hour * 3600);

keeping('water', {
  'forces of wind': () => [
    BEAUFORT,
    range(0, 40, 41).map(beaufortOf),
    [-1, 0, 0.4, 1, 3.6, 7, 12, 13].map(beaufortMiddle),
    [0, 2, 5, 9, 20].map(oneForceMore),
  ],
  clocks: () => [
    ['2027-06-19T12:00:00-02:30', '2027-06-19T12:00:00Z', '2027-01-01T00:00:00+14:00'].map((time) => [
      secondsOf(time),
      offsetOf(time),
      timeAt(secondsOf(time) + 0.6, offsetOf(time)),
      dayStart(secondsOf(time), offsetOf(time)),
    ]),
    localTime('2027-03-28', '02:30', 'Europe/Berlin'),
    localTime('2027-10-31', '02:30', 'Europe/Berlin'),
    localTime('2027-07-31', '12:30:15', 'Europe/Berlin'),
    localTime('2027-07-31', '25:30', 'Europe/Berlin'),
    localTime('2027-02-31', '12:30', 'Europe/Berlin'),
    localTime('2027-07-31', '12:30', 'Nowhere/At all'),
    [zoneOffset(noon, 'America/St_Johns'), zoneOffset(noon, 'Nowhere/At all')],
  ],
  'waves on a stream': () => [
    [1.5, 3, 6].flatMap((period) => [-3, -1, -0.5, 0, 0.8, 2].map((along) => wavesOnStream(period, along))),
    [0, 40, 44, 46, 90, 180].flatMap((apart) =>
      [0, 0.4, 1, 1.6, 3].map((rate) =>
        windAgainstStream({ fromDeg: 200, speed: 8 }, { setDeg: 200 + apart, rate }, { height: 0.45, period: 2.4 }),
      ),
    ),
    windAgainstStream({ fromDeg: 200, speed: 8 }, { setDeg: 200, rate: 1 }, { height: 0, period: 0 }),
    [2, 5].map(deepWaterWave),
    heightsMet(0.6),
  ],
  daylight: () =>
    [
      [46, -32],
      [70, 20],
      [0, 179],
      [-52, -179.5],
      [63, 25],
    ].flatMap(([lat = 0, lon = 0]) =>
      ['2027-06-21', '2027-12-21', '2027-03-20'].map((day) => {
        const at = secondsOf(`${day}T12:00:00Z`);
        return [
          daylightOn({ lat, lon }, at, Math.round(lon / 15) * 3600),
          [0, 3, 7, 10].flatMap((from) =>
            [1, 5, 9].map((length) =>
              lightOfTrip(
                { lat, lon },
                { departure: at + from * 3600 - lon * 240, home: at + (from + length) * 3600 - lon * 240 },
              ),
            ),
          ),
          lightOfTrip({ lat, lon }, { departure: at, home: at + 3600 }, 0).answer,
        ];
      }),
    ),
  'waves by the wind': () =>
    [2, 5, 9, 15].flatMap((wind) =>
      [0, 300, 2500, 20000].map((fetch) => [
        windSea({ wind, fetch }),
        windSea({ wind, fetch, duration: 2400 }),
        windSea({ wind, fetch, depth: 2 }),
        manualWaves(wind, fetch, 3000),
        bretschneiderWaves(wind, fetch, 1.5),
        northSeaWaves(wind, fetch, 3000),
        timeToFetchLimit(wind, fetch),
        fetchOfTime(wind, 2400),
      ]),
    ),
  'winds of other durations, and swell': () => [
    averagedWind(10, 3600, 600),
    averagedWind(10, 600, 3600),
    averagedWind(10, 7200, 100000),
    averagedWind(10, 1, 600),
    withSwell(0.3, 0.4),
    manualWaves(0, 500),
    windSea({ wind: 0, fetch: 500 }),
  ],
  tides: () => {
    const found = harmonicTide(station, span);
    if (!found.ok) return found;
    const { heightAt, turns } = found.value;
    return [
      turns,
      range(span.from - 3600, span.to + 3600, 20).map(heightAt),
      meanRanges(station),
      range(noon - DAY, noon + DAY, 9).map((at) =>
        tideOfDay(turns, at, { port: 'Here', ...meanRanges(station), offset: -7200 }),
      ),
      depthWindows(heightAt, { dries: 1.2, depth: 0.8 }, span),
      depthWindows(heightAt, { dries: -6, depth: 0.8 }, { from: span.from - 9000, to: noon }),
      range(turns[0]!.at - 9000, turns.at(-1)!.at + 9000, 9).map(heightByTurns(turns.toReversed())),
      heightByTurns([])(0),
    ];
  },
  'tides of real stations, and of none': () => [
    others.slice(0, 3).map((one) => {
      const found = harmonicTide(one, { from: noon, to: noon + DAY });
      return [found.ok ? found.value.turns : found, meanRanges(one)];
    }),
    harmonicTide(station, { from: 9, to: 9 }),
    harmonicTide(station, { from: 0, to: 400 * DAY }),
    harmonicTide({ ...station, constituents: [] }, span),
    harmonicTide({ ...station, constituents: [{ name: 'ODD', amplitude: 1, phaseDeg: 0 }] }, span),
  ],
  'the height by a high water': () => {
    const at = range(secondsOf(SPRINGS.highWater) - 50000, secondsOf(SPRINGS.highWater) + 50000, 13);
    return [
      at.map(heightByHighWater(SPRINGS)),
      heightByHighWater({ ...SPRINGS, highWaterHeight: undefined } as typeof SPRINGS)(at[0]!),
    ];
  },
  'rules of the tide': () => [
    range(-0.1, 1.1, 13).map((share) => [twelfths(share), fiftyNinety(share), heightBetween(1, 4, share)]),
    [1, 1.9, 3, 4, 5, 0.2].map((day) =>
      rateOfRange(day, { neapRate: 0.4, springRate: 1.2, neapRange: 1.9, springRange: 4 }),
    ),
    rateOfRange(3, { neapRate: 1, springRate: 2, neapRange: 4, springRange: 4 }),
  ],
  'streams of the estuary': () => streams(haven().streams),
  'streams guessed and cut short': () => [
    guessed,
    streams([guessed, short]),
    streams([{ ...short, lat: 46.9 }]),
    streams([]),
    streams([guessed], { ...SPRINGS, meanNeapRange: 4 }),
  ],
  'a stream asked for by name': () => {
    const table = streamTable([guessed, short], SPRINGS);
    return ['Guessed', 'Nowhere'].map((name) => {
      const reach = reachOfNamed(table, { lat: 46, lon: -32 }, name);
      return reach.reached ? reach.near.map(({ distance, others: names }) => [distance, names]) : reach;
    });
  },
  'wind by the hour': () => [
    hours.map((at) => windAt(forecast, at)),
    hours.map((at) => windAt(windTable([]), at).known),
    hours.map((at) => [
      strongestWind(forecast, at, at + 5 * 3600),
      strongestWind(forecast, at, at),
      meanWindBefore(forecast, at, 3 * 3600),
    ]),
  ],
  'wind ahead': () => [
    headwind('calm', 30),
    [0, 45, 90, 200].map((course) => headwind({ fromDeg: 20, speed: 7 }, course)),
  ],
  'seas and speeds in them': () => [
    [0, 0.05, 0.1, 0.3, 0.5, 0.9, 1.25, 3, 20].map((height) => [seaStateOf(height), oneUp(seaStateOf(height)).code]),
    range(0, 1.4, 15).map((height) => planingSpeedKept(height, 3.6)),
    seaLimits(4.2),
  ],
});
