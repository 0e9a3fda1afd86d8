import { ranked, suited } from '../../../src/core/compare/suit.ts';
import { goTogether } from '../../../src/core/compare/suit-pairs.ts';
import type { Catalogue, Use } from '../../../src/core/compare/suit-shapes.ts';
import { planOfUse, tripOfUse, windFor } from '../../../src/core/compare/suit-trip.ts';
import { craftFrom, engines, hulls, stores } from '../../../src/core/files/catalogue.ts';
import { keeping } from './keeping.ts';
import { craft } from './made-trips.ts';

const use: Use = {
  crew: [85, 70],
  gear: 25,
  distance: 9000,
  water: 'sea',
  waveHeight: 0.15,
  energy: 'either',
  batteryTemperatureC: 12,
};

function some(hullIds: readonly string[], engineIds: readonly string[]): Catalogue {
  return {
    hulls: hulls.filter(({ id }) => hullIds.includes(id)),
    engines: engines.filter(({ id }) => engineIds.includes(id)),
    stores,
    craftFrom,
  };
}

const few = some(
  ['catamaran-3-6', 'launch-4-9', 'flat-floor-2-7'],
  ['petrol-6hp-4s', 'petrol-15hp-2s', 'electric-2-2kw'],
);

keeping('compare-suit', {
  'two out slowly': () => ranked([...suited(use, few)]),
  'two out fast, carried to the water': () =>
    ranked([
      ...suited(
        { ...use, speed: 6.5, carry: 40, energy: 'petrol' },
        some(['catamaran-3-6', 'rib-3-4'], ['petrol-15hp-2s', 'petrol-20hp-4s']),
      ),
    ]),
  'five on a lake': () =>
    ranked([
      ...suited(
        { ...use, crew: [90, 80, 70, 60, 50], water: 'fresh', waveHeight: 0, distance: 20000, energy: 'electric' },
        some(['launch-4-9'], ['electric-2-2kw', 'electric-0-55kw', 'petrol-6hp-4s']),
      ),
    ]),
  'as many as there are seats, and one more': () =>
    [6, 7].map((count) =>
      ranked([
        ...suited({ ...use, crew: Array(count).fill(40), speed: 2 }, some(['catamaran-3-6'], ['petrol-6hp-4s'])),
      ]),
    ),
  'the trip of a use': () =>
    [0, 0.1, 0.3, 0.6].map((waveHeight) => [
      windFor(waveHeight),
      tripOfUse(craft('launch-4-9', 'electric-2-2kw', 'battery-5-nmc'), { ...use, waveHeight }).conditions,
    ]),
  'the plan of a use': () => {
    const { trip, reasons } = planOfUse(craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12'), { ...use, speed: 6 });
    return { trip, reasons };
  },
  'what goes together': () => engines.map(({ drive }) => stores.map(({ store }) => goTogether(drive, store))),
});
