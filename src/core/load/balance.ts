import type { Craft, Position, Store } from '../craft/shapes.ts';
import { placed } from './placing.ts';
import type { Load } from './shapes.ts';

/** How heavy the boat is and where; what the plate counts. Lengths m, masses kg, area m2. */
export interface LoadBalance {
  readonly allUpMass: number;
  /** Centre of gravity forward of the aft end of the wetted bottom, and as a share of the wetted length. */
  readonly lcg: number;
  readonly lcgShare: number;
  /** To starboard. */
  readonly lateral: number;
  /** Above the keel. */
  readonly vcg: number;
  readonly persons: number;
  readonly peopleAndGear: number;
  /** What the plate holds its load limit against. */
  readonly counted: number;
  /** Frontal area with those aboard. */
  readonly airArea: number;
}

/** Everything about a loaded boat but its fuel: all that `balanceAt` needs. */
export interface BalanceBase {
  readonly mass: number;
  /** First moments of that mass, kg m. */
  readonly momentX: number;
  readonly momentY: number;
  readonly momentZ: number;
  /** Where the fuel's mass sits; tanks are drawn down alike, in proportion to their capacity. */
  readonly storeAt: Required<Position>;
  readonly wettedLength: number;
  readonly persons: number;
  readonly peopleAndGear: number;
  readonly countedFixed: number;
  /** Share of the fuel that the plate counts. */
  readonly countedStore: number;
  readonly airArea: number;
}

/** Height above the keel of a mass whose height nobody gave, m (common practice, no source: a sitting adult's middle). */
const UNKNOWN_HEIGHT = 0.45;

/** Rated power, W, up to which an engine counts as load on an EU plate (ISO 12217-3: above 3 kW it is in the light craft mass). */
const LIGHT_ENGINE = 3000;

/**
 * Mass, balance and plate load of a craft with its load and `storeMass` kg of fuel in its tanks (0 with batteries: their
 * mass does not change).
 */
export function balance(craft: Craft, load: Load, storeMass: number): LoadBalance {
  return balanceAt(balanceBase(craft, load), storeMass);
}

/** The part of `balance` that stays while fuel burns off. */
export function balanceBase({ hull, drive, store }: Craft, load: Load): BalanceBase {
  const { items } = placed(hull, load);
  const holders = holdersOf(store);
  const sum = { mass: 0, x: 0, y: 0, z: 0 };
  const add = (mass: number, { x, y, z }: Position) => {
    sum.mass += mass;
    sum.x += mass * x;
    sum.y += mass * y;
    sum.z += mass * (z ?? UNKNOWN_HEIGHT);
  };
  add(hull.mass, hull.centre);
  add(drive.mass, hull.engine);
  for (const { mass, at } of holders) add(mass, at);
  for (const { mass, place } of items) add(mass, place);
  const persons = items.filter(({ kind }) => kind === 'adult' || kind === 'child').length;
  const peopleAndGear = items.reduce((total, { mass }) => total + mass, 0);
  const european = hull.plate !== undefined && hull.plate !== 'none' && hull.plate.scheme === 'eu';
  const capacity = holders.reduce((total, holder) => total + holder.capacity, 0);
  const share = (part: (holder: Holder) => number) =>
    capacity > 0 ? holders.reduce((total, holder) => total + part(holder) * holder.capacity, 0) / capacity : 0;
  const engine = european && drive.ratedPower > LIGHT_ENGINE ? 0 : drive.mass;
  return {
    mass: sum.mass,
    momentX: sum.x,
    momentY: sum.y,
    momentZ: sum.z,
    storeAt: {
      x: share(({ at }) => at.x),
      y: share(({ at }) => at.y),
      z: share(({ at }) => at.z ?? UNKNOWN_HEIGHT),
    },
    wettedLength: hull.wettedLength,
    persons,
    peopleAndGear,
    countedFixed: peopleAndGear + engine + holders.reduce((total, { mass }) => total + mass, 0),
    countedStore: european ? share(({ fixed }) => (fixed ? 0 : 1)) : 1,
    airArea: hull.airArea + persons * hull.airAreaPerPerson,
  };
}

/** `balance` for another mass of fuel, kg; a handful of multiplications. */
export function balanceAt(base: BalanceBase, storeMass: number): LoadBalance {
  const { storeAt } = base;
  const allUpMass = base.mass + storeMass;
  const lcg = (base.momentX + storeMass * storeAt.x) / allUpMass;
  return {
    allUpMass,
    lcg,
    lcgShare: lcg / base.wettedLength,
    lateral: (base.momentY + storeMass * storeAt.y) / allUpMass,
    vcg: (base.momentZ + storeMass * storeAt.z) / allUpMass,
    persons: base.persons,
    peopleAndGear: base.peopleAndGear,
    counted: base.countedFixed + base.countedStore * storeMass,
    airArea: base.airArea,
  };
}

interface Holder {
  /** Without fuel. */
  readonly mass: number;
  readonly at: Position;
  /** Litres of fuel; 0 for a battery. */
  readonly capacity: number;
  readonly fixed: boolean;
}

/** Batteries count as portable: their record does not say, and portable is the stricter. */
function holdersOf(store: Store): Holder[] {
  switch (store.kind) {
    case 'tank':
      return store.tanks.map(({ emptyMass, at, capacityL, fixed }) => ({
        mass: emptyMass,
        at,
        capacity: capacityL,
        fixed,
      }));
    case 'battery':
      return store.batteries.map(({ mass, at }) => ({ mass, at, capacity: 0, fixed: false }));
    default:
      return store satisfies never;
  }
}
