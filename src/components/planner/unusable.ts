import { CHEMISTRIES } from '../../core/drive/battery-chemistry.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { PETROL_DENSITY } from '../../core/units/constants.ts';
import { WATT_HOUR } from '../../core/units/convert.ts';

/** Part of full tanks (kg) or batteries (J) that stays in: what the pick-up misses, or the cut-off keeps. */
export function unusableIn({ craft }: Trip): number {
  return craft.store.kind === 'tank'
    ? craft.store.tanks.reduce((sum, tank) => sum + tank.unusableL * PETROL_DENSITY, 0)
    : craft.store.batteries.reduce(
        (sum, battery) =>
          sum + battery.energyWh * WATT_HOUR * battery.health * (1 - CHEMISTRIES[battery.chemistry].use),
        0,
      );
}
