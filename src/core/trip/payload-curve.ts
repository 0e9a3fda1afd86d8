import { froudeVolume } from '../hull/froude.ts';
import { regime } from '../hull/regime.ts';
import type { Waters } from '../route/waters.ts';
import { holding } from './holding.ts';
import { payload } from './payload.ts';
import { planBasis } from './plan-basis.ts';
import { type Prepared, prepare } from './prepare.ts';
import type { Payload, Trip } from './shapes.ts';

/** Safe payload of the trip made longer or shorter, or sailed at another speed. */
export interface PayloadPoint {
  /** Length of the whole trip, m, or speed through the water, m/s. */
  readonly at: number;
  readonly payload: Payload;
  /** The boat planes at the speed held; with more than the payload it would drop off the plane. */
  readonly planes: boolean;
  readonly dropsOff: boolean;
}

/** A stretch of the curve with one limit. */
export interface PayloadStretch {
  readonly from: number;
  readonly to: number;
  readonly binds: Payload['binds'];
  readonly dropsOff: boolean;
}

/** One point for each length of the trip, m, all legs longer or shorter alike and at the speeds planned. */
export function* payloadOverLength(
  trip: Trip,
  waters: Waters | undefined,
  lengths: readonly number[],
): Generator<PayloadPoint, void> {
  const prepared = prepare(trip, waters);
  const now = lengthOf(prepared);
  for (const length of lengths) {
    const stretches = prepared.stretches.map((s) => ({ ...s, distance: (s.distance * length) / now }));
    yield { at: length, ...pointOf({ ...prepared, stretches }) };
  }
}

/** One point for each speed, m/s, held on every leg; limits of zones still hold. */
export function* payloadOverSpeed(
  trip: Trip,
  waters: Waters | undefined,
  speeds: readonly number[],
): Generator<PayloadPoint, void> {
  const prepared = prepare(trip, waters);
  for (const speed of speeds) {
    const stretches = prepared.stretches.map((s) => ({ ...s, speed }));
    yield { at: speed, ...pointOf({ ...prepared, stretches }) };
  }
}

/** Length of the trip with its manoeuvring room, as the curve over length counts it, m. */
export function tripLength(trip: Trip, waters: Waters | undefined): number {
  return lengthOf(prepare(trip, waters));
}

/** Where one limit hands over to the next, half way between two points. */
export function payloadStretches(points: readonly PayloadPoint[]): readonly PayloadStretch[] {
  const stretches: PayloadStretch[] = [];
  points.forEach(({ at, payload: { binds }, dropsOff }, i) => {
    const from = i === 0 ? at : (points[i - 1]!.at + at) / 2;
    const to = i === points.length - 1 ? at : (at + points[i + 1]!.at) / 2;
    const last = stretches.at(-1);
    if (last && last.binds === binds && last.dropsOff === dropsOff) stretches[stretches.length - 1] = { ...last, to };
    else stretches.push({ from, to, binds, dropsOff });
  });
  return stretches;
}

function lengthOf({ stretches }: Prepared): number {
  return stretches.reduce((sum, { distance }) => sum + distance, 0);
}

function pointOf(prepared: Prepared): Omit<PayloadPoint, 'at'> {
  const { fuel, balance, floats, asked, humpSpeed } = planBasis(prepared);
  const holds = holding(prepared, fuel.run, asked);
  const found = payload(prepared, fuel, balance, { holds, floats, humpSpeed });
  const fastest = fuel.run.sailed.reduce((most, s) => Math.max(most, s.speed), 0);
  const planes = regime(froudeVolume(fastest, balance.allUpMass, prepared.density)) === 'planing';
  return { payload: found, planes, dropsOff: planes && found.binds === 'planing' };
}
