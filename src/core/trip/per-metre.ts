import { steady } from '../curve/steady.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import type { Stretch } from '../route/split-legs.ts';
import type { Prepared } from './prepare.ts';
import { afloatIn, streamOn, wantedSpeed, windOn } from './sail.ts';
import type { Scenario } from './scenario.ts';

/**
 * Use per metre over the ground along a stretch, kg/m or J/m, with the boat as heavy as at departure; Infinity without
 * headway.
 */
export function needPerMetre(prepared: Prepared, scenario: Scenario, way: Stretch): number {
  const boat = prepared.boatAt(scenario.batteryTemperatureC);
  const afloat = afloatIn(prepared, scenario, prepared.storeMass(scenario.weighs));
  const weather = { headwind: windOn(way, scenario), waveHeight: scenario.waveHeight };
  const stream = streamOn(way, scenario);
  const speed = wantedSpeed(prepared, boat, afloat, weather, way, stream, scenario).wanted;
  const triangle = stream
    ? courseToSteer(way.trackDeg, speed, stream)
    : ({ possible: true, speedOverGround: speed } as const);
  const ground = triangle.possible ? triangle.speedOverGround : 0;
  return ground > 0 ? steady(boat, afloat, speed, weather).flow / ground : Infinity;
}
