import { describe, it } from 'vitest';
import { airDrag } from '../../src/core/hull/air-drag.ts';
import { legDrag } from '../../src/core/hull/leg-drag.ts';
import { hullResistance } from '../../src/core/hull/resistance.ts';
import { boatOf, checksOf, expectNear, value } from '../core/hull/hull-checks.ts';
import { drag } from '../core/hull/hull-records.ts';

// The same method in our own prototype, printed to six figures.
const PRINTED = 1e-5;

describe('hullResistance', () => {
  for (const check of checksOf('rec-')) {
    it(`repeats ${check.id} of the prototype`, () => {
      const { boat, setting, speed } = boatOf(check);
      const { mass, lcg, water, headwind, extraLegArea } = setting;
      const r = hullResistance(boat.hull, { mass, lcg, water: water! }, speed);
      const near = (actual: number, name: string) => expectNear(actual, value(check.expected, name), PRINTED, name);
      near(drag(boat, setting, speed), 'R_total_N');
      near(r.total, 'R_hull_N');
      near(airDrag(boat.hull.airArea, boat.hull.airDragCoefficient, { speed, headwind: headwind! }), 'R_air_N');
      near(legDrag(boat.legDragArea + extraLegArea!, speed, water!.density), 'R_leg_N');
      near(r.trimDeg, 'trim_deg');
      near(r.shortFormTrimDeg, 'trim_short_form_deg');
      near(r.wettedLengthRatio, 'lambda_');
      near(r.froudeVolume, 'FnV');
      near(r.planingShare, 's_gate');
      near(r.waveGate, 'w_gate');
    });
  }
});
