import fleetJson from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import { areaWaters } from '../../../src/core/hire/area-waters.ts';
import { asLeft } from '../../../src/core/hire/as-left.ts';
import { type CheckAsked, checkHire } from '../../../src/core/hire/check-hire.ts';
import { deskFindings, deskVerdict } from '../../../src/core/hire/desk-findings.ts';
import { deskTrials, fuelNote } from '../../../src/core/hire/hire-refill.ts';
import { hireState, nextChange, outFirst } from '../../../src/core/hire/hire-state.ts';
import { departed, dueBack, fleetEnd, slipEnd } from '../../../src/core/hire/hire-times.ts';
import { hireCraft, hireTrip } from '../../../src/core/hire/hire-trip.ts';
import { conditionsNow, morningHolds } from '../../../src/core/hire/morning-now.ts';
import type { Fleet, HireBoat } from '../../../src/core/hire/shapes.ts';
import { toldOf } from '../../../src/core/hire/told-of.ts';
import { calibrated } from '../../../src/core/trials/calibrated.ts';
import { fitTrials } from '../../../src/core/trials/fit.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { haven } from '../../trips.ts';
import { aHire, aMorning, NOON, OFFSET } from '../hire/examples.ts';
import { digest } from './digest.ts';
import { keeping } from './keeping.ts';
import { sample } from './made-evidence.ts';

const fleet = fleetJson as unknown as Fleet;
const [open, catamaran, launch] = fleet.boats as readonly [HireBoat, HireBoat, HireBoat];
const measured: HireBoat = {
  id: 'measured',
  name: 'Measured',
  speed: 6,
  plate: 'none',
  profile: { format: 'homeleg-profile', version: 1, name: 'Measured', usual: sample.setups[0]!.id, trials: sample },
};

const asked: CheckAsked = {
  boat: open,
  weights: [84, 70, 38],
  fill: 0.8,
  fillKnownBy: 'gauge',
  route: fleet.routes[0],
  rule: { kind: 'after', seconds: 3 * 3600 },
  experience: 'some',
  fleet,
  morning: aMorning({ lastReturn: NOON + 6 * 3600 }),
  now: NOON,
  offset: OFFSET,
  boatOut: false,
  waters: haven(),
  reserve: [{ kind: 'thirds' }],
  measured: (trip) => trip,
};

const fitted = (trip: Trip): Trip =>
  trip.trials ? { ...trip, craft: calibrated(trip.craft, trip.trials, fitTrials(trip.trials), '2027-06-19') } : trip;

function check(change: Partial<CheckAsked>): unknown {
  const found = checkHire({ ...asked, ...change });
  if (!found.ok) return found;
  const { plan, trip, waters, ...rest } = found.value;
  return {
    ...rest,
    plan: digest(plan),
    route: trip.route.waypoints,
    policy: trip.policy,
    load: trip.load,
    waters: waters?.bounds,
    told: toldOf(found.value, ['One line.'], 0.4),
  };
}

const back = (used: 'as-planned' | 'unknown' | { running: number }, amount?: number) =>
  aHire({
    leftAt: NOON + 300,
    due: NOON + 7500,
    returnedAt: NOON + 7000,
    back: { used, ...(amount !== undefined && { amount }) } as NonNullable<ReturnType<typeof aHire>['back']>,
  });
const planned = [
  { speed: 3, seconds: 3000 },
  { speed: 0, seconds: 600 },
];

keeping('hire', {
  'a set route': () => check({}),
  'a set route with a new hirer in a fresh wind': () =>
    check({
      experience: 'new',
      morning: aMorning({
        conditions: {
          water: 'sea',
          wind: { fromDeg: 200, speed: 6 },
          stream: { setDeg: 90, rate: 0.4 },
          sea: { height: 0.35 },
        },
      }),
    }),
  'hours only': () => check({ boat: catamaran, route: undefined, weights: [90, 85], fillKnownBy: 'measured' }),
  'hours only in a launch, back by a time': () =>
    check({
      boat: launch,
      route: undefined,
      weights: [70, 60, 50, 20],
      rule: { kind: 'at', time: NOON + 5400 },
      experience: 'used',
      fill: 1,
    }),
  'hours only, no area named': () => check({ route: undefined, fleet: { ...fleet, area: undefined, at: undefined } }),
  'a measured boat, nothing set this morning': () =>
    check({ boat: measured, morning: undefined, fill: undefined, measured: fitted, route: fleet.routes[1] }),
  'a boat that is out, near the end of the day': () =>
    check({ boatOut: true, now: NOON + 11.8 * 3600, morning: aMorning({ until: NOON + 2 * 3600 }) }),
  'a fleet not looked over yet': () => check({ fleet: { ...fleet, surveyed: '2027-07-01' } }),
  findings: () =>
    [
      {
        now: NOON,
        allowed: 0,
        boatOut: true,
        morning: undefined,
        routeSet: false,
        fleet: { ...fleet, area: undefined },
      },
      {
        now: NOON + 20 * 3600,
        allowed: 10,
        boatOut: false,
        morning: aMorning(),
        routeSet: true,
        fleet: { ...fleet, until: '2027-06-18' },
      },
      { now: NOON, allowed: 10, boatOut: false, morning: aMorning(), routeSet: true, fleet },
    ].map((situation) => {
      const found = deskFindings({ ...situation, offset: OFFSET });
      return [found, (['go', 'marginal', 'no-go'] as const).map((verdict) => deskVerdict(verdict, found))];
    }),
  'states of hires by the clock': () => {
    const out = aHire({ leftAt: NOON, due: NOON + 7200 });
    const hires = [aHire(), out, aHire({ id: 'h2', leftAt: NOON - 100, due: NOON + 600 }), back('as-planned', 3)];
    const times = [-1, 0, 1800, 1801, 6300, 6301, 7199, 7200, 8999, 9000, 10800, 20000].map((after) => NOON + after);
    return [
      times.map((now) => hires.map((hire) => hireState(hire, now))),
      times.map((now) => nextChange(hires, now)),
      outFirst(hires).map(({ id }) => id),
    ];
  },
  'times of hires': () => [
    dueBack({ kind: 'after', seconds: 3600 }, NOON, undefined),
    dueBack({ kind: 'after', seconds: 3600 }, NOON, NOON + 1800),
    dueBack({ kind: 'at', time: NOON + 900 }, NOON, NOON + 1800),
    [
      undefined,
      aMorning(),
      aMorning({ until: NOON + 60 }),
      aMorning({ until: NOON - 60 }),
      aMorning({ lastReturn: NOON + 30 }),
      aMorning({ lastReturn: NOON - 30 }),
    ].map((morning) => [NOON + 86399, NOON + 100].map((dayEnd) => slipEnd({ now: NOON, morning, fleet, dayEnd }))),
    [
      departed(aHire(), NOON + 1800)?.due,
      departed(aHire(), NOON + 1801)?.due,
      departed(aHire({ leftAt: NOON }), NOON)?.due,
      departed(aHire({ lastReturn: NOON + 4000 }), NOON)?.due,
    ],
    fleetEnd(fleet, OFFSET),
  ],
  'trips of hires': () => [
    hireTrip({
      boat: catamaran,
      weights: [80, 44, 45, 30, 90, 100, 60, 61],
      fill: undefined,
      fillKnownBy: undefined,
      route: undefined,
      timeAllowed: 7200,
      conditions: { water: 'sea' },
      policy: { reserve: [], manoeuvring: 300 },
    }),
    hireTrip({
      boat: launch,
      weights: [80],
      fill: 1,
      fillKnownBy: 'measured',
      route: fleet.routes[1],
      timeAllowed: 7200,
      conditions: { water: 'fresh' },
      policy: { reserve: [], timeAllowed: 5000 },
      waters: 'haven',
      start: { lat: 1, lon: 2 },
    }).policy,
    hireTrip({
      boat: open,
      weights: [],
      fill: 1,
      fillKnownBy: 'measured',
      route: undefined,
      timeAllowed: undefined,
      conditions: { water: 'fresh' },
      policy: { reserve: [] },
    }).route,
    hireCraft(measured).drive.name,
  ],
  'as it was left': () => [
    asLeft(aHire({ leftAt: NOON + 900, due: NOON + 8000 }), OFFSET).conditions.departure,
    asLeft(
      aHire({
        leftAt: NOON + 900,
        due: NOON + 1000,
        trip: { ...aHire().trip, policy: { reserve: [], timeAllowed: 9000 } },
      }),
      OFFSET,
    ).policy,
    asLeft(
      aHire({
        leftAt: NOON + 900,
        due: NOON + 3000,
        trip: { ...aHire().trip, policy: { reserve: [], timeAllowed: 9000 }, conditions: { water: 'sea' } },
      }),
      OFFSET,
    ).policy,
    asLeft(aHire(), OFFSET).policy,
  ],
  'notes of fuel and what they make of a boat': () => {
    const notes = [
      back('as-planned', 3),
      back({ running: 4000 }, 2.5),
      back({ running: 0 }, 2),
      back('unknown', 2),
      back('as-planned'),
    ].map((hire) => fuelNote(hire, open, { day: '2027-06-19', planned }));
    const known = notes.flatMap((note) => note ?? []);
    return [
      notes,
      deskTrials(open, known, 'sea')?.refills.length,
      deskTrials(launch, known, 'sea'),
      deskTrials(measured, [], 'sea')?.runs.length,
      deskTrials(
        measured,
        known.map((note) => ({ ...note, boatId: 'measured' })),
        'sea',
      )?.refills.length,
    ];
  },
  'the morning now': () =>
    [-4, -3, 0, 11, 12].map((hours) => [
      morningHolds(aMorning(), NOON + hours * 3600),
      conditionsNow(aMorning(), NOON + hours * 3600),
      conditionsNow(undefined, NOON),
    ]),
  'waters about a desk': () =>
    [
      { lat: 46, lon: -32 },
      { lat: 84.9, lon: 179.99 },
      { lat: -84.9, lon: -179.99 },
    ].map((at) => areaWaters('About', at, { responsible: 'Nobody' }).bounds),
});
