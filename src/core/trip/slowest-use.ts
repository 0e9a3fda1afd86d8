import { bestSpeed } from '../curve/best-speed.ts';
import type { Prepared } from './prepare.ts';
import type { Run } from './sail.ts';

/**
 * Speed of least use per metre over the ground, m/s, in the weather of the longest stretch; undefined where the plan is
 * within a twentieth of it already.
 */
export function slowestUse(prepared: Prepared, run: Run): number | undefined {
  const longest = run.sailed.reduce((a, b) => (b.stretch.distance > a.stretch.distance ? b : a));
  const drift = longest.ground - longest.speed;
  const boat = prepared.boatAt(run.scenario.batteryTemperatureC);
  const overGround = (speed: number): number => speed + drift;
  const best = bestSpeed(boat, longest.afloat, longest.weather, overGround, false);
  return best !== undefined && best < longest.speed * 0.95 ? best : undefined;
}
