/** What comes after the first answer: payload, tipping values and fill needed, and the curve. Loaded when it is due. */
export { departuresInSteps, planInSteps } from '../../core/trip/plan-trip.ts';
export { tripCurve } from '../../core/trip/trip-curve.ts';
