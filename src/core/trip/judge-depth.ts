import { legBetween } from '../route/distance.ts';
import type { Hazard } from '../route/split-legs.ts';
import type { HeightAt } from '../water/tide-height.ts';
import { DEPTH_WANTED } from './defaults.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';
import type { Reason } from './shapes.ts';

/** Pressure and wind move the sea by decimetres, m (common practice, no source). */
export const WEATHER = 0.3;
/** A trip runs early or late by these shares of the time it has taken. */
const EARLY = 0.9;
const LATE = 1.2;
/** How near a landing a waypoint is meant for it, m. */
const NEAR = 150;
/** Step at which the tide is asked while a place is passed, s. */
const STEP = 600;

/** Depth on a shoal when it is crossed; undefined where its height or that of the tide is not told. */
export function depthReason(prepared: Prepared, run: Run, hazard: Hazard): Reason | undefined {
  const dries = hazard.zone?.dries_m;
  if (dries === undefined) return undefined;
  const { from, to } = passing(prepared, run, hazard.leg);
  return reasonOf(prepared, { dries, from, to, name: hazard.name, leg: hazard.leg, at: hazard.at });
}

/** Depth at landings whose height is told, while the boat is there. */
export function judgeDepth(prepared: Prepared, { run }: { readonly run: Run }): readonly Reason[] {
  const landings = (prepared.waters?.landings ?? []).filter(({ properties }) => properties.dries_m !== undefined);
  if (landings.length === 0 || !prepared.around.height) return [];
  const found: Reason[] = [];
  let time = prepared.manoeuvring / 2;
  const ask = (at: { lat: number; lon: number }, leg: number, from: number, to: number): void => {
    for (const { geometry, properties } of landings) {
      const [lon = 0, lat = 0] = geometry.coordinates;
      if (legBetween(at, { lat, lon }).distance > NEAR) continue;
      const { name, dries_m: dries = 0 } = properties;
      const reason = reasonOf(prepared, { dries, from: from * EARLY, to: to * LATE, name, leg, at });
      if (reason && reason.code !== 'shoal-covered') found.push(reason);
    }
  };
  const first = run.sailed[0];
  if (first) ask(first.stretch.from, 0, 0, time);
  run.sailed.forEach(({ stretch, time: taken }, i) => {
    time += taken;
    const ends = run.sailed[i + 1]?.stretch.leg !== stretch.leg;
    // A waypoint that is passed needs no landing.
    if (ends && (stretch.stop > 0 || i === run.sailed.length - 1))
      ask(stretch.to, stretch.leg, time, time + stretch.stop);
    time += stretch.stop;
  });
  const byName = new Map<string | undefined, Reason>();
  for (const reason of found) {
    const same = byName.get(reason.name);
    byName.set(reason.name, same ? shallower(same, reason) : reason);
  }
  return [...byName.values()];
}

/** Of two reasons for one place the one with less water, with the legs of both. */
export function shallower(a: Reason, b: Reason): Reason {
  const worse = (b.value ?? 0) < (a.value ?? 0) ? b : a;
  return { ...worse, legs: [...new Set([...(a.legs ?? []), ...(b.legs ?? [])])] };
}

interface Shallow {
  readonly dries: number;
  /** s from departure */
  readonly from: number;
  readonly to: number;
  readonly name: string | undefined;
  readonly leg: number;
  readonly at: { readonly lat: number; readonly lon: number };
}

function reasonOf({ around, trip }: Prepared, { dries, from, to, name, leg, at }: Shallow): Reason | undefined {
  const { departs, height } = around;
  if (departs === undefined || !height || !Number.isFinite(to)) return undefined;
  const least = lowest(height, departs + from, departs + to);
  if (least === undefined) return undefined;
  const depth = least - dries;
  const wanted = trip.policy.depth ?? DEPTH_WANTED;
  const told = { measure: 'length' as const, value: depth, limit: wanted, ...(name && { name }), legs: [leg], at };
  if (depth >= wanted + WEATHER) return { code: 'shoal-covered', level: 'note', ...told };
  const level = depth >= wanted ? 'marginal' : 'no-go';
  return { code: 'too-shallow', level, ...told, fixes: [{ code: 'draw-round' }, { code: 'wait' }] };
}

/** Lowest height of the tide between two instants, m; undefined where any of it is not told. */
function lowest(height: HeightAt, from: number, to: number): number | undefined {
  let least = Infinity;
  for (let at = from; ; at = Math.min(at + STEP, to)) {
    const found = height(at);
    if (!found.known) return undefined;
    least = Math.min(least, found.height);
    if (at >= to) return least;
  }
}

/** From the earliest arrival on a leg to the latest leaving of it, s from departure. */
function passing({ manoeuvring }: Prepared, { sailed }: Run, leg: number): { from: number; to: number } {
  let time = manoeuvring / 2;
  let from = Infinity;
  let to = 0;
  for (const { stretch, time: taken } of sailed) {
    if (stretch.leg === leg) from = Math.min(from, time);
    time += taken;
    if (stretch.leg === leg) to = time;
    time += stretch.stop;
  }
  return { from: from * EARLY, to: to * LATE };
}
