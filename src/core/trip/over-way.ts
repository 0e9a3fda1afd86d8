import type { Afloat } from '../curve/boat.ts';
import { steady } from '../curve/steady.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import type { Stretch } from '../route/split-legs.ts';
import { streamOn, weatherOn } from './met-on-way.ts';
import type { Prepared } from './prepare.ts';
import type { Sailed } from './sail.ts';
import type { Scenario } from './scenario.ts';
import { wantedSpeed } from './wanted-speed.ts';

/** A way sailed besides the trip: over the ground, m/s, 0 without headway; and out of the store, kg/s or W. */
export interface OverWay {
  readonly ground: number;
  readonly flow: number;
}

/** When and how loaded; and a stretch sailed with that load, if there is one, whose hull is this one's at the same speed. */
interface As {
  readonly at: number;
  readonly afloat: Afloat;
  readonly like?: Sailed;
}

/** What a way takes at the speed planned for it, `at` s after departure, with nothing in tow. */
export function overWay(prepared: Prepared, scenario: Scenario, way: Stretch, { at, afloat, like }: As): OverWay {
  const met = weatherOn(way, scenario, at);
  const weather = met.tow ? { ...met, tow: undefined } : met;
  const stream = streamOn(way, scenario, at);
  const boat = prepared.boatAt(scenario.batteryTemperatureC);
  const speed = wantedSpeed(prepared, boat, afloat, weather, way, stream, scenario).wanted;
  let ground = speed;
  if (stream) {
    const triangle = courseToSteer(way.trackDeg, speed, stream);
    ground = triangle.possible ? triangle.speedOverGround : 0;
  }
  if (!(ground > 0)) return { ground: 0, flow: Infinity };
  const hull = like?.speed === speed && like.afloat.mass === afloat.mass ? like.steady.hull : undefined;
  return { ground, flow: steady(boat, afloat, speed, weather, hull).flow };
}
