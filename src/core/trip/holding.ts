import type { Afloat, Boat } from '../curve/boat.ts';
import { HUMP_MARGIN, humpOf, marginOf, PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import { lcgSlope, resistanceDeviation, type Steady, steady, type Weather } from '../curve/steady.ts';
import type { Answer } from './edge.ts';
import { normalCdf } from './need.ts';
import type { Prepared } from './prepare.ts';
import type { Remembered } from './remembered.ts';
import type { Run, Sailed } from './sail.ts';
import type { Verdict } from './shapes.ts';

/** Power asked grows faster than resistance on a propeller held at one speed (derived from the drive method). */
const POWER_OVER_RESISTANCE = 1.2;
/** What fuel burnt moves the centre of gravity by, m; it turns no speed. */
const SAME_LCG = 0.03;
/** A speed held by fewer than three of four such boats is not one to rely on (our rule). */
export const HELD_IN = 0.75;
/** Its place on the normal law. */
const HELD_AT = 0.6745;

/** Probability that the drive holds a speed, from the spread of resistance and rated power. */
export function heldProbability(
  boat: Boat,
  { afloat, speed, steady: now }: Pick<Sailed, 'afloat' | 'speed' | 'steady'>,
  remembered?: Remembered,
): number {
  const margin = marginOf(boat, afloat, now.drive);
  if (margin > 3) return 1;
  const slope = remembered?.slope(boat, afloat, speed, now.hull) ?? lcgSlope(boat, afloat, speed, now.hull);
  return normalCdf(Math.log(margin) / marginSpread(boat, now, slope));
}

/** Standard deviation of the logarithm of the margin; `slope` comes from `lcgSlope`. */
function marginSpread(boat: Boat, now: Steady, slope: number): number {
  const deviation = resistanceDeviation(boat, now, slope);
  const share = deviation / Math.max(now.resistance, 1e-9);
  return Math.hypot(POWER_OVER_RESISTANCE * share, boat.factors.power.deviation);
}

/** Go: held by most such boats; no-go: not even by this one. */
function allowsSpeed(boat: Boat, { afloat, speed, weather }: Asked, wanted: 'go' | 'marginal'): Answer {
  const now = steady(boat, afloat, speed, weather);
  const margin = marginOf(boat, afloat, now.drive);
  const slack = Math.log(margin);
  if (margin < 1 || wanted === 'marginal' || margin > 3) return { holds: margin >= 1, slack };
  const spread = marginSpread(boat, now, lcgSlope(boat, afloat, speed, now.hull));
  return { holds: normalCdf(slack / spread) >= HELD_IN, slack: slack - HELD_AT * spread };
}

/** Go: over the hump with power to spare; no-go: not over it. */
export function humpVerdict(margin: number): Verdict {
  return margin < 1 ? 'no-go' : margin < HUMP_MARGIN ? 'marginal' : 'go';
}

/**
 * The stretches as sailed; where the sea slows one also as planned, in flat water if the sea is known: it must be in
 * the boat at all; and with an unknown seat each also as if it were at the other end.
 */
export function asked(prepared: Prepared, run: Run): readonly Sailed[] {
  const flat = prepared.seaTold;
  const calmed = flat && run.scenario.unslowed;
  if (!calmed && prepared.forwardMoment === 0 && run.sailed.every((s) => s.speed >= s.planned)) return run.sailed;
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const again = (s: Sailed, change: Partial<Sailed>): Sailed => {
    const now = { ...s, ...change };
    // Weather alone leaves the hull as it is.
    const hull = now.afloat === s.afloat && now.speed === s.speed ? s.steady.hull : undefined;
    return { ...now, steady: steady(boat, now.afloat, now.speed, now.weather, hull) };
  };
  const still = (s: Sailed) => ({ headwind: s.weather.headwind, waveHeight: 0 });
  // Waves that are not let slow the boat cost fuel, but nobody has to hold its full speed through them.
  const all = run.sailed.map((s) => (calmed ? again(s, { weather: still(s) }) : s));
  for (const s of run.sailed) {
    if (s.speed >= s.planned) continue;
    const weather = flat ? still(s) : s.weather;
    all.push(again(s, { speed: s.planned, weather }));
  }
  if (prepared.forwardMoment === 0) return all;
  const shift = (run.scenario.forward ? -1 : 1) * prepared.forwardMoment;
  return [...all, ...all.map((s) => again(s, { afloat: { ...s.afloat, lcg: s.afloat.lcg + shift / s.afloat.mass } }))];
}

/** How a boat gets up to a speed, m/s. */
export interface Climb {
  readonly afloat: Afloat;
  readonly weather: Weather;
  readonly top: number;
}

/** The climb to the fastest of these stretches, as heavy, far aft, drained and against as much wind and sea as any. */
export function climbOf(stretches: readonly Sailed[]): Climb {
  let { mass, lcg } = stretches[0]!.afloat;
  let top = 0;
  let headwind = -Infinity;
  let waveHeight = 0;
  let charge = 1;
  for (const s of stretches) {
    charge = Math.min(charge, s.afloat.charge ?? 1);
    mass = Math.max(mass, s.afloat.mass);
    lcg = Math.min(lcg, s.afloat.lcg);
    top = Math.max(top, s.speed);
    headwind = Math.max(headwind, s.weather.headwind);
    waveHeight = Math.max(waveHeight, s.weather.waveHeight);
  }
  const { airArea } = stretches[0]!.afloat;
  return { afloat: { mass, lcg, airArea, charge }, weather: { headwind, waveHeight }, top };
}

/** The tightest speed on the way up and its margin; a speed that itself is the tightest has no hump before it. */
export function climbed(
  boat: Boat,
  { afloat, weather, top }: Climb,
  remembered?: Remembered,
): { speed: number; margin: number } {
  const hump = humpOf(boat, afloat, weather, top, remembered?.climb(boat, afloat));
  if (top >= speedAtFroude(boat, afloat, PLANING_FROUDE)) return hump;
  const own = marginOf(boat, afloat, steady(boat, afloat, top, weather).drive);
  return hump.margin < own ? hump : { speed: top, margin: Infinity };
}

/** What the engine says of extra mass (kg) or more headwind (m/s) on this run: each answer only worsens with more. */
export interface Holding {
  allows(wanted: 'go' | 'marginal', extra: number, headwind?: (s: Sailed) => number): Answer;
  /** The two parts of it: the climb over the hump, and the speeds. */
  planes(wanted: 'go' | 'marginal', extra: number, headwind?: (s: Sailed) => number): Answer;
  speeds(wanted: 'go' | 'marginal', extra: number, headwind?: (s: Sailed) => number): Answer;
}

/** The best verdict that is allowed. */
export function verdictFrom(allows: (wanted: 'go' | 'marginal') => Answer): Verdict {
  return allows('go').holds ? 'go' : allows('marginal').holds ? 'marginal' : 'no-go';
}

const RANK = { go: 0, marginal: 1, 'no-go': 2 } as const;

export function worse(a: Verdict, b: Verdict): Verdict {
  return RANK[a] >= RANK[b] ? a : b;
}

/** Both conditions; the slack is that of the nearer to turning. */
function both(a: Answer, b: Answer): Answer {
  const slack = a.slack === undefined || b.slack === undefined ? undefined : Math.min(a.slack, b.slack);
  return { holds: a.holds && b.holds, slack };
}

/** `all` is what is `asked` of the boat on this run. */
export function holding(prepared: Prepared, run: Run, all: readonly Sailed[]): Holding {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const climb = climbOf(all);
  // Petrol makes the first of like stretches the hardest, a battery the last.
  const hardest = distinct(prepared.burns ? all : [...all].reverse());
  const asSailed = (s: Sailed): number => s.weather.headwind;
  const planes: Holding['planes'] = (wanted, extra, headwind = asSailed) => {
    const { afloat, weather, top } = climb;
    const ahead = all.reduce((most, s) => Math.max(most, headwind(s)), -Infinity);
    const heavier = { ...afloat, mass: afloat.mass + extra };
    const { margin } = climbed(
      boat,
      { afloat: heavier, weather: { ...weather, headwind: ahead }, top },
      prepared.remembered,
    );
    const least = wanted === 'go' ? HUMP_MARGIN : 1;
    return { holds: margin >= least, slack: Math.min(Math.log(margin / least), 9) };
  };
  const speeds: Holding['speeds'] = (wanted, extra, headwind = asSailed) => {
    let answer: Answer = { holds: true, slack: Infinity };
    for (const { s, ahead } of hardestIn(hardest, headwind)) {
      const afloat = { ...s.afloat, mass: s.afloat.mass + extra };
      const weather = { headwind: ahead, waveHeight: s.weather.waveHeight };
      answer = both(answer, allowsSpeed(boat, { afloat, speed: s.speed, weather }, wanted));
    }
    return answer;
  };
  return {
    planes,
    speeds,
    allows: (wanted, extra, headwind) => both(planes(wanted, extra, headwind), speeds(wanted, extra, headwind)),
  };
}

interface Asked {
  readonly afloat: Afloat;
  readonly speed: number;
  readonly weather: Weather;
}

/** Without those that another of the same speed and sea outdoes in weight, wind from ahead and empty battery. */
function hardestIn(
  sailed: readonly Sailed[],
  headwind: (s: Sailed) => number,
): readonly { readonly s: Sailed; readonly ahead: number }[] {
  const left: { s: Sailed; ahead: number }[] = [];
  const blown = sailed.map((s) => ({ s, ahead: headwind(s) })).sort((a, b) => b.ahead - a.ahead);
  for (const one of blown) if (!left.some((other) => outdoes(other.s, one.s))) left.push(one);
  return left;
}

function outdoes(a: Sailed, b: Sailed): boolean {
  return (
    a.speed === b.speed &&
    a.weather.waveHeight === b.weather.waveHeight &&
    a.afloat.mass >= b.afloat.mass &&
    (a.afloat.charge ?? 1) <= (b.afloat.charge ?? 1) &&
    Math.abs(a.afloat.lcg - b.afloat.lcg) < SAME_LCG
  );
}

/** The first stretch for each speed, course, and headwind and centre of gravity to a tenth of what matters. */
function distinct(sailed: readonly Sailed[]): readonly Sailed[] {
  const found = new Map<string, Sailed>();
  for (const s of sailed) {
    const key = `${s.speed.toFixed(2)} ${s.weather.headwind.toFixed(1)} ${Math.round(s.stretch.trackDeg / 10)} ${s.afloat.lcg.toFixed(2)}`;
    const known = found.get(key);
    if (!known || s.weather.headwind > known.weather.headwind) found.set(key, s);
  }
  return [...found.values()];
}
