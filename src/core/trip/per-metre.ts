import type { Stretch } from '../route/split-legs.ts';
import { afloatIn } from './afloat-in.ts';
import { overWay } from './over-way.ts';
import type { Prepared } from './prepare.ts';
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
  const afloat = afloatIn(prepared, scenario, prepared.storeMass(scenario.weighs));
  const { ground, flow } = overWay(prepared, scenario, way, { at, afloat });
  return ground > 0 ? flow / ground : Infinity;
}
