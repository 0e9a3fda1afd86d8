import type { Curve, CurvePoint, Regime } from '../../../src/core/curve/shapes.ts';
import type { LegPlan, Plan, Reason } from '../../../src/core/trip/shapes.ts';
import { PETROL_DENSITY } from '../../../src/core/units/constants.ts';
import { KNOT, NAUTICAL_MILE, WATT_HOUR } from '../../../src/core/units/convert.ts';

/** Invented plans and curves of boats that do not exist, consistent in themselves. Nothing here comes from the core. */

export const litre = (litres: number): number => litres * PETROL_DENSITY;
const wattHours = (wh: number): number => wh * WATT_HOUR;

export interface Sketch {
  readonly store?: 'fuel' | 'charge';
  /** Litres or watt-hours. */
  readonly full: number;
  readonly usable: number;
  readonly reserve: number;
  readonly manoeuvring: number;
  readonly band: readonly [number, number];
  /** NM out, each stretch; home is the same backwards unless `oneWay`. */
  readonly out: readonly number[];
  readonly perMile: readonly [out: number, home: number];
  readonly speedKn: number;
  readonly oneWay?: boolean;
  readonly more?: Partial<Plan>;
}

function sketchPlan(sketch: Sketch): Plan {
  const store = sketch.store ?? 'fuel';
  const amount = store === 'fuel' ? litre : wattHours;
  const usable = amount(sketch.usable);
  const speed = sketch.speedKn * KNOT;
  const manoeuvring = amount(sketch.manoeuvring);
  const [wantOut, wantHome] = sketch.perMile;
  const stretches = [
    ...sketch.out.map((miles) => ({ part: 'out' as const, miles, use: amount(miles * wantOut) })),
    ...(sketch.oneWay ? [] : sketch.out.toReversed()).map((miles) => ({
      part: 'home' as const,
      miles,
      use: amount(miles * wantHome),
    })),
  ];
  const need = manoeuvring + stretches.reduce((sum, leg) => sum + leg.use, 0);
  const [low, high] = sketch.band;
  let used = manoeuvring / 2;
  let startsAt = 450;
  const legs = stretches.map(({ part, miles, use }, i): LegPlan => {
    const trackDeg = (part === 'out' ? 62 + i * 9 : 242 + i * 9) % 360;
    const needFromHere = need - used;
    used += use;
    const leg: LegPlan = {
      leg: i,
      from: { lat: 10 + i * 0.01, lon: 20 },
      to: { lat: 10.01 + i * 0.01, lon: 20 },
      part,
      distance: miles * NAUTICAL_MILE,
      trackDeg,
      steerDeg: (trackDeg + 4) % 360,
      speedThroughWater: speed,
      speedOverGround: speed * (part === 'out' ? 1.05 : 0.93),
      time: (miles * NAUTICAL_MILE) / (speed * (part === 'out' ? 1.05 : 0.93)),
      use,
      flow: use / ((miles * NAUTICAL_MILE) / speed),
      rpm: store === 'fuel' ? 4150 : 1380,
      throttle: 0.62,
      trimDeg: 4.1,
      regime: speed > 5 ? 'planing' : 'displacement',
      left: { low: usable - used * high, median: usable - used, high: usable - used * low },
      needFromHere,
      startsAt,
      stop: i === sketch.out.length - 1 && !sketch.oneWay ? 1800 : 0,
      headwind: 2,
      waveHeight: 0.1,
    };
    startsAt += leg.time + leg.stop;
    return leg;
  });
  const needOut = legs.reduce((sum, leg) => sum + (leg.part === 'out' ? leg.use : 0), 0);
  const distance = legs.reduce((sum, leg) => sum + leg.distance, 0);
  const distanceOut = legs.reduce((sum, leg) => sum + (leg.part === 'out' ? leg.distance : 0), 0);
  return {
    verdict: 'go',
    reasons: [],
    store,
    usable,
    full: amount(sketch.full),
    reserve: amount(sketch.reserve),
    reserveRule: { kind: 'thirds' },
    need: { low: need * low, median: need, high: need * high },
    need95: need * (1 + (high - 1) * 1.28),
    needOut,
    needHome: need - needOut - manoeuvring,
    manoeuvring,
    left: { low: usable - need * high, median: usable - need, high: usable - need * low },
    probability: 0.96,
    badCase: {
      kinds: ['home-slow', 'wind-fresher'],
      need: usable * 0.89,
      left: usable * 0.11,
      time: startsAt * 1.9,
    },
    distance,
    distanceOut,
    time: startsAt,
    legs,
    turnBack: {
      distance: distanceOut * 1.18,
      time: startsAt * 0.52,
      at: { lat: 10.04, lon: 20.02 },
      onRoute: false,
    },
    halfway: { distance: distance / 2, time: startsAt / 2, at: { lat: 10.03, lon: 20 }, onRoute: true },
    range: { oneWay: 19.4 * NAUTICAL_MILE, outAndHome: 9.3 * NAUTICAL_MILE },
    balance: {
      allUpMass: 412,
      lcg: 1.31,
      lcgShare: 0.42,
      lateral: 0.03,
      counted: 242,
      vcg: 0.4,
      persons: 2,
      peopleAndGear: 198,
      airArea: 1.1,
    },
    payload: { extra: 64, binds: 'planing', counted: 242, allowed: 480 },
    tipping: [
      { knob: 'crew-mass', from: 'go', to: 'marginal', value: 262, now: 198, direction: 'up' },
      { knob: 'consumption', from: 'go', to: 'marginal', value: 1.14, now: 1, direction: 'up' },
      { knob: 'wind', from: 'go', to: 'marginal', value: 9.2, now: 4.5, direction: 'up' },
      { knob: 'fill', from: 'go', to: 'marginal', value: 0.82, now: 0.95, direction: 'down' },
    ],
    fillNeeded: 0.82,
    assumptions: [
      { code: 'manoeuvring', measure: 'time', value: 450 },
      { code: 'drawn-factor', value: 1.05 },
      { code: 'fill-gauge', measure: 'share', value: 0.1 },
      { code: 'unmeasured-boat' },
      { code: 'petrol-density' },
    ],
    ...sketch.more,
  };
}

/** Two aboard, a full small tank, a bay and back. */
export const go = sketchPlan({
  full: 12,
  usable: 10.8,
  reserve: 3.6,
  manoeuvring: 0.3,
  band: [0.87, 1.16],
  out: [1.2, 3.1, 2.4, 1.1],
  perMile: [0.385, 0.461],
  speedKn: 12,
  more: {
    reasons: [
      { code: 'plate-unknown', level: 'note', fixes: [{ code: 'read-plate' }] },
      { code: 'rough', level: 'note', measure: 'length', value: 0.35, limit: 0.4, legs: [4, 5] },
    ],
  },
});

/** The same boat with a tank two thirds full and no word of the stream. */
export const marginal = sketchPlan({
  full: 12,
  usable: 8.1,
  reserve: 2.7,
  manoeuvring: 0.3,
  band: [0.82, 1.22],
  out: [1.2, 2.6, 1.7],
  perMile: [0.39, 0.47],
  speedKn: 12,
  more: {
    verdict: 'marginal',
    probability: 0.81,
    reasons: [
      { code: 'wind-unknown', level: 'note', fixes: [{ code: 'give-value' }] },
      {
        code: 'bad-case-dry',
        level: 'marginal',
        measure: 'amount',
        value: litre(8.4),
        limit: litre(8.1),
        name: 'home-slow wind-fresher home-foul-stream',
        fixes: [
          { code: 'add-fuel', measure: 'amount', value: litre(9.6) },
          { code: 'shorten-route', measure: 'distance', value: 9.6 * NAUTICAL_MILE },
        ],
      },
      { code: 'stream-unknown', level: 'marginal', fixes: [{ code: 'give-value' }] },
    ],
    badCase: {
      kinds: ['home-slow', 'wind-fresher', 'home-foul-stream'],
      need: litre(8.4),
      left: litre(-0.3),
      time: 4.4 * 3600,
    },
    turnBack: { distance: 5.1 * NAUTICAL_MILE, time: 1700, at: { lat: 10.04, lon: 20.02 }, onRoute: true },
    payload: { extra: undefined, binds: 'no-plate', counted: 242 },
    fillNeeded: 0.87,
  },
});

const NO_GO: readonly Reason[] = [
  {
    code: 'reserve-broken',
    level: 'no-go',
    measure: 'amount',
    value: litre(1.9),
    limit: litre(3.6),
    fixes: [
      { code: 'shorten-route', measure: 'distance', value: 13.4 * NAUTICAL_MILE },
      { code: 'slow-down', measure: 'speed', value: 9 * KNOT },
      { code: 'add-fuel', measure: 'amount', value: litre(13.3) },
    ],
  },
  {
    code: 'over-plate-load',
    level: 'no-go',
    measure: 'mass',
    value: 512,
    limit: 480,
    fixes: [{ code: 'leave-behind', measure: 'mass', value: 32 }],
  },
  {
    code: 'crosses-land',
    level: 'no-go',
    name: 'Low Holm',
    legs: [2],
    fixes: [{ code: 'draw-round' }],
  },
  { code: 'temperature-unknown', level: 'note' },
];

/** Further out and heavier: the reserve is eaten into. */
export const noGo = sketchPlan({
  full: 12,
  usable: 10.8,
  reserve: 3.6,
  manoeuvring: 0.3,
  band: [0.85, 1.19],
  out: [1.2, 3.1, 2.4, 2.9],
  perMile: [0.42, 0.477],
  speedKn: 14,
  more: {
    verdict: 'no-go',
    probability: 0.06,
    reasons: NO_GO,
    badCase: { kinds: ['home-slow', 'wind-fresher'], need: Infinity, left: -Infinity, time: Infinity },
    payload: { extra: -32, binds: 'plate', counted: 512, allowed: 480 },
    fillNeeded: undefined,
    turnBack: { distance: 7.9 * NAUTICAL_MILE, time: 2100, at: { lat: 10.04, lon: 20.02 }, onRoute: true },
  },
});

/** A displacement launch on a lake, battery at 90 %. */
export const electric = sketchPlan({
  store: 'charge',
  full: 5200,
  usable: 4160,
  reserve: 1390,
  manoeuvring: 60,
  band: [0.84, 1.2],
  out: [0.8, 1.9, 1.3],
  perMile: [255, 275],
  speedKn: 4.5,
  more: {
    badCase: { kinds: ['home-headwind', 'cold-battery'], need: wattHours(3300), left: wattHours(860), time: 9200 },
    assumptions: [
      { code: 'battery-temperature', name: 'lake', value: 10 },
      { code: 'reserve-rule' },
      { code: 'stream', measure: 'speed', value: 0.25 },
    ],
    range: { oneWay: Infinity, outAndHome: 5.4 * NAUTICAL_MILE },
  },
});

/** Far more than the tank holds. */
export const overflow = sketchPlan({
  full: 12,
  usable: 10.8,
  reserve: 3.6,
  manoeuvring: 0.3,
  band: [0.84, 1.2],
  out: [2.2, 4.1, 3.4, 4.4],
  perMile: [0.43, 0.52],
  speedKn: 14,
  more: {
    verdict: 'no-go',
    probability: 0,
    reasons: [
      {
        code: 'runs-dry',
        level: 'no-go',
        measure: 'amount',
        value: litre(16.4),
        limit: litre(10.8),
        fixes: [{ code: 'shorten-route', measure: 'distance', value: 15 * NAUTICAL_MILE }],
      },
    ],
    badCase: { kinds: ['home-slow'], need: litre(19), left: litre(-8.2), time: 20000 },
    payload: { extra: undefined, binds: 'no-plate', counted: 242 },
  },
});

/** Two hundred stretches with speed limits in between. */
export const manyLegs = sketchPlan({
  full: 25,
  usable: 23,
  reserve: 7.7,
  manoeuvring: 0.4,
  band: [0.88, 1.14],
  out: Array.from({ length: 100 }, (_, i) => 0.05 + ((i * 37) % 11) * 0.018),
  perMile: [0.42, 0.48],
  speedKn: 12,
});

/** Nothing in the tank. */
export const dry = sketchPlan({
  full: 12,
  usable: 0,
  reserve: 0,
  manoeuvring: 0.3,
  band: [0.9, 1.1],
  out: [1.2, 3.1],
  perMile: [0.4, 0.4],
  speedKn: 12,
  more: { verdict: 'no-go', probability: 0, reasons: [{ code: 'nothing-usable', level: 'no-go' }] },
});

/** A stream that lets nobody home. */
export const stuck: Plan = {
  ...go,
  verdict: 'no-go',
  probability: 0,
  need: { low: Infinity, median: Infinity, high: Infinity },
  need95: Infinity,
  needHome: Infinity,
  left: { low: -Infinity, median: -Infinity, high: -Infinity },
  time: Infinity,
  badCase: { kinds: ['home-slow', 'home-foul-stream'], need: Infinity, left: -Infinity, time: Infinity },
  range: { oneWay: 0, outAndHome: 0 },
  turnBack: undefined,
  halfway: undefined,
  fillNeeded: undefined,
  legs: go.legs.map((leg, i) =>
    i < 5
      ? leg
      : {
          ...leg,
          use: Infinity,
          time: Infinity,
          speedOverGround: 0,
          startsAt: i === 5 ? leg.startsAt : Infinity,
          needFromHere: Infinity,
          left: { low: -Infinity, median: -Infinity, high: -Infinity },
        },
  ),
  reasons: [
    { code: 'stuck-in-stream', level: 'no-go', legs: [5], fixes: [{ code: 'wait', measure: 'time', value: 7200 }] },
  ],
};

/** A ferry trip that ends elsewhere, from a quarter-full big tank. */
export const oneWay = sketchPlan({
  full: 24,
  usable: 6,
  reserve: 2,
  manoeuvring: 0.3,
  band: [0.86, 1.16],
  out: [1.5, 2.5, 2.2],
  perMile: [0.45, 0.45],
  speedKn: 12,
  oneWay: true,
});

/** Drag of an invented small planing boat as litres per mile: high at idle, low before the hump, a hump, then a dip. */
function point(speedKn: number, litresPerMile: number, spread: number, held: boolean): CurvePoint {
  const speed = speedKn * KNOT;
  const perMetre = litre(litresPerMile) / NAUTICAL_MILE;
  const band = { low: perMetre / (1 + spread), median: perMetre, high: perMetre * (1 + spread) };
  const regime: Regime = speedKn < 5 ? 'displacement' : speedKn < 9.5 ? 'hump' : 'planing';
  return {
    speed,
    resistance: 300,
    power: 4000,
    rpm: 1200 + speedKn * 195,
    throttle: Math.min(speedKn / 23, 1),
    flow: { low: band.low * speed, median: perMetre * speed, high: band.high * speed },
    perMetre: band,
    trimDeg: 1.2 + 5 * Math.exp(-(((speedKn - 8) / 3) ** 2)) + 1.6 / (1 + Math.exp(-(speedKn - 11))),
    slip: 0.2,
    regime,
    held,
  };
}

function perMileAt(kn: number): number {
  const idle = 0.28 / kn;
  const wave = 0.38 * Math.exp(-(((kn - 7.8) / 2.1) ** 2));
  return 0.08 + idle + 0.006 * kn + wave + 0.11 / (1 + Math.exp(-(kn - 7.5) * 1.3)) + 0.00042 * kn ** 2;
}

function best(kn: number) {
  const perMetre = point(kn, perMileAt(kn), 0.14, true).perMetre;
  return {
    speed: kn * KNOT,
    perMetre,
    range: litre(10.8) / perMetre.median,
    endurance: litre(10.8) / perMetre.median / (kn * KNOT),
  };
}

export const planingCurve: Curve = {
  store: 'fuel',
  points: Array.from({ length: 60 }, (_, i) => 0.8 + i * 0.42).map((kn) => point(kn, perMileAt(kn), 0.14, kn <= 21.4)),
  topSpeed: { low: 20.1 * KNOT, median: 21.4 * KNOT, high: 22.6 * KNOT, limit: 'power', reached: true },
  stuckSpeed: undefined,
  humpSpeed: 7.8 * KNOT,
  humpMargin: 1.35,
  planingSpeed: 9.5 * KNOT,
  bestDisplacement: best(3.9),
  bestPlaning: best(12.6),
  idleFlow: litre(0.5) / 3600,
};

/** Too heavy for its engine: the hump stands in the way, what lies beyond is out of reach. */
export const stuckCurve: Curve = {
  ...planingCurve,
  points: planingCurve.points.map((p) => ({
    ...p,
    held: p.speed < 6.4 * KNOT || (p.speed > 9.8 * KNOT && p.speed < 15 * KNOT),
  })),
  topSpeed: { low: 13.9 * KNOT, median: 15 * KNOT, high: 16.2 * KNOT, limit: 'power', reached: false },
  stuckSpeed: 6.4 * KNOT,
  humpMargin: 0.93,
};

/** A launch that never planes, on a battery. */
function launchPoint(kn: number): CurvePoint {
  const watts = 45 + 11 * kn ** 2.6 * (1 + (kn / 6) ** 4);
  const speed = kn * KNOT;
  const flow = { low: watts * 0.84, median: watts, high: watts * 1.19 };
  return {
    speed,
    resistance: 100,
    power: watts * 0.6,
    rpm: 250 * kn,
    throttle: kn / 6,
    flow,
    perMetre: { low: flow.low / speed, median: watts / speed, high: flow.high / speed },
    trimDeg: 0.8 + kn * 0.2,
    slip: 0.3,
    regime: 'displacement',
    held: kn <= 5.6,
  };
}

const launchBest = launchPoint(1.55);

export const electricCurve: Curve = {
  store: 'charge',
  points: Array.from({ length: 40 }, (_, i) => launchPoint(0.5 + i * 0.15)),
  topSpeed: { low: 5.3 * KNOT, median: 5.6 * KNOT, high: 5.9 * KNOT, limit: 'battery', reached: true },
  stuckSpeed: undefined,
  humpSpeed: 6.5 * KNOT,
  humpMargin: 0.8,
  planingSpeed: undefined,
  bestDisplacement: {
    speed: launchBest.speed,
    perMetre: launchBest.perMetre,
    range: wattHours(4160) / launchBest.perMetre.median,
    endurance: wattHours(4160) / launchBest.flow.median,
  },
  bestPlaning: undefined,
  idleFlow: 12,
};
