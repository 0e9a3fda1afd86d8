import type { Plate } from '../craft/shapes.ts';
import type { Boat } from '../curve/boat.ts';
import { HUMP_MARGIN, marginOf } from '../curve/hump.ts';
import { steady } from '../curve/steady.ts';
import { hullFlags } from '../hull/flags.ts';
import { mayPorpoise } from '../hull/porpoising.ts';
import type { LoadBalance } from '../load/balance.ts';
import { plateFindings } from '../load/plate.ts';
import { GRAVITY } from '../units/constants.ts';
import { HELD_IN, heldProbability, humpVerdict } from './held.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';
import type { Reason, ReasonCode } from './shapes.ts';

/** Sideways offset of the centre of gravity over beam: target, clearly off, and past all care (common practice, no source). */
const LATERAL = { target: 0.05, off: 0.1, capsizing: 0.2 };

/**
 * Length Froude number above which a displacement hull needs more than this method says: a measured 5.2 m rowing boat
 * needed 1.4 times the power at 0.38 and 1.9 times at 0.42 (boatdesign.net report of July 2015).
 */
const HULL_SPEED = 0.35;

const PLATE_CODE = {
  load: 'over-plate-load',
  persons: 'over-plate-persons',
  power: 'over-plate-power',
  'engine-mass': 'over-plate-engine-mass',
} as const satisfies Record<string, ReasonCode>;
const PLATE_MEASURE = { load: 'mass', persons: 'count', power: 'power', 'engine-mass': 'mass' } as const;

/** What is asked of the boat, and the tightest speed on the way up to it with its margin. */
export interface Climbed {
  readonly asked: readonly Sailed[];
  readonly speed: number;
  readonly margin: number;
}

/** Reasons that lie in plate, balance, seats, and speeds the boat can or cannot hold. */
export function judgeBoat(prepared: Prepared, run: Run, balance: LoadBalance, climb: Climbed): readonly Reason[] {
  return [
    ...plateReasons(prepared, balance),
    ...speedReasons(prepared, run, climb.asked),
    ...humpReasons(climb),
    ...balanceReasons(prepared, balance),
    ...methodReasons(prepared, run),
  ];
}

function plateReasons(prepared: Prepared, balance: LoadBalance): Reason[] {
  const { craft } = prepared.trip;
  const reasons: Reason[] = plateFindings(craft, balance).map(({ over, value, limit }) => ({
    code: PLATE_CODE[over],
    level: 'no-go',
    measure: PLATE_MEASURE[over],
    value,
    limit,
    fixes:
      over === 'load'
        ? [{ code: 'leave-behind', measure: 'mass', value: value - limit }]
        : over === 'persons'
          ? [{ code: 'leave-behind', measure: 'count', value: value - limit }]
          : [{ code: 'smaller-engine' }],
  }));
  if (craft.hull.plate === 'none') reasons.push({ code: 'no-plate', level: 'marginal' });
  else if (!fullyRead(craft.hull.plate)) {
    reasons.push({ code: 'plate-unknown', level: 'marginal', fixes: [{ code: 'read-plate' }] });
  }
  return reasons;
}

/** Every plate names load and persons, an EU one the design category too. */
function fullyRead(plate: Plate | undefined): boolean {
  if (plate?.maxLoad === undefined || plate.persons === undefined) return false;
  return plate.scheme !== 'eu' || plate.category !== undefined;
}

function speedReasons(prepared: Prepared, run: Run, all: readonly Sailed[]): Reason[] {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const stuck = indices(run.sailed, (s) => !s.possible);
  const reasons: Reason[] = [];
  if (stuck.length > 0) {
    const first = run.sailed.find((s) => !s.possible)!;
    reasons.push({
      code: 'stuck-in-stream',
      level: 'no-go',
      legs: stuck,
      measure: 'speed',
      value: first.speed,
      at: first.stretch.from,
    });
  }
  const over = indices(all, (s) => marginOf(boat, s.afloat, s.steady.drive) < 1);
  if (over.length > 0) {
    const worst = most(all, (s) => -marginOf(boat, s.afloat, s.steady.drive));
    const limit = highestHeld(boat, worst);
    reasons.push({
      code: 'speed-not-held',
      level: 'no-go',
      measure: 'speed',
      value: worst.speed,
      limit,
      legs: over,
      fixes: [{ code: 'ease-speed', measure: 'speed', value: limit }],
    });
    return reasons;
  }
  const doubtful = indices(all, (s) => heldProbability(boat, s, prepared.remembered) < HELD_IN);
  if (doubtful.length > 0) {
    const worst = most(all, (s) => -heldProbability(boat, s, prepared.remembered));
    reasons.push({
      code: 'speed-uncertain',
      level: 'marginal',
      measure: 'speed',
      value: worst.speed,
      legs: doubtful,
      fixes: [{ code: 'ease-speed', measure: 'speed', value: Math.max(worst.speed * 0.9, prepared.displacementSpeed) }],
    });
  }
  return reasons;
}

/** Highest speed up to the wanted one that this stretch's load and weather allow, m/s. */
function highestHeld(boat: Boat, s: Sailed): number {
  let speed = s.speed;
  while (speed > 0.3 && marginOf(boat, s.afloat, steady(boat, s.afloat, speed, s.weather).drive) < 1) speed -= 0.1;
  return speed;
}

function humpReasons(hump: Climbed): Reason[] {
  const level = humpVerdict(hump.margin);
  if (level === 'go') return [];
  return [
    {
      code: level === 'no-go' ? 'hump-not-crossed' : 'hump-thin',
      level,
      measure: 'share',
      value: hump.margin,
      limit: HUMP_MARGIN,
      fixes: [
        { code: 'leave-behind' },
        { code: 'move-forward' },
        { code: 'ease-speed', measure: 'speed', value: hump.speed * 0.6 },
      ],
    },
  ];
}

function balanceReasons(prepared: Prepared, balance: LoadBalance): Reason[] {
  const { hull } = prepared.trip.craft;
  const reasons: Reason[] = [];
  const offset = Math.abs(balance.lateral) / hull.beam;
  if (offset > LATERAL.target) {
    reasons.push({
      code: 'off-balance',
      level: offset > LATERAL.capsizing ? 'no-go' : offset > LATERAL.off ? 'marginal' : 'note',
      measure: 'length',
      value: balance.lateral,
      limit: LATERAL.target * hull.beam,
      fixes: [{ code: 'move-across', measure: 'length', value: -balance.lateral }],
    });
  }
  if (balance.lcgShare < 0.2 || balance.lcgShare > 0.5) {
    reasons.push({
      code: 'overtrimmed',
      level: 'marginal',
      measure: 'share',
      value: balance.lcgShare,
      limit: balance.lcgShare < 0.2 ? 0.2 : 0.5,
      fixes: [{ code: 'move-forward', measure: 'share', value: 0.36 - balance.lcgShare }],
    });
  }
  if (prepared.unknownSeats.length > 0) {
    reasons.push({
      code: 'seat-unknown',
      level: 'marginal',
      measure: 'count',
      value: prepared.unknownSeats.length,
      fixes: [{ code: 'give-value' }],
    });
  }
  return reasons;
}

function methodReasons(prepared: Prepared, run: Run): Reason[] {
  const { hull } = prepared.trip.craft;
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const reasons: Reason[] = [];
  const outside = indices(run.sailed, (s) => {
    const state = { mass: s.afloat.mass, lcg: s.afloat.lcg, water: boat.water };
    return hullFlags(hull, state, s.steady.hull).some((flag) => flag !== 'lcg-range');
  });
  if (outside.length > 0) reasons.push({ code: 'outside-method', level: 'note', legs: outside });
  const overdriven =
    hull.form === 'displacement' ? indices(run.sailed, (s) => s.steady.hull.froudeLength > HULL_SPEED) : [];
  if (overdriven.length > 0) {
    const limit = HULL_SPEED * Math.sqrt(GRAVITY * hull.wettedLength);
    reasons.push({
      code: 'outside-method',
      level: 'marginal',
      measure: 'speed',
      value: most(run.sailed, (s) => s.speed).speed,
      limit,
      legs: overdriven,
      fixes: [{ code: 'ease-speed', measure: 'speed', value: limit }],
    });
  }
  const hopping = indices(run.sailed, (s) => mayPorpoise(hull.deadriseDeg, s.steady.hull));
  if (hopping.length > 0)
    reasons.push({ code: 'porpoising', level: 'note', legs: hopping, fixes: [{ code: 'move-forward' }] });
  return [...reasons, ...trialReasons(prepared, run)];
}

/** Further than this from what was tried, a measured boat's curves are a guess from it (the method's warning). */
const BEYOND_TRIALS = 0.2;

/** Loads and speeds of the trip that no trial came near; the spread has grown with them already. */
function trialReasons({ trip }: Prepared, run: Run): Reason[] {
  const tried = trip.craft.calibration?.tried;
  if (!tried) return [];
  const beyond = (measure: 'mass' | 'speed', figure: (s: Sailed) => number): Reason[] => {
    const [least, most] = tried[measure];
    const far = (s: Sailed) => figure(s) > most * (1 + BEYOND_TRIALS) || figure(s) < least / (1 + BEYOND_TRIALS);
    const first = run.sailed.find(far);
    if (!first) return [];
    const value = figure(first);
    const limit = value > most ? most : least;
    return [{ code: 'beyond-trials', level: 'note', measure, value, limit, legs: indices(run.sailed, far) }];
  };
  return [...beyond('mass', (s) => s.afloat.mass), ...beyond('speed', (s) => s.speed)];
}

function indices(sailed: readonly Sailed[], matches: (s: Sailed) => boolean): readonly number[] {
  const legs = new Set<number>();
  for (const s of sailed) if (matches(s)) legs.add(s.stretch.leg);
  return [...legs];
}

function most(sailed: readonly Sailed[], score: (s: Sailed) => number): Sailed {
  return sailed.reduce((a, b) => (score(b) > score(a) ? b : a));
}
