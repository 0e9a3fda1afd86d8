import { bestSpeed } from '../curve/best-speed.ts';
import type { Afloat, Boat } from '../curve/boat.ts';
import { PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import type { Weather } from '../curve/steady.ts';
import { courseToSteer } from '../route/current-triangle.ts';
import type { Stretch } from '../route/split-legs.ts';
import { planingSpeedKept } from '../water/sea-speed.ts';
import type { Stream } from '../water/shapes.ts';
import type { Prepared } from './prepare.ts';
import type { Scenario } from './scenario.ts';

/**
 * Planned speed after zone limit and the scenario's way home; the one wanted in its sea; and what the waves leave, though
 * they may not be let slow the boat.
 */
export function wantedSpeed(
  prepared: Prepared,
  boat: Boat,
  afloat: Afloat,
  weather: Weather,
  stretch: Stretch,
  stream: Stream | undefined,
  scenario: Scenario,
): { readonly planned: number; readonly wanted: number; readonly inWaves: number } {
  let speed: number;
  if (typeof stretch.speed === 'number') {
    speed = stretch.speed;
  } else {
    const overGround = (through: number): number => {
      const triangle = stream ? courseToSteer(stretch.trackDeg, through, stream) : undefined;
      if (!triangle) return through;
      return triangle.possible ? triangle.speedOverGround : 0;
    };
    speed =
      bestSpeed(boat, afloat, weather, overGround, stretch.speed === 'best-planing') ??
      // Nothing qualifies: the demand is computed at planing speed and the judge finds it not held.
      (stretch.speed === 'best-planing' ? speedAtFroude(boat, afloat, 2.5) : prepared.displacementSpeed);
  }
  if (scenario.oneWay || stretch.part === 'home') {
    if (scenario.homeSpeed !== undefined && speed > scenario.homeSpeed) speed = scenario.homeSpeed;
    if (scenario.homeCap !== undefined) speed = Math.min(speed, scenario.homeCap);
  }
  const limited = stretch.limit !== undefined ? Math.min(speed, stretch.limit) : speed;
  const inWaves = keptInWaves(prepared, boat, afloat, limited, weather.waveHeight);
  return { planned: limited, wanted: scenario.unslowed ? limited : inWaves, inWaves };
}

/** Planing speed kept in this sea; too little of it left to plane on is displacement speed. */
function keptInWaves(prepared: Prepared, boat: Boat, afloat: Afloat, speed: number, waveHeight: number): number {
  const planing = speedAtFroude(boat, afloat, PLANING_FROUDE);
  if (waveHeight <= 0 || speed < planing) return speed;
  const kept = speed * (planingSpeedKept(waveHeight, prepared.trip.craft.hull.length) ?? 0);
  return kept >= planing ? kept : prepared.displacementSpeed;
}
