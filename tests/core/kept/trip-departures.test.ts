import { depthHours } from '../../../src/core/trip/depth-hours.ts';
import { latestStart } from '../../../src/core/trip/latest-start.ts';
import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import { prepare } from '../../../src/core/trip/prepare.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { startsOf, startTimes, thriftiestStart } from '../../../src/core/trip/start-times.ts';
import { secondsOf, timeAt } from '../../../src/core/water/clock.ts';
import { zoneOffset } from '../../../src/core/water/local-time.ts';
import { haven } from '../../trips.ts';
import { SPRINGS } from '../trip/day-on-the-water.ts';
import { keeping } from './keeping.ts';
import { at, byHour, conditions, madeTrips, OFFING, petrolTrip, route, thirds, tidal } from './made-trips.ts';
import { slowFigures } from './slow-figures.ts';

const short = [at(45.985, -32.07), at(45.97, -32.06)];
const byTide = petrolTrip({
  route: route('out-and-home', short, 4),
  conditions: { ...tidal, wind: byHour([3, 3, 4, 6, 9, 11, 8, 5, 4]) },
});
const evening = petrolTrip({
  route: route('out-and-home', short, 3),
  conditions: conditions({ departure: '2027-06-19T17:00:00-02:00' }),
  policy: { ...thirds, timeAllowed: 9000 },
});
const overBar = madeTrips['over the bar near low water']!;

function latest(trip: Trip): unknown {
  const plan = planTrip(trip, haven(), { quick: true });
  if (!plan.ok) return plan;
  const steps = latestStart(trip, haven(), plan.value);
  for (let asked = 0; ; asked++) {
    const step = steps.next();
    if (step.done) return { asked, found: step.value };
  }
}

function starts(trip: Trip, ...day: [Parameters<typeof startTimes>[2]?]): unknown {
  const all = [...startTimes(trip, haven(), day[0])];
  const lines = all.map(({ departure, verdict, need, left, time, reason, dark, tide }) =>
    [
      departure.slice(8, 19),
      verdict,
      need.toPrecision(8),
      left.toPrecision(8),
      time.toPrecision(8),
      reason?.code,
      dark,
      tide?.range,
    ].join(' '),
  );
  return {
    lines: lines.filter((_, i) => i % 3 === 0),
    all: all.map(({ need }) => need),
    thriftiest: thriftiestStart(all),
  };
}

/** On the day of the trips and the next, every few hours. */
const timeOf = (hour: number) => timeAt(secondsOf('2027-06-19T00:00:00-02:00') + hour * 3600, -7200);

const heights = { ...SPRINGS, range: 3, highWaterHeight: 4.1 };

keeping('trip-departures', {
  'how far a trip by the tide may shift': () => slowFigures(byTide, true),
  'how far an evening trip may shift': () => slowFigures(evening, true),
  'how far a trip over the bar may shift': () => slowFigures(overBar, true),
  'how late a trip by the tide may begin': () => latest(byTide),
  'how late an evening trip may begin': () => latest(evening),
  'how late a trip with a forecast and one stream may begin': () =>
    latest(
      petrolTrip({ route: route('out-and-home', short, 5), conditions: conditions({ wind: byHour([2, 3, 3, 2, 3]) }) }),
    ),
  'how late a short trip may begin on a long fair day': () =>
    latest(
      petrolTrip({
        route: route('out-and-home', [at(45.972, -32.07), at(45.97, -32.07)], 3),
        conditions: {
          ...tidal,
          departure: '2027-06-19T06:30:00-02:00',
          wind: {
            forecast: Array.from({ length: 15 }, (_, i) => 3 * i).map((hour) => ({
              time: timeOf(hour),
              fromDeg: 240,
              speed: 1.5,
            })),
          },
          sea: { swell: 0 },
        },
      }),
    ),
  'how late a trip without a departure may begin': () =>
    latest(petrolTrip({ conditions: conditions({ departure: undefined }) })),
  'every half hour by the tide': () => starts(byTide),
  'every half hour over the bar, the tide worked out for each': () =>
    starts(overBar, { tideAt: (seconds) => (seconds > secondsOf('2027-06-19T14:00:00-02:00') ? heights : undefined) }),
  'half hours of a day whose clock is changed': () => [
    startsOf('2027-03-28T10:00:00+01:00', (seconds) => zoneOffset(seconds, 'Europe/Berlin') ?? 0),
    startsOf('2027-10-31T10:00:00+01:00', (seconds) => zoneOffset(seconds, 'Europe/Berlin') ?? 0).length,
    startsOf('2027-10-31T10:00:00-02:30').length,
  ],
  'hours with depth on the way and at landings': () => {
    const span = { from: secondsOf('2027-06-19T02:00:00-02:00'), to: secondsOf('2027-06-19T23:00:00-02:00') };
    return [
      depthHours(prepare(overBar, haven()), span),
      depthHours(prepare(petrolTrip({ route: route('out-and-home', OFFING, 5) }), haven()), span),
    ];
  },
});
