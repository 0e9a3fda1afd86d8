import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/trip-checks.json' with { type: 'json' };
import { courseToSteer } from '../../src/core/route/current-triangle.ts';
import { pointOfNoReturnByAmount } from '../../src/core/route/turn-point.ts';
import { KMH, KNOT, WATT_HOUR } from '../../src/core/units/convert.ts';

interface Check {
  readonly id: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: Readonly<Record<string, number>>;
}

function check(id: string): Check {
  return (checks as unknown as Check[]).find((entry) => entry.id === id)!;
}

function holds({ expected, tolerance }: Check, name: string, value: number): void {
  expect(Math.abs(value - expected[name]!), name).toBeLessThanOrEqual(tolerance[name]!);
}

function steered({ inputs }: Check): ReturnType<typeof courseToSteer> {
  const { course_to_make_good_deg, speed_through_water_kn, current_set_deg, current_drift_kn } = inputs;
  const stream = { setDeg: current_set_deg!, rate: current_drift_kn! * KNOT };
  return courseToSteer(course_to_make_good_deg!, speed_through_water_kn! * KNOT, stream);
}

// Figures of our own prototype of the current triangle.
describe('courseToSteer', () => {
  it.each(['cts-90-5-210-2', 'cts-345-12-90-3', 'cts-40-10-130-2'])('still gives %s', (id) => {
    const entry = check(id);
    const found = steered(entry);
    if (!found.possible) throw new Error(`${id} should be possible`);
    holds(entry, 'course_to_steer_deg', found.steerDeg);
    holds(entry, 'speed_made_good_kn', found.speedOverGround / KNOT);
  });

  it('still says that a stream across the track beats a slower boat', () => {
    expect(steered(check('cts-impossible'))).toEqual({ possible: false, why: 'cross' });
  });
});

// Figures of our own prototype of the point of no return by fuel and by charge.
describe('pointOfNoReturnByAmount', () => {
  it('still gives pnr-fuel', () => {
    const entry = check('pnr-fuel');
    const { inputs } = entry;
    // Litres and litres an hour stand for kg and kg/s: only their ratio counts.
    const found = pointOfNoReturnByAmount(
      inputs.fuel_usable_L! - inputs.reserve_L!,
      { flow: inputs.rate_out_L_per_h! / 3600, speed: inputs.speed_out_km_per_h! * KMH },
      { flow: inputs.rate_home_L_per_h! / 3600, speed: inputs.speed_home_km_per_h! * KMH },
    );
    holds(entry, 'distance_to_pnr_km', found.distance / 1000);
  });

  it('still gives pnr-energy', () => {
    const entry = check('pnr-energy');
    const { inputs } = entry;
    const found = pointOfNoReturnByAmount(
      (inputs.energy_usable_Wh! - inputs.reserve_Wh!) * WATT_HOUR,
      { flow: inputs.power_out_W!, speed: inputs.speed_out_km_per_h! * KMH },
      { flow: inputs.power_home_W!, speed: inputs.speed_home_km_per_h! * KMH },
    );
    holds(entry, 'distance_to_pnr_km', found.distance / 1000);
  });
});
