import { steady } from '../curve/steady.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import type { Stretch } from '../route/split-legs.ts';
import type { Prepared } from './prepare.ts';
import { afloatIn, streamOn, wantedSpeed, weatherOn } from './sail.ts';
import type { Scenario } from './scenario.ts';

/** Of a trip in wind and stream that change, the hours asked: shares of the time it takes. */
const HOURS = [0, 0.25, 0.5, 0.75, 1] as const;

/**
 * Use per metre over the ground along a stretch, kg/m or J/m, with the boat as heavy as at departure; Infinity without
 * headway. Where wind and stream change by the hour the worst hour of the trip's `time`, s, counts.
 */
export function needPerMetre(prepared: Prepared, scenario: Scenario, way: Stretch, time: number): number {
  if (!prepared.around.varies) return needThen(prepared, scenario, way, 0);
  const span = time < Infinity ? time : 0;
  return Math.max(...HOURS.map((share) => needThen(prepared, scenario, way, share * span)));
}

function needThen(prepared: Prepared, scenario: Scenario, way: Stretch, at: number): number {
  const boat = prepared.boatAt(scenario.batteryTemperatureC);
  const afloat = afloatIn(prepared, scenario, prepared.storeMass(scenario.weighs));
  const weather = { ...weatherOn(way, scenario, at), tow: undefined };
  const stream = streamOn(way, scenario, at);
  const speed = wantedSpeed(prepared, boat, afloat, weather, way, stream, scenario).wanted;
  const triangle = stream
    ? courseToSteer(way.trackDeg, speed, stream)
    : ({ possible: true, speedOverGround: speed } as const);
  const ground = triangle.possible ? triangle.speedOverGround : 0;
  return ground > 0 ? steady(boat, afloat, speed, weather).flow / ground : Infinity;
}
