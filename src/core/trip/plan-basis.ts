import { balanceAt, type LoadBalance } from '../load/balance.ts';
import { AS_PLANNED } from './afloat-in.ts';
import { asked, climbed, climbOf } from './climb.ts';
import { FloatLimits } from './floating.ts';
import { type FuelVerdict, fuelVerdict, withHump } from './fuel-verdict.ts';
import type { Prepared } from './prepare.ts';
import type { Run, Sailed } from './sail.ts';

/** What a plan and its payload are made from: the trip sailed, the fuel judged, the boat balanced and floated. */
export interface PlanBasis {
  readonly fuel: FuelVerdict;
  readonly balance: LoadBalance;
  readonly floats: FloatLimits;
  /** What is asked of the boat, and the tightest speed on the way up to it with its margin. */
  readonly asked: readonly Sailed[];
  readonly climb: { readonly speed: number; readonly margin: number };
  /** Where labouring at the hump is credible, m/s. */
  readonly humpSpeed: number | undefined;
}

/** A hump crossed with less than this to spare makes labouring on it credible. */
const LABOURING = 1.15;
/** Waves over hull length from which planing speed is no longer kept (common practice, no source). */
const FLAT = 0.05;

/** `use` is a factor on every consumption. */
export function planBasis(prepared: Prepared, use = 1): PlanBasis {
  const first = fuelVerdict(prepared, { tweak: { ...AS_PLANNED, use } });
  const boat = prepared.boatAt(first.run.scenario.batteryTemperatureC);
  const way = climbed(boat, climbOf(first.run.sailed), prepared.remembered);
  const humpSpeed = credibleHump(prepared, first.run, way);
  const fuel = humpSpeed === undefined ? first : withHump(prepared, first, humpSpeed, use);
  const balance = balanceAt(prepared.base, prepared.storeMass(fuel.run.scenario.weighs));
  const own = asked(prepared, fuel.run);
  const all = fuel.slowed.length > 0 ? [...own, ...fuel.slowed] : own;
  return {
    fuel,
    balance,
    floats: new FloatLimits(prepared, balance),
    asked: all,
    climb: all === first.run.sailed ? way : climbed(boat, climbOf(all), prepared.remembered),
    humpSpeed,
  };
}

/** Labouring at the hump on the way home is credible in an unknown or real sea, or where the hump is barely crossed. */
function credibleHump(
  { trip, seaTold }: Prepared,
  { scenario }: Run,
  { margin, speed }: { readonly margin: number; readonly speed: number },
): number | undefined {
  const rough = !seaTold || scenario.waveHeight > FLAT * trip.craft.hull.length;
  return margin < Infinity && (rough || margin < LABOURING) ? speed : undefined;
}
