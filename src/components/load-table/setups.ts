import { shaftFor, withShaft } from '../../core/compare/shaft.ts';
import type { LoadColumn } from '../../core/compare/shapes.ts';
import { goTogether } from '../../core/compare/suit-pairs.ts';
import type { Drive, Hull, Store } from '../../core/craft/shapes.ts';
import { engines, stores } from '../../core/files/catalogue.ts';
import { placedOn } from '../craft-form/place-store.ts';
import { dataName } from '../words/en-data.ts';

/** One engine of the comparison, as chosen: from the examples, or tried on a measured boat. */
export interface SetupChoice {
  readonly id: string;
  readonly drive: Drive;
  readonly store: Store;
  readonly engineId?: string;
  readonly storeId?: string;
}

/** Most engines side by side: more than fit on a sheet of paper. */
export const MOST_SETUPS = 6;

/** Engines that stand there first, by how long the hull is: each with a tank or battery that goes with it. */
const FIRST: readonly { readonly upTo: number; readonly pairs: readonly (readonly [string, string])[] }[] = [
  {
    upTo: 3,
    pairs: [
      ['petrol-4hp-4s', 'tank-12'],
      ['petrol-6hp-4s', 'tank-12'],
      ['electric-1-1kw', 'battery-1-3-lfp'],
    ],
  },
  {
    upTo: 3.9,
    pairs: [
      ['petrol-8hp-4s', 'tank-12'],
      ['petrol-15hp-4s', 'tank-25'],
      ['electric-5-2kw', 'battery-5-nmc'],
    ],
  },
  {
    upTo: Infinity,
    pairs: [
      ['petrol-15hp-4s', 'tank-25'],
      ['petrol-25hp-4s', 'tank-25'],
      ['electric-10-6kw', 'battery-10-nmc'],
    ],
  },
];

/** Three engines to begin with; a displacement hull gets small ones. */
export function firstSetups(hull: Hull): readonly SetupChoice[] {
  const { pairs } =
    hull.form === 'displacement' ? FIRST[0]! : (FIRST.find(({ upTo }) => hull.length <= upTo) ?? FIRST.at(-1)!);
  return pairs.map(([engineId, storeId], i) => setupFrom(`e${i + 1}`, hull, engineId, storeId));
}

/** An example engine with the shaft for this hull's transom, and a tank or battery where the hull carries it. */
export function setupFrom(id: string, hull: Hull, engineId: string, storeId?: string): SetupChoice {
  const { drive } = engines.find((engine) => engine.id === engineId)!;
  const fitting = storesFor(drive);
  const { id: storeKey, store } = fitting.find((one) => one.id === storeId) ?? usual(fitting);
  const shaft = hull.transomHeight === undefined ? undefined : shaftFor(hull.transomHeight);
  return {
    id,
    drive: shaft ? withShaft(drive, shaft) : drive,
    store: placedOn(hull, store),
    engineId,
    storeId: storeKey,
  };
}

/** The same engine on another hull, with the shaft for it; a pitch of one's own stays. */
export function carriedTo(hull: Hull, choice: SetupChoice): SetupChoice {
  if (!choice.engineId) return { ...choice, store: placedOn(hull, choice.store) };
  const fresh = setupFrom(choice.id, hull, choice.engineId, choice.storeId);
  return { ...fresh, drive: { ...fresh.drive, propeller: choice.drive.propeller } };
}

/** Example tanks or batteries that go with an engine. */
export function storesFor(drive: Drive): readonly { readonly id: string; readonly store: Store }[] {
  return stores.filter(({ store }) => goTogether(drive, store));
}

/** The one in the middle: neither the can nor the pallet. */
function usual<T>(fitting: readonly T[]): T {
  return fitting[Math.floor((fitting.length - 1) / 2)]!;
}

export function storeName(store: Store): string {
  return (store.kind === 'tank' ? store.tanks : store.batteries).map(({ name }) => dataName(name)).join(' + ');
}

export function columnOf({ id, drive, store }: SetupChoice): LoadColumn {
  return { id, drive, store };
}
