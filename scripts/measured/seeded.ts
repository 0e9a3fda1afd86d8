import type { Craft } from '../../src/core/craft/shapes.ts';
import { destination } from '../../src/core/route/distance.ts';
import { calibrated } from '../../src/core/trials/calibrated.ts';
import { fitTrials } from '../../src/core/trials/fit.ts';
import { seededChance } from '../../src/core/trip/chance.ts';
import { planTrip } from '../../src/core/trip/plan-trip.ts';
import type { Trip, Verdict } from '../../src/core/trip/shapes.ts';
import type { Stream } from '../../src/core/water/shapes.ts';
import { trialsOf } from './leave-out.ts';
import { HELM_ALONE, loadedAsMeasured, type MeasuredPoint, pointsOf } from './loaded.ts';
import { ELECTRIC_BOATS, PETROL_BOATS, recordOf } from './records.ts';
import { FROM, usableOf, waters } from './usefulness.ts';

/** One made-up trip of a boat that somebody measured. */
interface SeededTrip {
  readonly point: MeasuredPoint;
  /** What the trip takes by the measured consumption, over what it may take with the reserve whole: above 1 it is unsafe. */
  readonly takes: number;
  /** Of the usable amount. */
  readonly reserve: number;
  readonly headingDeg: number;
  readonly stream: Stream | undefined;
  /** m, one way. */
  readonly distance: number;
}

/** How trips are answered that take so much of what they may. */
export interface AnswersTo {
  readonly from: number;
  readonly to: number;
  readonly trips: number;
  readonly go: number;
  readonly marginal: number;
  readonly noGo: number;
}

/** Answers of boats as nobody measured them, or calibrated with all their runs but the one of the trip's speed. */
export interface SeededAnswers {
  readonly boats: readonly string[];
  readonly known: 'not measured' | 'calibrated';
  readonly bins: readonly AnswersTo[];
  /** The boat and speed (m/s) of which most unsafe trips get a go, and how many. */
  readonly boldest?: { readonly check: string; readonly speed: number; readonly trips: number };
}

const SEED = 20_270_620;
const TRIPS = 1800;
const LEAST = 0.2;
const MOST = 1.6;
const BINS = 7;
/** The dinghy of which nothing is known stands alone, so that it neither helps nor hurts the others. */
const GROUPS: readonly (readonly string[])[] = [PETROL_BOATS, ['E-pram', 'E-row'], ['E-pod']];

/**
 * Trips out and home on any course, half of them in a stream that is told: as many for each boat, at a speed it was
 * measured at below full throttle, with a reserve of a third or a fifth. How long a trip is follows from what it is to
 * take, by the measured consumption and plain geometry; the method has no part in it.
 */
function seededTrips(): readonly SeededTrip[] {
  const random = seededChance(SEED);
  const boats = [...PETROL_BOATS, ...ELECTRIC_BOATS];
  return Array.from({ length: TRIPS }, (_, i): SeededTrip => {
    const points = cruising(boats[i % boats.length]!);
    const point = points[Math.floor(random() * points.length)]!;
    const takes = LEAST + (MOST - LEAST) * random();
    const reserve = random() < 0.5 ? 1 / 3 : 0.2;
    const headingDeg = Math.floor(360 * random());
    const rate = Math.min(0.35 * point.speed, 1) * random();
    const setDeg = Math.floor(360 * random());
    const stream = random() < 0.5 ? { setDeg, rate } : undefined;
    const hours = takes * (1 - reserve) * (usableOf(loadedAsMeasured(recordOf(point.check))) / point.flow!);
    const perMetre =
      1 / overGround(point.speed, headingDeg, stream) + 1 / overGround(point.speed, headingDeg + 180, stream);
    return { point, takes, reserve, headingDeg, stream, distance: hours / perMetre };
  });
}

/** Petrol boats' last point is full throttle, which is never a go. */
function cruising(check: string): readonly MeasuredPoint[] {
  const consumed = pointsOf(check).filter(({ flow }) => flow !== undefined);
  return check.startsWith('P-') ? consumed.slice(0, -1) : consumed;
}

/** Speed made good along a course, m/s, by the triangle of boat and stream. */
function overGround(speed: number, courseDeg: number, stream: Stream | undefined): number {
  if (!stream) return speed;
  const off = ((stream.setDeg - courseDeg) * Math.PI) / 180;
  return Math.sqrt(speed ** 2 - (stream.rate * Math.sin(off)) ** 2) + stream.rate * Math.cos(off);
}

/** The boat calibrated with what was read at other speeds than this point's. */
function calibratedWithout(point: MeasuredPoint): Craft {
  const craft = loadedAsMeasured(recordOf(point.check));
  const others = pointsOf(point.check).filter(({ speed }) => speed !== point.speed);
  const trials = trialsOf(craft, others);
  return calibrated(craft, trials, fitTrials(trials));
}

function answerTo({ point, reserve, headingDeg, stream, distance }: SeededTrip, craft: Craft): Verdict {
  const trip: Trip = {
    version: 1,
    craft,
    load: HELM_ALONE,
    route: { shape: 'out-and-home', waypoints: [FROM, destination(FROM, headingDeg, distance)], speed: point.speed },
    conditions: { wind: 'calm', stream: stream ?? 'slack', sea: 'calm', water: 'sea', batteryTemperatureC: 20 },
    policy: { reserve: [{ kind: 'share', share: reserve }], manoeuvring: 0, drawnFactor: 1 },
  };
  const plan = planTrip(trip, waters, { quick: true });
  if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join(' '));
  return plan.value.verdict;
}

export function seededAnswers(): readonly SeededAnswers[] {
  const trips = seededTrips();
  const crafts = new Map<string, Craft>();
  const calibratedFor = (point: MeasuredPoint): Craft => {
    const key = `${point.check} ${point.speed}`;
    const craft = crafts.get(key) ?? calibratedWithout(point);
    crafts.set(key, craft);
    return craft;
  };
  return GROUPS.flatMap((boats) => {
    const own = trips.filter(({ point }) => boats.includes(point.check));
    return (['not measured', 'calibrated'] as const).map((known): SeededAnswers => {
      const verdicts = own.map((trip) => ({
        trip,
        takes: trip.takes,
        verdict: answerTo(
          trip,
          known === 'calibrated' ? calibratedFor(trip.point) : loadedAsMeasured(recordOf(trip.point.check)),
        ),
      }));
      const boldest = boldestOf(verdicts.filter(({ takes, verdict }) => takes > 1 && verdict === 'go'));
      return { boats, known, bins: binned(verdicts), ...(boldest && { boldest }) };
    });
  });
}

function boldestOf(greener: readonly { readonly trip: SeededTrip }[]): SeededAnswers['boldest'] {
  const points = [...new Set(greener.map(({ trip }) => `${trip.point.check} ${trip.point.speed}`))].map((key) => {
    const own = greener.filter(({ trip }) => `${trip.point.check} ${trip.point.speed}` === key);
    const { check, speed } = own[0]!.trip.point;
    return { check, speed: Math.round(100 * speed) / 100, trips: own.length };
  });
  return points.sort((a, b) => b.trips - a.trips)[0];
}

function binned(verdicts: readonly { readonly takes: number; readonly verdict: Verdict }[]): readonly AnswersTo[] {
  const width = (MOST - LEAST) / BINS;
  return Array.from({ length: BINS }, (_, i): AnswersTo => {
    const from = Math.round((LEAST + i * width) * 100) / 100;
    const to = Math.round((LEAST + (i + 1) * width) * 100) / 100;
    const here = verdicts.filter(({ takes }) => takes >= from && takes < to);
    const count = (verdict: Verdict) => here.filter((one) => one.verdict === verdict).length;
    return { from, to, trips: here.length, go: count('go'), marginal: count('marginal'), noGo: count('no-go') };
  });
}

/** Trips on one side of what is safe. */
export function totalOf(bins: readonly AnswersTo[], safe: boolean): Omit<AnswersTo, 'from' | 'to'> {
  const here = bins.filter(({ from, to }) => (safe ? to <= 1 : from >= 1));
  const sum = (count: (one: AnswersTo) => number) => here.reduce((total, one) => total + count(one), 0);
  return {
    trips: sum(({ trips }) => trips),
    go: sum(({ go }) => go),
    marginal: sum(({ marginal }) => marginal),
    noGo: sum(({ noGo }) => noGo),
  };
}
