import { steady } from '../curve/steady.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import { compass, destination, interpolate } from '../route/distance.ts';
import { equalTimeAlong, lastReturnPoint, type TurnPoint, type TurnStretch } from '../route/turn-point.ts';
import type { Prepared } from './prepare.ts';
import { type Run, type Sailed, streamOn, wantedSpeed, windOn } from './sail.ts';
import type { TurnBack } from './shapes.ts';

/** No small boat's trip reaches farther past its turn, m; a longer line would be laid round the world. */
const FARTHEST = 200_000;

/** The last point to turn back from with the reserve whole, and the point where on and back take equally long. */
export interface TurnPoints {
  readonly turnBack: TurnBack;
  /** Undefined where the trip comes back the same way: going on is never shorter. */
  readonly halfway: TurnBack | undefined;
}

/**
 * Walks the route with the way back over the same water (at the speed planned for it) beside the way on. A trip out
 * and home by the same way is walked to its turn; `available` is what may be used, reserve taken off.
 */
export function turnPoints(prepared: Prepared, run: Run, available: number): TurnPoints {
  const { mirrored, walked, stretches } = wayBack(prepared, run);
  const place = (point: TurnPoint): TurnBack => placed(point, walked, prepared);
  const last = lastReturnPoint(stretches, available - run.manoeuvring);
  const turnBack = place(last);
  return {
    turnBack:
      last.onRoute || !mirrored ? turnBack : beyond(turnBack, stretches, walked, prepared, available - run.manoeuvring),
    halfway: mirrored ? undefined : place(equalTimeAlong(stretches)),
  };
}

/** The stretches that a turn may come on, each with the way back over the same water. */
export interface WayBack {
  readonly mirrored: boolean;
  readonly walked: readonly Sailed[];
  readonly stretches: readonly TurnStretch[];
}

/** A trip out and home by the same way is walked to its turn, any other to its end. */
export function wayBack(prepared: Prepared, run: Run): WayBack {
  const mirrored = prepared.trip.route.shape === 'out-and-home';
  const walked = mirrored ? run.sailed.filter((s) => s.stretch.part === 'out') : run.sailed;
  const home = mirrored ? run.sailed.slice(walked.length).reverse() : [];
  const stretches = walked.map((s, i) => (home[i] ? mirroredStretch(s, home[i]) : turnStretch(prepared, run, s)));
  return { mirrored, walked, stretches };
}

/** The way back over a stretch is the planned one home. */
function mirroredStretch(out: Sailed, home: Sailed): TurnStretch {
  return {
    distance: out.stretch.distance,
    needOnward: out.use,
    needBack: home.use,
    timeOnward: out.time,
    timeBack: home.time,
  };
}

/** A stretch and the way back over it; `pace` in place of the speed planned for it. */
export function turnStretch(prepared: Prepared, run: Run, s: Sailed, pace = s.stretch.speed): TurnStretch {
  const back = { part: 'home' as const, trackDeg: compass(s.stretch.trackDeg + 180) };
  const weather = { headwind: windOn(back, run.scenario), waveHeight: run.scenario.waveHeight };
  const stream = streamOn(back, run.scenario);
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const speed = wantedSpeed(
    prepared,
    boat,
    s.afloat,
    weather,
    { ...s.stretch, ...back, speed: pace },
    stream,
    run.scenario,
  ).wanted;
  const triangle = stream
    ? courseToSteer(back.trackDeg, speed, stream)
    : ({ possible: true, speedOverGround: speed } as const);
  const ground = triangle.possible ? triangle.speedOverGround : 0;
  const timeBack = ground > 0 ? s.stretch.distance / ground : Infinity;
  const flow = steady(boat, s.afloat, speed, weather).flow;
  return {
    distance: s.stretch.distance,
    needOnward: s.use,
    needBack: timeBack < Infinity ? flow * timeBack : Infinity,
    timeOnward: s.time,
    timeBack,
  };
}

function placed(point: TurnPoint, walked: readonly Sailed[], prepared: Prepared): TurnBack {
  let stops = prepared.manoeuvring / 2;
  for (let i = 0; i < point.stretch && i < walked.length; i++) stops += walked[i]!.stretch.stop;
  const on = walked[Math.min(point.stretch, walked.length - 1)]!;
  const at = point.stretch < walked.length ? interpolate(on.stretch.from, on.stretch.to, point.share) : on.stretch.to;
  return { distance: point.distance, time: point.time + stops, at, onRoute: point.onRoute };
}

/** Past the planned turn, straight on as on the last stretch. */
function beyond(
  turn: TurnBack,
  stretches: readonly TurnStretch[],
  walked: readonly Sailed[],
  prepared: Prepared,
  available: number,
): TurnBack {
  const last = stretches.at(-1)!;
  const spent = stretches.reduce((sum, s) => sum + s.needOnward + s.needBack, 0);
  const perMetre = (last.needOnward + last.needBack) / last.distance;
  if (!(perMetre > 0) || perMetre === Infinity) return turn;
  const more = Math.min(Math.max(available - spent, 0) / perMetre, FARTHEST);
  const { stretch } = walked.at(-1)!;
  return {
    distance: turn.distance + more,
    time: turn.time + (more / last.distance) * last.timeOnward,
    at: destination(stretch.to, stretch.trackDeg, more / prepared.drawnFactor),
    onRoute: false,
  };
}
