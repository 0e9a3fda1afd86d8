import { humpOf } from '../curve/hump.ts';
import { CALM } from '../curve/steady.ts';
import { balance as balanceOf, type LoadBalance } from '../load/balance.ts';
import { equilibrium, type Floating } from '../load/equilibrium.ts';
import type { Aboard, Load } from '../load/shapes.ts';
import { weightOf } from '../load/weight-of.ts';
import { prepare } from './prepare.ts';
import type { Plan, Trip } from './shapes.ts';
import { storeGiven } from './store-given.ts';

/** What comes aboard at the turn, kg, and who sits elsewhere from there on. */
export interface Underway {
  /** On the floor amidships, where gear lies. */
  readonly catchMass?: number;
  /** In the bilge at the stern: rain, spray, a wave. */
  readonly waterMass?: number;
  /** The load as it sits on the way home. */
  readonly home?: Load;
}

/** The boat at one point of the trip. */
export interface OnTheWay {
  readonly at: 'departure' | 'turn' | 'turn-loaded' | 'home';
  /** Fuel aboard, kg; 0 for batteries, whose mass stays. */
  readonly fuelMass: number;
  readonly balance: LoadBalance;
  readonly rest: Floating | undefined;
  readonly humpMargin: number;
}

/** Water in the bilge lies here, share of the wetted length, and so high, m. */
const BILGE = { along: 0.12, height: 0.08 };

/**
 * Balance at departure, at the turn before and after what changes there, and at home: the fuel burnt on the way out of
 * the tanks, catch and water aboard, the crew as they sit.
 */
export function onTheWay(
  trip: Trip,
  plan: Plan,
  { catchMass = 0, waterMass = 0, home = trip.load }: Underway = {},
): readonly OnTheWay[] {
  const prepared = prepare(trip, undefined);
  const { craft } = trip;
  const { weighs, fill, batteryTemperatureC } = storeGiven(trip);
  const boat = prepared.boatAt(batteryTemperatureC);
  const full = prepared.storeMass(weighs);
  const turn = plan.legs.findLast(({ part }) => part === 'out');
  const burnt = (left: number): number => (prepared.burns ? Math.min(Math.max(plan.usable - left, 0), full) : 0);
  const atTurn = full - burnt(turn?.left.median ?? plan.usable);
  const atHome = full - burnt(plan.left.median);
  const { wettedLength, stations } = craft.hull;
  const floor = stations.filter(({ use }) => use === 'gear').sort((a, b) => a.x - b.x);
  const middle = floor[Math.floor(floor.length / 2)] ?? { x: 0.4 * wettedLength, y: 0, z: 0.2 };
  const more: Aboard[] = [];
  if (catchMass > 0) more.push(cargo('catch', catchMass, middle));
  if (waterMass > 0) more.push(cargo('water', waterMass, { x: BILGE.along * wettedLength, y: 0, z: BILGE.height }));
  const back: Load = { ...home, items: [...home.items, ...more] };
  const point = (at: OnTheWay['at'], load: Load, fuelMass: number): OnTheWay => {
    const balance = balanceOf(craft, load, fuelMass);
    const afloat = { mass: balance.allUpMass, lcg: balance.lcg, airArea: balance.airArea, charge: fill };
    return {
      at,
      fuelMass,
      balance,
      rest: prepared.body && equilibrium(prepared.body, weightOf(balance), prepared.density),
      humpMargin: humpOf(boat, afloat, CALM).margin,
    };
  };
  const points = [point('departure', trip.load, full), point('turn', trip.load, atTurn)];
  if (back.items.length !== trip.load.items.length || home !== trip.load)
    points.push(point('turn-loaded', back, atTurn));
  return [...points, point('home', back, atHome)];
}

function cargo(id: string, mass: number, { x, y, z }: Aboard['at'] & object): Aboard {
  return { id: `under-way-${id}`, kind: 'gear', mass, at: { x, y, ...(z !== undefined && { z }) } };
}
