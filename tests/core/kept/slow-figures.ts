import { planTrip } from '../../../src/core/trip/plan-trip.ts';
import type { Plan, Trip } from '../../../src/core/trip/shapes.ts';
import { haven } from '../../trips.ts';
import { digest } from './digest.ts';

/** What a quick plan leaves out: payload, tipping values, the fill needed and the turn at the best speed. */
export function slowFigures(trip: Trip, departures = false): unknown {
  const plan = planTrip(trip, haven(), { departures });
  return plan.ok ? slow(plan.value) : plan;
}

function slow({ verdict, payload, tipping, fillNeeded, turnBackSlow, reasons }: Plan) {
  const fixes = reasons.flatMap(({ code, fixes }) => (fixes ? [{ code, fixes }] : []));
  return { verdict, payload, tipping, fillNeeded, turnBackSlow, fixes };
}

/** A whole plan: what decides it in figures, all the rest of it in sums. */
export function briefly(trip: Trip): unknown {
  const plan = planTrip(trip, haven());
  if (!plan.ok) return plan;
  const { verdict, payload, tipping, reasons, need, fillNeeded, legs, ...rest } = plan.value;
  return {
    verdict,
    reasons: reasons.map(({ code, level, value = 0 }) => `${code} ${level} ${value.toPrecision(7)}`),
    payload: `${payload.extra?.toPrecision(7)} ${payload.binds}`,
    tipping: tipping.map(({ knob, from, to, value }) => `${knob} ${value.toPrecision(7)} ${from} ${to}`),
    need: need.median,
    fillNeeded,
    ...(digest({ legs, rest, others: [reasons, payload, tipping] }) as object),
  };
}
