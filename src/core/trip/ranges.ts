import { steady } from '../curve/steady.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import { compass, legBetween } from '../route/distance.ts';
import type { Prepared } from './prepare.ts';
import { afloatIn, type Run, streamOn, windOn } from './sail.ts';

export interface Ranges {
  readonly oneWay: number;
  readonly outAndHome: number;
}

/**
 * How far the boat gets at the speed it sails most of this trip at, towards the turn of the route, with this wind and
 * stream and the reserve kept; m. One way ends there, out and home comes back the same way.
 */
export function ranges(prepared: Prepared, run: Run, available: number): Ranges {
  const outward = run.sailed.filter((s) => s.stretch.part === 'out' && s.possible);
  const longest = outward.reduce((a, b) => (b.stretch.distance > (a?.stretch.distance ?? 0) ? b : a), outward[0]);
  if (!longest) return { oneWay: 0, outAndHome: 0 };
  const start = outward[0]!.stretch.from;
  const turn = outward.at(-1)!.stretch.to;
  const { trackDeg } = legBetween(start, turn);
  const speed = longest.speed;
  const out = perMetre(prepared, run, speed, { part: 'out', trackDeg });
  const home = perMetre(prepared, run, speed, { part: 'home', trackDeg: compass(trackDeg + 180) });
  const left = Math.max(available - run.manoeuvring, 0);
  return { oneWay: left / out, outAndHome: left / (out + home) };
}

/** Use per metre over the ground; Infinity without headway. */
function perMetre(
  prepared: Prepared,
  run: Run,
  speed: number,
  way: { part: 'out' | 'home'; trackDeg: number },
): number {
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const afloat = afloatIn(prepared, run.scenario, prepared.storeMass(run.scenario.weighs));
  const weather = { headwind: windOn(way, run.scenario), waveHeight: run.scenario.waveHeight };
  const stream = streamOn(way, run.scenario);
  const triangle = stream
    ? courseToSteer(way.trackDeg, speed, stream)
    : ({ possible: true, speedOverGround: speed } as const);
  const ground = triangle.possible ? triangle.speedOverGround : 0;
  return ground > 0 ? steady(boat, afloat, speed, weather).flow / ground : Infinity;
}
