import type { Craft } from '../craft/shapes.ts';
import { type Afloat, type Boat, boatOf } from '../curve/boat.ts';
import { usableCharge } from '../drive/battery.ts';
import { FULL_FILL, fuelMass, usableFuel } from '../drive/tank.ts';
import { balance, type LoadBalance } from '../load/balance.ts';
import type { Load } from '../load/shapes.ts';
import { legDepth, withDeepLeg } from './shaft.ts';

/** Battery temperature is the battery's own, C. */
export interface Setting {
  readonly water: 'sea' | 'fresh';
  readonly batteryTemperatureC: number;
}

/** A boat with a load aboard, as the curve takes it. */
export interface Loaded {
  readonly craft: Craft;
  readonly boat: Boat;
  readonly afloat: Afloat;
  readonly balance: LoadBalance;
  /** kg or J the engine can reach. */
  readonly usable: number;
}

/** The craft made ready, with the drag of a leg that is too long for its transom; trials of the boat had it already. */
export function setUp(craft: Craft, { water, batteryTemperatureC }: Setting): Boat {
  const depth = craft.calibration ? 0 : (legDepth(craft.hull, craft.drive) ?? 0);
  const drive = withDeepLeg(craft.drive, depth);
  return boatOf(drive === craft.drive ? craft : { ...craft, drive }, water, batteryTemperatureC);
}

/** The boat with this load; a fill that nobody gave counts as full. */
export function loaded(boat: Boat, load: Load): Loaded {
  const { craft, bank } = boat;
  const tanks = craft.store.kind === 'tank' ? craft.store.tanks : [];
  // A full tank leaves the petrol room to expand.
  const fill = bank ? (load.fill ?? 1) : Math.min(load.fill ?? 1, FULL_FILL);
  const now = balance(craft, load, fuelMass(tanks, fill));
  return {
    craft,
    boat,
    balance: now,
    afloat: { mass: now.allUpMass, lcg: now.lcg, airArea: now.airArea, charge: fill },
    usable: bank ? usableCharge(bank, fill) : usableFuel(tanks, fill),
  };
}
