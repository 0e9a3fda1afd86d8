import { describe, expect, it } from 'vitest';
import { destination } from '../../../src/core/route/distance.ts';
import { quickPlan } from '../../../src/core/trip/quick-plan.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { haven, soundTrip } from '../../trips.ts';

/** Still water, no wind, no waves: all ways cost the same. */
function still(shape: Trip['route']['shape'], waypoints: Trip['route']['waypoints']): Trip {
  const sound = soundTrip();
  return {
    ...sound,
    route: { ...sound.route, shape, waypoints },
    conditions: { ...sound.conditions, wind: 'calm', stream: 'slack', sea: 'calm' },
  };
}

function planned(trip: Trip): Plan {
  const found = quickPlan(trip, haven());
  if (!found.ok) throw new Error(found.problems[0]!.message);
  return found.value;
}

const start = { lat: 45.975, lon: -32.07 };
const away = destination(start, 150, 1500);
const aside = destination(start, 210, 1500);

describe('where going on is as quick as turning back', () => {
  it('is half way round a loop in still water', () => {
    const plan = planned(still('loop', [start, away, aside]));
    expect(plan.halfway!.distance / plan.distance).toBeCloseTo(0.5, 3);
    // Half the way's time after half of the manoeuvring.
    expect(plan.halfway!.time / plan.time).toBeCloseTo(0.5, 2);
  });

  it('is nowhere on a trip that comes back the same way: turning is always quicker', () => {
    expect(planned(still('out-and-home', [start, away])).halfway).toBeUndefined();
  });
});

describe('the last point to turn back at', () => {
  it('of a trip with fuel to spare lies straight beyond its turn, as far as what is left carries out and home', () => {
    const plan = planned(still('out-and-home', [start, away]));
    const { turnBack, usable, reserve, manoeuvring, distanceOut, need } = plan;
    expect(turnBack!.onRoute).toBe(false);
    // In still water a metre further out is a metre further home at the same use.
    const perMetre = (need.median - manoeuvring) / (2 * distanceOut);
    const farthest = (usable - reserve - manoeuvring) / perMetre / 2;
    expect(turnBack!.distance / farthest).toBeCloseTo(1, 2);
    expect(turnBack!.at.lat).toBeLessThan(away.lat);
  });

  it('with too little lies on the way, half as far as what there is carries', () => {
    const trip = still('out-and-home', [start, away]);
    const little = planned({ ...trip, load: { ...trip.load, fill: 0.1 } });
    const { turnBack, usable, reserve, manoeuvring, distanceOut, need } = little;
    expect(usable - reserve).toBeLessThan(need.median);
    expect(usable - reserve).toBeGreaterThan(manoeuvring);
    expect(turnBack!.onRoute).toBe(true);
    const perMetre = (need.median - manoeuvring) / (2 * distanceOut);
    expect(turnBack!.distance / ((usable - reserve - manoeuvring) / perMetre / 2)).toBeCloseTo(1, 2);
  });
});
