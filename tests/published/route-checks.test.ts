import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/trip-checks.json' with { type: 'json' };
import { courseToSteer, findStream, trackMade } from '../../src/core/route/current-triangle.ts';
import { legBetween, lonBetween } from '../../src/core/route/distance.ts';
import { equalTimePoint, pointOfNoReturn } from '../../src/core/route/turn-point.ts';
import { DEGREE, KNOT, MINUTE, NAUTICAL_MILE } from '../../src/core/units/convert.ts';
import { told } from './told.ts';

interface Check {
  readonly id: string;
  readonly source: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: Readonly<Record<string, number>>;
}

function check(id: string): Check {
  return (checks as unknown as Check[]).find((entry) => entry.id === id)!;
}

/** Holds a figure against the entry's own value and tolerance. */
function holds({ id, expected, tolerance }: Check, name: string, value: number): void {
  told(id, name, expected[name]!, value);
  expect(Math.abs(value - expected[name]!), name).toBeLessThanOrEqual(tolerance[name]!);
}

// Published answer key of a chartwork practice set; answers plotted, to about 5 degrees and 0.1 kn.
describe('courseToSteer', () => {
  it.each(['cts-published-1', 'cts-published-2', 'cts-published-3'])('meets the plotted answer %s', (id) => {
    const entry = check(id);
    const { course_to_make_good_deg, speed_through_water_kn, current_set_deg, current_drift_kn } = entry.inputs;
    const found = courseToSteer(course_to_make_good_deg!, speed_through_water_kn! * KNOT, {
      setDeg: current_set_deg!,
      rate: current_drift_kn! * KNOT,
    });
    if (!found.possible) throw new Error(`${id} should be possible`);
    holds(entry, 'course_to_steer_deg', found.steerDeg);
    holds(entry, 'speed_made_good_kn', found.speedOverGround / KNOT);
  });
});

// Mathematics for Air Crew Trainees (US wartime text, Smithsonian transcription), exercise with answer.
describe('trackMade', () => {
  it('meets the answer of the wartime exercise', () => {
    const entry = check('track-315');
    const { heading_deg, speed_through_medium, medium_from_deg, medium_speed } = entry.inputs;
    const made = trackMade(heading_deg!, speed_through_medium!, {
      setDeg: medium_from_deg! + 180,
      rate: medium_speed!,
    });
    holds(entry, 'track_deg', made.trackDeg);
    holds(entry, 'ground_speed', made.speedOverGround);
  });
});

// Wartime navigation trainer text (Smithsonian transcription), Example 16.
describe('findStream', () => {
  it('finds the medium of the wartime example', () => {
    const entry = check('find-current-94');
    const { heading_deg, speed_through_medium, track_deg, ground_speed } = entry.inputs;
    const stream = findStream(heading_deg!, speed_through_medium!, {
      trackDeg: track_deg!,
      speedOverGround: ground_speed!,
    });
    holds(entry, 'medium_from_deg', (stream.setDeg + 180) % 360);
    holds(entry, 'medium_speed', stream.rate);
  });
});

// Flying blog page on the point of no return; pilot forum example with the wind both ways.
describe('pointOfNoReturn', () => {
  it.each(['pnr-390min', 'pnr-10h-calm', 'pnr-10h-headwind'])('meets %s', (id) => {
    const entry = check(id);
    const { endurance_min, speed_out_kn, speed_home_kn } = entry.inputs;
    const found = pointOfNoReturn(endurance_min! * MINUTE, speed_out_kn! * KNOT, speed_home_kn! * KNOT);
    holds(entry, 'distance_to_pnr_nmi', found.distance / NAUTICAL_MILE);
    if ('time_to_pnr_min' in entry.expected) holds(entry, 'time_to_pnr_min', found.time / MINUTE);
  });
});

// Flying blog page on the point of equal time; its question, the answer worked out apart.
describe('equalTimePoint', () => {
  it('meets etp-920', () => {
    const entry = check('etp-920');
    const { distance_nmi, speed_on_kn, speed_back_kn } = entry.inputs;
    const found = equalTimePoint(distance_nmi! * NAUTICAL_MILE, speed_on_kn! * KNOT, speed_back_kn! * KNOT);
    holds(entry, 'distance_to_etp_nmi', found.distance / NAUTICAL_MILE);
    holds(entry, 'time_to_etp_min', found.time / MINUTE);
  });
});

// geo-flinders: the test line published with the formulas of Vincenty. The others: a geodesic library.
describe('legBetween', () => {
  it.each(['geo-flinders', 'geo-d43', 'geo-ew50', 'geo-eq', 'geo-ns0', 'geo-dg50'])('meets the geodesic %s', (id) => {
    const entry = check(id);
    const { lat1_deg, lon1_deg, lat2_deg, lon2_deg } = entry.inputs;
    const leg = legBetween({ lat: lat1_deg!, lon: lon1_deg! }, { lat: lat2_deg!, lon: lon2_deg! });
    holds(entry, 'distance_m', leg.distance);
    // A leg's track is that of its middle; a geodesic starts half the convergence of the meridians before it.
    const halfConvergenceDeg =
      (lonBetween(lon1_deg!, lon2_deg!) * Math.sin(((lat1_deg! + lat2_deg!) / 2) * DEGREE)) / 2;
    holds(entry, 'initial_azimuth_deg', leg.trackDeg - halfConvergenceDeg);
  });
});
