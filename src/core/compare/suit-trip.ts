import type { Craft } from '../craft/shapes.ts';
import { destination } from '../route/distance.ts';
import { planTrip } from '../trip/plan-trip.ts';
import type { Plan, Reason, Trip } from '../trip/shapes.ts';
import { BEAUFORT, beaufortMiddle } from '../water/beaufort.ts';
import { easySpeed } from './easy-speed.ts';
import { seatedCrew, stowedGear } from './seat-crew.ts';
import type { SuitTrip, Use } from './suit-shapes.ts';

/** Open water, so that no shore is taken for checked; the trip goes south and comes home north. */
const ANYWHERE = { lat: 45.99, lon: -32.04 };

/** Wind that raises such waves on open water, m/s, between the middles of the Beaufort classes; 0 in flat water. */
export function windFor(waveHeight: number): number {
  for (let force = 1; force < BEAUFORT.length; force++) {
    const [low, high] = [BEAUFORT[force - 1]!.probableWave, BEAUFORT[force]!.probableWave];
    if (waveHeight > high) continue;
    const [from, to] = [force === 1 ? 0 : beaufortMiddle(force - 1), beaufortMiddle(force)];
    return from + ((waveHeight - low) / (high - low)) * (to - from);
  }
  return beaufortMiddle(12);
}

/** The trip of a use: straight out and home, the wind from ahead on the way home, a full tank, a third kept. */
export function tripOfUse(craft: Craft, use: Use): Trip {
  const wind = windFor(use.waveHeight);
  return {
    version: 1,
    craft,
    load: {
      items: [...seatedCrew(craft.hull, use.crew), ...stowedGear(craft.hull, use.gear)],
      fill: 1,
      fillKnownBy: 'measured',
    },
    route: {
      shape: 'out-and-home',
      waypoints: [ANYWHERE, destination(ANYWHERE, 180, use.distance / 2)],
      speed: use.speed ?? easySpeed(craft.hull),
    },
    conditions: {
      water: use.water,
      wind: wind > 0 ? { fromDeg: 0, speed: wind } : 'calm',
      stream: 'slack',
      sea: use.waveHeight > 0 ? { height: use.waveHeight } : 'calm',
      batteryTemperatureC: use.batteryTemperatureC,
    },
    policy: { reserve: [{ kind: 'thirds' }] },
  };
}

/** Calmer seas are tried in steps of this height, m. */
const CALMER = 0.1;

/**
 * Its plan without what a chart would say: no water in particular is meant. What fits in waves has to fit on every
 * calmer day too: there nothing slows the boat below the speed wished.
 */
export function planOfUse(craft: Craft, use: Use): { readonly trip: SuitTrip; readonly reasons: readonly Reason[] } {
  const plan = planned(craft, use);
  let reasons = seriousOf(plan);
  for (let step = 0; reasons.length === 0 && step * CALMER < use.waveHeight; step++) {
    reasons = seriousOf(planned(craft, { ...use, waveHeight: step * CALMER }));
  }
  return { trip: figuresOf(plan), reasons };
}

function planned(craft: Craft, use: Use): Plan {
  const plan = planTrip(tripOfUse(craft, use), undefined, { quick: true });
  if (!plan.ok) throw new RangeError('a use has a distance');
  return plan.value;
}

function seriousOf({ reasons }: Plan): readonly Reason[] {
  return reasons.filter(({ code, level }) => code !== 'waters-unknown' && level !== 'note');
}

function figuresOf(plan: Plan): SuitTrip {
  // The way out; the way home is as long.
  const out = plan.legs[0]!;
  return {
    store: plan.store,
    usable: plan.usable,
    reserve: plan.reserve,
    need: plan.need,
    left: plan.left,
    probability: plan.probability,
    range: plan.range.outAndHome,
    speed: out.speedThroughWater,
    planing: out.regime === 'planing',
    time: plan.time,
  };
}
