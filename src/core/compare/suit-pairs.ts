import type { Drive, Store } from '../craft/shapes.ts';

/**
 * Power, W: engines up to the first carry their tank under the cover, those from the second on have a hose to another
 * (common practice, no source).
 */
const BUILT_IN = 4600;
const HOSE = 2900;
/** V and W: small motors run on the lower voltages, large ones on the higher (common practice, no source). */
const LOW_VOLTAGE = { most: 30, power: 1900 };
const HIGH_VOLTAGE = { least: 40, power: 1000 };

/** Whether an engine and a tank or battery go together at all. */
export function goTogether(drive: Drive, store: Store): boolean {
  if (drive.kind === 'petrol') {
    if (store.kind !== 'tank') return false;
    const builtIn = store.tanks.some(({ fixed }) => fixed);
    return builtIn ? drive.ratedPower <= BUILT_IN : drive.ratedPower >= HOSE;
  }
  if (store.kind !== 'battery') return false;
  return store.batteries.every(
    ({ voltage }) =>
      (voltage <= LOW_VOLTAGE.most && drive.ratedPower <= LOW_VOLTAGE.power) ||
      (voltage >= HIGH_VOLTAGE.least && drive.ratedPower >= HIGH_VOLTAGE.power),
  );
}
