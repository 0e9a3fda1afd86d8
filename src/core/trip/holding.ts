import type { Afloat, Boat } from '../curve/boat.ts';
import { HUMP_MARGIN, marginOf } from '../curve/hump.ts';
import { lcgSlope, steady, type Weather } from '../curve/steady.ts';
import { climbed, climbOf } from './climb.ts';
import type { Answer } from './edge.ts';
import { HELD_IN, marginSpread } from './held.ts';
import { normalCdf } from './need.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';
import type { Verdict } from './shapes.ts';

/** What fuel burnt moves the centre of gravity by, m; it turns no speed. */
const SAME_LCG = 0.03;

/** Its place on the normal law. */
const HELD_AT = 0.6745;

/** Go: held by most such boats; no-go: not even by this one. */
function allowsSpeed(boat: Boat, { afloat, speed, weather }: Asked, wanted: 'go' | 'marginal'): Answer {
  const now = steady(boat, afloat, speed, weather);
  const margin = marginOf(boat, afloat, now.drive);
  const slack = Math.log(margin);
  if (margin < 1 || wanted === 'marginal' || margin > 3) return { holds: margin >= 1, slack };
  const spread = marginSpread(boat, now, lcgSlope(boat, afloat, speed, now.hull));
  return { holds: normalCdf(slack / spread) >= HELD_IN, slack: slack - HELD_AT * spread };
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
