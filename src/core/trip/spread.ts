import { logSpread, varianceOf } from '../curve/factors.ts';
import type { Tweak } from './afloat-in.ts';
import { Level } from './level.ts';
import { type Need, NODES, needAt } from './need.ts';
import { needGradient } from './need-gradient.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';

/** Speed made at the same rate varies by trim, propeller and sea (common practice, no source). */
export const SPEED_SPREAD = 0.05;
/** Weather of the leg and steering: sheltered or calm, and exposed or unknown (common practice, no source). */
const LEG_SPREAD = { calm: 0.08, exposed: 0.15 };
/** Distance over which a leg's weather stays alike, m. */
export const LEG_LENGTH = 5000;
/** What people weigh and bring along is told within this, and need follows all-up mass with this power (derived). */
const LOAD_SPREAD = 0.05;
const LOAD_POWER = 0.65;
/** Error of a stream: given by somebody who knows it, or not given, m/s (common practice, no source). */
const STREAM_ERROR = { given: 0.25, unknown: 0.5 };
/** Gauge error as a share of capacity: dipstick or scales, a float gauge (common practice, no source). */
const GAUGE_ERROR = { measured: 0.03, gauge: 0.1 };

/**
 * Spread of what a run needs, propagated from the calibration factors, the speed made, the weather of the legs and
 * the stream. `factors` is the standard deviation the factors leave in the need, see `factorSpread`.
 */
export function needOf(prepared: Prepared, run: Run, factors: number): Need {
  if (!run.possible) return { nodes: NODES.map(() => Infinity), spreads: NODES.map(() => 0) };
  const { leg, load, streamError: error } = errorsOf(prepared, run);
  const decay = run.sailed.map((s) => Math.exp(-s.stretch.distance / LEG_LENGTH));
  const nodes: number[] = [];
  const spreads: number[] = [];
  for (const node of NODES) {
    const { need, speedShare, legVariance } = inStream(run, node * error, decay);
    nodes.push(need);
    spreads.push(
      Math.sqrt(factors * factors + load * load + (speedShare * SPEED_SPREAD) ** 2 + leg * leg * legVariance),
    );
  }
  return { nodes, spreads };
}

interface Errors {
  /** Of one leg's weather, relative. */
  readonly leg: number;
  /** Of the need by what the load may really weigh, relative. */
  readonly load: number;
  /** m/s */
  readonly streamError: number;
}

function errorsOf({ trip, base, around }: Prepared, run: Run): Errors {
  const { conditions } = trip;
  // A scenario with its own foul stream has spent the unknown already.
  const told = around.stream !== undefined && streamTold(run);
  const known = told || run.scenario.kinds.includes('home-foul-stream');
  return {
    leg: conditions.sea === 'calm' ? LEG_SPREAD.calm : LEG_SPREAD.exposed,
    load: (LOAD_POWER * LOAD_SPREAD * base.peopleAndGear * unsureShare(run)) / run.atStart.mass,
    streamError: known ? STREAM_ERROR.given : STREAM_ERROR.unknown,
  };
}

/** Of the need, what goes wrong with all that is used; 1 but for trips that fill up on the way. */
function unsureShare({ unsure, need, refills }: Run): number {
  return refills && need > 0 ? unsure / need : 1;
}

/** Streams by tide are told for every stretch. */
function streamTold({ sailed }: Run): boolean {
  return sailed.every(({ told }) => told?.known !== false);
}

/** The single spreads, each relative to the need of a run that can be sailed, without an error of the stream. */
export function spreadsOf(
  prepared: Prepared,
  run: Run,
  factors: number,
): Errors & { readonly boat: number; readonly speed: number; readonly weather: number } {
  const errors = errorsOf(prepared, run);
  const decay = run.sailed.map((s) => Math.exp(-s.stretch.distance / LEG_LENGTH));
  const { speedShare, legVariance } = inStream(run, 0, decay);
  return {
    ...errors,
    boat: factors,
    speed: speedShare * SPEED_SPREAD,
    weather: errors.leg * Math.sqrt(legVariance),
  };
}

/** Standard deviation of the need that the factors leave, relative to it. */
export function factorSpread(prepared: Prepared, run: Run, tweak: Tweak): number {
  if (!run.possible || run.need <= 0) return 0;
  const deviation = Math.sqrt(varianceOf(needGradient(prepared, run, tweak), prepared.covariance));
  return logSpread(deviation / run.used) * unsureShare(run);
}

/** Standard deviation of the usable amount, in its unit. */
export function usableDeviation(prepared: Prepared): number {
  return prepared.full * GAUGE_ERROR[prepared.trip.load.fillKnownBy ?? 'gauge'];
}

/** Standard normal deviate of the probabilities that are asked for. */
const DEVIATE = { 0.1: -1.2815515655446, 0.667: 0.4316442, 0.9: 1.2815515655446, 0.95: 1.6448536269515 } as const;

/** Of what is usable, the most that a gauge's error takes as a normal law does: nobody divides by what is left of nothing. */
const MOST_TAKEN = 0.9;

/**
 * The amount that suffices with probability `p` where what is usable is itself known to the gauge's error alone. That
 * error is normal while the need is lognormal: it is counted by what it takes at the point where both together most
 * likely fail (first-order reliability; Hasofer and Lind 1974, from memory).
 */
export function needWithGauge(
  prepared: Prepared,
  run: Run,
  need: Need,
  { usable, p }: { readonly usable: number; readonly p: keyof typeof DEVIATE },
): number {
  const error = usableDeviation(prepared) / Math.max(usable, run.need, 1e-9);
  const spreads = need.spreads.map((spread) => Math.hypot(spread, gaugeSpread(error, spread, DEVIATE[p])));
  return needAt({ nodes: need.nodes, spreads }, p);
}

/** The spread of a logarithm that moves it as far as a normal relative error does, at a deviate of both together. */
export function gaugeSpread(error: number, spread: number, deviate: number): number {
  const own = (deviate * error) / Math.hypot(error, spread);
  const taken = own * error;
  if (Math.abs(taken) < 1e-9) return error;
  const beyond = Math.max(taken - MOST_TAKEN, 0);
  return (beyond - Math.log1p(beyond - taken)) / own;
}

/** A tenth of a knot made good is no headway, m/s. */
export const NO_HEADWAY = 0.05;

/**
 * A run when a steady stream error helps out and hinders home (m/s): its need, Infinity when a leg makes no headway;
 * how need follows the speed made; and the variance of unit leg weather. That correlates with exp(-distance / 5 km),
 * integrated along the route, so that a leg cut in two spreads as one; `decay` holds it for each stretch.
 */
function inStream(
  run: Run,
  error: number,
  decay: readonly number[],
): { readonly need: number; readonly speedShare: number; readonly legVariance: number } {
  let need = run.manoeuvring;
  const level = run.refills && new Level(run.refills.usable);
  level?.draw(need);
  let speedShare = 0;
  let legVariance = 0;
  let tail = 0;
  for (let i = 0; i < run.sailed.length; i++) {
    const { stretch, use, ground, speed } = run.sailed[i]!;
    const made = ground + (stretch.part === 'out' ? error : -error);
    if (made < NO_HEADWAY) return { need: Infinity, speedShare: 0, legVariance: 0 };
    const here = (use * ground) / made;
    need += here;
    level?.draw(here);
    const filled = run.refills?.to[i];
    if (filled !== undefined) level?.fillTo(filled);
    speedShare += (here * speed) / made;
    const length = stretch.distance;
    if (length <= 0) continue;
    const density = here / length;
    const lost = 1 - decay[i]!;
    const reach = density * LEG_LENGTH * lost;
    legVariance += 2 * density * density * LEG_LENGTH * (length - LEG_LENGTH * lost) + 2 * tail * reach;
    tail = tail * decay[i]! + reach;
  }
  if (level) return inLeanest(level, { used: need, speedShare, legVariance });
  if (!(need > 0)) return { need, speedShare: 0, legVariance: 0 };
  return { need, speedShare: speedShare / need, legVariance: Math.max(legVariance, 0) / (need * need) };
}

/** The same for a trip that fills up: its leanest part alone, in which the weather of the legs averages out less. */
function inLeanest(
  { need, unsure }: Level,
  { used, speedShare, legVariance }: { used: number; speedShare: number; legVariance: number },
): { readonly need: number; readonly speedShare: number; readonly legVariance: number } {
  if (!(need > 0) || !(used > 0)) return { need, speedShare: 0, legVariance: 0 };
  const share = unsure / used;
  return {
    need,
    speedShare: (speedShare * share) / need,
    legVariance: (Math.max(legVariance, 0) * share) / (need * need),
  };
}
