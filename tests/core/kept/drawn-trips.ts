import { craftFrom, engines, hulls, stores } from '../../../src/core/files/catalogue.ts';
import type { Aboard } from '../../../src/core/load/shapes.ts';
import type { ReserveRule, Trip } from '../../../src/core/trip/shapes.ts';
import type { Conditions } from '../../../src/core/water/shapes.ts';
import { SPRINGS } from '../trip/day-on-the-water.ts';
import { Drawn } from './drawn.ts';
import { keeping } from './keeping.ts';
import { byHour, calibration } from './made-trips.ts';
import { briefly } from './slow-figures.ts';

const TANKS = stores.filter(({ store }) => store.kind === 'tank');
const BATTERIES = stores.filter(({ store }) => store.kind === 'battery');

/** Trips somebody might make on the offing: an engine that suits the hull, a small crew, fair weather more often than not. */
export function drawnTrips(count: number, seed: number): readonly Trip[] {
  const drawn = new Drawn(seed);
  return Array.from({ length: count }, () => drawnTrip(drawn));
}

/** What comes of sixty of them, in brief. */
export function keepDrawnTrips(name: string, seed: number): void {
  const trips = drawnTrips(60, seed);
  keeping(name, Object.fromEntries(trips.map((trip, i) => [`trip ${i + 1}`, () => briefly(trip)])));
}

function drawnTrip(drawn: Drawn): Trip {
  const craft = drawnCraft(drawn);
  const planes = craft.drive.ratedPower > 5000 && drawn.chance(0.7);
  const speed = planes ? drawn.between(4, 10) : drawn.between(1, 3.2);
  const [lat, lon] = [drawn.between(45.975, 45.985), drawn.between(-32.075, -32.06)];
  const way = planes ? 0.03 : 0.012;
  const point = () => ({ lat: lat - drawn.between(0.3 * way, way), lon: lon + drawn.between(-0.2 * way, way) });
  return {
    version: 1,
    craft,
    load: {
      items: crewOf(drawn),
      ...(drawn.chance(0.93) && { fill: drawn.between(0.35, 1) }),
      ...(drawn.chance(0.9) && { fillKnownBy: drawn.of(['measured', 'gauge'] as const) }),
    },
    route: {
      shape: drawn.of(['out-and-home', 'loop', 'one-way', 'out-and-home'] as const),
      waypoints: [
        { lat, lon },
        { ...point(), ...(drawn.chance(0.3) && { stop: drawn.between(300, 5000) }) },
        ...(drawn.chance(0.5) ? [{ ...point(), ...(drawn.chance(0.3) && { speed: drawn.between(1.2, 5) }) }] : []),
      ],
      speed: drawn.chance(0.08) ? drawn.of(['best', 'best-planing'] as const) : speed,
    },
    conditions: drawnConditions(drawn),
    policy: {
      reserve: drawnRules(drawn),
      ...(drawn.chance(0.6) && { manoeuvring: drawn.between(60, 900) }),
      ...(drawn.chance(0.6) && { drawnFactor: drawn.between(1, 1.15) }),
      ...(drawn.chance(0.6) && { maxWind: drawn.between(5, 11) }),
      ...(drawn.chance(0.6) && { maxWave: drawn.between(0.25, 0.8) }),
      ...(drawn.chance(0.3) && { timeAllowed: drawn.between(3000, 30000) }),
    },
  };
}

function drawnCraft(drawn: Drawn): Trip['craft'] {
  const { id, typicalPlate } = drawn.of(hulls);
  const { maxPower = Infinity, maxEngineMass = Infinity } = typicalPlate;
  const fit = engines.filter(
    ({ drive }) => drive.ratedPower <= maxPower && drive.ratedPower >= maxPower / 6 && drive.mass <= maxEngineMass,
  );
  const engine = drawn.of(fit);
  const made = craftFrom(id, engine.id, drawn.of(engine.drive.kind === 'petrol' ? TANKS : BATTERIES).id);
  const plate = drawn.chance(0.8) ? typicalPlate : drawn.of(['none' as const, undefined]);
  return {
    ...made,
    hull: plate === undefined ? made.hull : { ...made.hull, plate },
    ...(drawn.chance(0.3) && { calibration: calibration({ runs: 3, formSpread: drawn.between(0.02, 0.2) }) }),
    ...(drawn.chance(0.3) && { fouling: drawn.of(['slime', 'weed'] as const) }),
  };
}

function crewOf(drawn: Drawn): readonly Aboard[] {
  const items: Aboard[] = [
    { id: 'helm', kind: 'adult', mass: drawn.between(55, 105), station: drawn.of(['helm', 'seat-mid']), helm: true },
  ];
  if (drawn.chance(0.6)) {
    items.push({
      id: 'mate',
      kind: 'adult',
      mass: drawn.between(45, 100),
      station: drawn.of(['seat-fore-port', 'seat-aft-port']),
    });
  }
  if (drawn.chance(0.3))
    items.push({ id: 'child', kind: 'child', mass: drawn.between(12, 40), at: { x: 1.6, y: 0.2 } });
  if (drawn.chance(0.8)) {
    items.push({
      id: 'bag',
      kind: 'gear',
      mass: drawn.between(3, 45),
      station: drawn.of(['gear-bow', 'gear-mid', 'gear-aft']),
    });
  }
  return items;
}

function drawnConditions(drawn: Drawn): Conditions {
  const wind = { fromDeg: drawn.between(0, 360), speed: drawn.between(0.5, 9) };
  const stream = { setDeg: drawn.between(0, 360), rate: drawn.between(0.05, 0.9) };
  return {
    departure: '2027-06-19T09:30:00-02:00',
    ...(drawn.chance(0.9) && {
      wind: drawn.chance(0.2) ? byHour([3, 4, 5, 6, 7, 6, 5, 4, 3, 3, 2, 2], wind.fromDeg) : wind,
    }),
    ...(drawn.chance(0.92) && { stream: drawn.chance(0.2) ? ('by-tide' as const) : stream }),
    tide: SPRINGS,
    ...(drawn.chance(0.92) && {
      sea: drawn.chance(0.3) ? { swell: drawn.between(0, 0.25) } : { height: drawn.between(0.02, 0.45) },
    }),
    water: drawn.of(['sea', 'sea', 'fresh'] as const),
    ...(drawn.chance(0.9) && { batteryTemperatureC: drawn.between(2, 28) }),
  };
}

function drawnRules(drawn: Drawn): readonly ReserveRule[] {
  const rules: readonly ReserveRule[] = [
    { kind: 'thirds' },
    { kind: 'share', share: drawn.between(0.1, 0.5) },
    { kind: 'minutes', minutes: drawn.between(10, 60) },
  ];
  return rules.filter(() => drawn.chance(0.45));
}
