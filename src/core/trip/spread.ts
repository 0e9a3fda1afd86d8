import { varianceOf } from '../curve/factors.ts';
import { type Need, NODES } from './need.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';

/** Speed made at the same rate varies by trim, propeller and sea (common practice, no source). */
const SPEED_SPREAD = 0.05;
/** Weather of the leg and steering: sheltered or calm, and exposed or unknown (common practice, no source). */
const LEG_SPREAD = { calm: 0.08, exposed: 0.15 };
/** Distance over which a leg's weather stays alike, m. */
const LEG_LENGTH = 5000;
/** Error of a stream: given by somebody who knows it, or not given, m/s (common practice, no source). */
const STREAM_ERROR = { given: 0.25, unknown: 0.5 };
/** Gauge error as a share of capacity: dipstick or scales, a float gauge (common practice, no source). */
const GAUGE_ERROR = { measured: 0.03, gauge: 0.1 };

/**
 * Spread of what a run needs, propagated from the calibration factors, the speed made, the weather of the legs and
 * the stream. `relative` is the standard deviation the factors leave in the need; pass it to reuse a gradient.
 */
export function needOf(prepared: Prepared, run: Run, relative?: number): Need {
  const { conditions } = prepared.trip;
  const factors = relative ?? factorSpread(prepared, run);
  const legs = legSpread(run, conditions.sea === 'calm' ? LEG_SPREAD.calm : LEG_SPREAD.exposed);
  // A scenario with its own foul stream has spent the unknown already.
  const known = conditions.stream !== undefined || run.scenario.kinds.includes('home-foul-stream');
  const error = known ? STREAM_ERROR.given : STREAM_ERROR.unknown;
  let speedShare = 0;
  for (const s of run.sailed) if (s.possible) speedShare += ((s.use / run.need) * s.speed) / s.ground;
  const spread = Math.hypot(factors, speedShare * SPEED_SPREAD, legs);
  return { nodes: NODES.map((node) => needWithStream(run, node * error)), spread };
}

/** Standard deviation of the need that the factors leave, relative to it. */
export function factorSpread(prepared: Prepared, run: Run): number {
  return run.need > 0 && run.possible ? Math.sqrt(varianceOf(run.gradient, prepared.covariance)) / run.need : 0;
}

/** Standard deviation of the usable amount, in its unit. */
export function usableDeviation(prepared: Prepared): number {
  return prepared.full * GAUGE_ERROR[prepared.trip.load.fillKnownBy ?? 'gauge'];
}

/** The need with the error of the gauge added to its spread, for figures held against what is usable. */
export function withGauge(prepared: Prepared, run: Run, need: Need, usable: number): Need {
  const error = usableDeviation(prepared) / Math.max(usable, run.need, 1e-9);
  return { nodes: need.nodes, spread: Math.hypot(need.spread, error) };
}

/** Need when a steady stream error helps out and hinders home (m/s); Infinity when a leg makes no headway. */
function needWithStream(run: Run, error: number): number {
  if (!run.possible) return Infinity;
  let need = run.manoeuvring;
  for (const s of run.sailed) {
    const ground = s.ground + (s.stretch.part === 'out' ? error : -error);
    // A tenth of a knot made good is no headway.
    if (ground < 0.05) return Infinity;
    need += (s.use * s.ground) / ground;
  }
  return need;
}

/**
 * Leg weather correlates with exp(-distance / 5 km), integrated along the route, so that a leg cut in two spreads as
 * one.
 */
function legSpread(run: Run, deviation: number): number {
  let variance = 0;
  let tail = 0;
  for (const s of run.sailed as readonly Sailed[]) {
    const length = s.stretch.distance;
    if (!s.possible || length <= 0) continue;
    const density = s.use / run.need / length;
    const decay = Math.exp(-length / LEG_LENGTH);
    const reach = density * LEG_LENGTH * (1 - decay);
    variance += 2 * density * density * LEG_LENGTH * (length - LEG_LENGTH * (1 - decay)) + 2 * tail * reach;
    tail = tail * decay + reach;
  }
  return deviation * Math.sqrt(Math.max(variance, 0));
}
