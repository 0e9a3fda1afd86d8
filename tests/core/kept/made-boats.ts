import { loaded, setUp } from '../../../src/core/compare/loaded.ts';
import type { Craft } from '../../../src/core/craft/shapes.ts';
import type { Load } from '../../../src/core/load/shapes.ts';
import { calibration, craft, crew, two } from './made-trips.ts';

/** Boats with somebody aboard, to compare. */
export const sea = { water: 'sea', batteryTemperatureC: 10 } as const;
const catamaran = craft('catamaran-3-6', 'petrol-15hp-4s', 'tank-12');
const three = crew([...two, ['adult', 90, 'seat-aft-port']]);
const lone = crew(two.slice(0, 1));

export const withLoad = (one: Craft, load: Load) => loaded(setUp(one, sea), load);
export const boats: Readonly<Record<string, readonly [Craft, Load]>> = {
  catamaran: [catamaran, three],
  'catamaran with a small engine': [craft('catamaran-3-6', 'petrol-6hp-4s', 'tank-12', 'none'), three],
  'measured rib': [{ ...craft('rib-3-4', 'petrol-20hp-4s', 'tank-25', undefined), calibration: calibration() }, three],
  'v bottom, alone': [craft('rigid-v-4-2', 'petrol-25hp-2s', 'tank-25'), lone],
  launch: [craft('launch-4-9', 'electric-2-2kw', 'battery-5-lfp'), three],
  'electric catamaran': [craft('catamaran-4-3', 'electric-10-6kw', 'battery-10-nmc'), lone],
};
