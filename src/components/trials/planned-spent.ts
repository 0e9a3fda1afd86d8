import { prepareWaters } from '../../core/route/waters.ts';
import { planTrip } from '../../core/trip/plan-trip.ts';
import type { LegPlan } from '../../core/trip/shapes.ts';
import { fetchWaters, SHIPPED_WATERS } from '../planner/fetch-waters.ts';
import type { Spent } from './spent-of.ts';
import { plannerDraft } from './to-planner.ts';

/** Speeds that differ by less are one, m/s. */
const BIN = 0.25;
/** At which a plan reckons casting off and coming alongside, m/s. */
const MANOEUVRING = 1;

/** Time at each speed of the trip that the planner on this device keeps; undefined where that is no whole trip. */
export async function plannedSpent(): Promise<readonly Spent[] | undefined> {
  const draft = await plannerDraft();
  if (!draft) return undefined;
  const { trip } = draft;
  // Speed limits of the waters slow a plan, so they belong to its times.
  const file = trip.waters === SHIPPED_WATERS ? await fetchWaters(SHIPPED_WATERS) : undefined;
  const plan = planTrip(trip, file && prepareWaters(file), { quick: true });
  if (!plan.ok) return undefined;
  const manoeuvring = plan.value.time - plan.value.legs.reduce((sum, { time, stop }) => sum + time + stop, 0);
  return spentInLegs(plan.value.legs, manoeuvring);
}

/** Legs by their speed over ground, slowest first; manoeuvring is sailed slowly, as the plan reckons it. */
export function spentInLegs(legs: readonly LegPlan[], manoeuvring: number): readonly Spent[] {
  const bins = new Map<number, { way: number; seconds: number }>();
  for (const { speedOverGround, time } of legs) {
    const key = Math.round(speedOverGround / BIN);
    const bin = bins.get(key) ?? { way: 0, seconds: 0 };
    bins.set(key, { way: bin.way + speedOverGround * time, seconds: bin.seconds + time });
  }
  const sailed = [...bins.entries()]
    .sort(([a], [b]) => a - b)
    .map(([, { way, seconds }]) => ({ speed: Math.round((way / seconds) * 100) / 100, seconds: Math.round(seconds) }));
  return manoeuvring > 1 ? [{ speed: MANOEUVRING, seconds: Math.round(manoeuvring) }, ...sailed] : sailed;
}
