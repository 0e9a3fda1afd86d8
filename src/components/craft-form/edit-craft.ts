import type { Craft, Drive, Hull, Plate, Store } from '../../core/craft/shapes.ts';
import { carriedOver, placedOn, STAYS } from './place-store.ts';

/** One example of the catalogue. */
export interface HullExample {
  readonly id: string;
  readonly hull: Hull;
  readonly typicalPlate?: Plate;
}
export interface EngineExample {
  readonly id: string;
  readonly drive: Drive;
}
export interface StoreExample {
  readonly id: string;
  readonly store: Store;
}

/** A craft and the examples it was made from; an id is absent where it came from elsewhere. */
export interface ChosenCraft {
  readonly craft: Craft;
  readonly hullId?: string;
  readonly engineId?: string;
  readonly storeId?: string;
}

/** Another boat: its plate has not been read yet, and what was measured no longer holds. */
export function withHull(chosen: ChosenCraft, { id, hull }: HullExample): ChosenCraft {
  const { plate: _, ...bare } = hull;
  const store = carriedOver(chosen.craft.store, chosen.craft.hull, bare);
  return { ...chosen, craft: unmeasured({ ...chosen.craft, hull: bare, store }), hullId: id };
}

/** Another engine; where it needs the other kind of energy, the first tank or battery that suits comes with it. */
export function withEngine(
  chosen: ChosenCraft,
  { id, drive }: EngineExample,
  stores: readonly StoreExample[],
): ChosenCraft {
  const next: ChosenCraft = { ...chosen, craft: unmeasured({ ...chosen.craft, drive }), engineId: id };
  if (suits(drive, chosen.craft.store)) return next;
  const first = stores.find(({ store }) => suits(drive, store));
  return first ? withStore(next, first) : next;
}

export function withStore(chosen: ChosenCraft, { id, store }: StoreExample): ChosenCraft {
  return { ...chosen, craft: { ...chosen.craft, store: placedOn(chosen.craft.hull, store) }, storeId: id };
}

/** Petrol engines want tanks, electric ones batteries. */
export function suits(drive: Drive, store: Store): boolean {
  return (drive.kind === 'electric') === (store.kind === 'battery');
}

/** Changed figures of hull or drive; measured curves belong to the figures they were measured with. */
export function withFigures(
  chosen: ChosenCraft,
  change: { hull?: Partial<Hull>; drive?: Partial<Drive> },
): ChosenCraft {
  const { craft } = chosen;
  const hull = { ...craft.hull, ...change.hull };
  const drive = { ...craft.drive, ...change.drive } as Drive;
  const store = carriedOver(craft.store, craft.hull, hull, STAYS);
  return { ...chosen, craft: unmeasured({ ...craft, hull, drive, store }) };
}

/** What the plate says; nothing at all typed leaves it unread. */
export function withPlate(chosen: ChosenCraft, plate: Hull['plate']): ChosenCraft {
  const { plate: _, ...hull } = chosen.craft.hull;
  const kept = plate === 'none' || (plate && says(plate)) ? plate : undefined;
  return { ...chosen, craft: { ...chosen.craft, hull: kept ? { ...hull, plate: kept } : hull } };
}

/** A change to one figure of the plate; `undefined` takes it off. */
export function platePart(plate: Hull['plate'], change: Partial<Plate>): Plate {
  const now = plate && plate !== 'none' ? plate : { scheme: 'unknown' as const };
  const next = Object.entries({ ...now, ...change }).filter(([, figure]) => figure !== undefined);
  return Object.fromEntries(next) as unknown as Plate;
}

function says({ scheme, ...figures }: Plate): boolean {
  return scheme !== 'unknown' || Object.values(figures).some((figure) => figure !== undefined);
}

/** The first tank or battery with another figure. */
export function withFirst(
  { craft, ...ids }: ChosenCraft,
  change: { capacityL?: number; energyWh?: number; health?: number; mass?: number },
): ChosenCraft {
  const { store } = craft;
  const changed = <T>([first, ...others]: readonly T[]): T[] => (first ? [{ ...first, ...change }, ...others] : []);
  const next: Store =
    store.kind === 'tank'
      ? { kind: 'tank', tanks: changed(store.tanks) }
      : { kind: 'battery', batteries: changed(store.batteries) };
  return { ...ids, craft: { ...craft, store: next } };
}

function unmeasured({ calibration: _, ...craft }: Craft): Craft {
  return craft;
}
