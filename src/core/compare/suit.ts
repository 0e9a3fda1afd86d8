import type { Craft, Drive, Hull, Plate, Store } from '../craft/shapes.ts';
import { PLANING_FROUDE, speedAtFroude } from '../curve/hump.ts';
import { fuelMass } from '../drive/tank.ts';
import { INCH } from '../units/convert.ts';
import { revsOf } from './full-throttle.ts';
import { loaded, setUp } from './loaded.ts';
import { seatedCrew, stowedGear } from './seat-crew.ts';
import { shaftFor, withShaft } from './shaft.ts';
import { goTogether } from './suit-pairs.ts';
import type { Catalogue, Standing, Suited, SuitReason, Use } from './suit-shapes.ts';
import { planOfUse } from './suit-trip.ts';

/** Pitch changes tried, the smallest first, in; and the revs over rated that are wanted (common practice, no source). */
const PITCHES = [0, -1, 1, -2, 2];
const REVS = { low: 0.94, high: 1.06 };
/** No propeller is flattened by more than this share of its pitch. */
const FLATTEST = 0.3;

const RANK: Readonly<Record<Standing, number>> = { fits: 0, doubtful: 1, out: 2 };

/**
 * Every hull with every engine of the wanted kind, one after the other so that the caller may pause between them, each
 * with the lightest tank or battery that makes it fit, or else the one that comes nearest. Plates are those of the
 * catalogue; the shaft is the one for the transom, a petrol engine's propeller the one that suits this load.
 */
export function* suited(use: Use, catalogue: Catalogue): Generator<Suited> {
  for (const { id: hullId, hull: bare, typicalPlate } of catalogue.hulls) {
    const hull: Hull = { ...bare, plate: typicalPlate };
    for (const { id: engineId, drive: short } of catalogue.engines) {
      if (use.energy !== 'either' && use.energy !== short.kind) continue;
      const drive = hull.transomHeight === undefined ? short : withShaft(short, shaftFor(hull.transomHeight));
      yield bestOf({ hullId, engineId, hull, drive, plate: typicalPlate }, use, catalogue);
    }
  }
}

/**
 * Those that fit first, and of like standing the lightest to own, launch and carry; those that fall out by how many
 * reasons there are.
 */
export function ranked(all: readonly Suited[]): readonly Suited[] {
  const reasons = ({ standing, reasons: list }: Suited) => (standing === 'out' ? list.length : 0);
  return [...all].sort((a, b) => RANK[a.standing] - RANK[b.standing] || reasons(a) - reasons(b) || a.mass - b.mass);
}

interface Pair {
  readonly hullId: string;
  readonly engineId: string;
  readonly hull: Hull;
  readonly drive: Drive;
  readonly plate: Plate;
}

function bestOf(pair: Pair, use: Use, catalogue: Catalogue): Suited {
  const { hullId, engineId, hull, drive } = pair;
  const hullShare = hull.mass / use.crew.length;
  const bare = { hullId, engineId, pitchChange: 0, hullShare, mass: hull.mass + drive.mass, heaviest: drive.mass };
  const stopped = pairReasons(pair, use);
  if (stopped.length > 0) return { ...bare, standing: 'out', reasons: stopped };
  const stores = catalogue.stores
    .filter(({ store }) => goTogether(drive, store))
    .sort((a, b) => storeMass(a.store) - storeMass(b.store));
  let best: Suited | undefined;
  let pitchChange: number | undefined;
  for (const { id: storeId, store } of stores) {
    const heaviest = Math.max(drive.mass, pieceMass(store));
    const mass = hull.mass + drive.mass + storeMass(store);
    const over = carryReason(store.kind === 'tank' ? 'tank' : 'battery', pieceMass(store), use.carry);
    let next: Suited;
    if (over) {
      next = { ...bare, storeId, heaviest, mass, standing: 'out', reasons: [over] };
    } else {
      const plain = { ...catalogue.craftFrom(hullId, engineId, storeId), hull, drive };
      pitchChange ??= pitchFor(plain, use);
      const craft = repitched(plain, pitchChange);
      const { trip, reasons } = planOfUse(craft, use);
      const standing = reasons.some(({ level }) => level === 'no-go')
        ? 'out'
        : reasons.length > 0
          ? 'doubtful'
          : 'fits';
      next = {
        ...bare,
        storeId,
        craft,
        pitchChange,
        heaviest,
        mass,
        standing,
        trip,
        reasons: reasons.map((reason) => ({ kind: 'plan', reason })),
      };
    }
    if (!best || nearer(next, best)) best = next;
    if (next.standing === 'fits') break;
  }
  return best ?? { ...bare, standing: 'out', reasons: [{ kind: 'no-store' }] };
}

/** What no tank or battery mends. */
function pairReasons({ hull, drive, plate }: Pair, use: Use): readonly SuitReason[] {
  const reasons: SuitReason[] = [];
  const seats = hull.stations.filter(({ use: kind }) => kind === 'seat' || kind === 'helm').length;
  const hold = (
    code: 'over-plate-persons' | 'over-plate-power' | 'over-plate-engine-mass',
    measure: 'count' | 'power' | 'mass',
    value: number,
    limit: number | undefined,
  ) => {
    if (limit === undefined || value <= limit) return;
    reasons.push({ kind: 'plan', reason: { code, level: 'no-go', measure, value, limit } });
  };
  hold('over-plate-persons', 'count', use.crew.length, plate.persons);
  hold('over-plate-power', 'power', drive.ratedPower, plate.maxPower);
  hold('over-plate-engine-mass', 'mass', drive.mass, plate.maxEngineMass);
  if (use.crew.length > seats) reasons.push({ kind: 'seats', value: use.crew.length, limit: seats });
  // Everybody carries the hull, one person the engine.
  const hullOver = carryReason('hull', hull.mass / use.crew.length, use.carry);
  const engineOver = carryReason('engine', drive.mass, use.carry);
  if (hullOver) reasons.push(hullOver);
  if (engineOver) reasons.push(engineOver);
  return reasons;
}

function carryReason(
  piece: 'hull' | 'engine' | 'tank' | 'battery',
  value: number,
  limit: number | undefined,
): SuitReason | undefined {
  return limit !== undefined && value > limit ? { kind: 'carry', piece, value, limit } : undefined;
}

/** Inches of pitch, as m, that let a petrol engine turn as it should with this load, and the boat plane if it can. */
function pitchFor(craft: Craft, use: Use): number {
  if (craft.drive.kind !== 'petrol') return 0;
  const load = { items: [...seatedCrew(craft.hull, use.crew), ...stowedGear(craft.hull, use.gear)], fill: 1 };
  const rated = craft.drive.ratedRpm;
  let fallback: number | undefined;
  for (const inches of PITCHES) {
    if (inches * INCH < -FLATTEST * craft.drive.propeller.pitch) continue;
    const boat = setUp(repitched(craft, inches * INCH), use);
    const { afloat } = loaded(boat, load);
    const { speed, rpm } = revsOf(boat, afloat);
    const turnsWell = rpm >= REVS.low * rated && rpm <= REVS.high * rated;
    if (turnsWell && speed >= speedAtFroude(boat, afloat, PLANING_FROUDE)) return inches * INCH;
    if (turnsWell) fallback ??= inches * INCH;
  }
  return fallback ?? 0;
}

function repitched(craft: Craft, change: number): Craft {
  const { propeller } = craft.drive;
  return { ...craft, drive: { ...craft.drive, propeller: { ...propeller, pitch: propeller.pitch + change } } };
}

/** Better standing; of like standing fewer reasons, then more left at home. */
function nearer(a: Suited, b: Suited): boolean {
  if (a.standing !== b.standing) return RANK[a.standing] < RANK[b.standing];
  if (!a.trip || !b.trip) return a.trip !== undefined && b.trip === undefined;
  if (a.reasons.length !== b.reasons.length) return a.reasons.length < b.reasons.length;
  return a.trip.probability > b.trip.probability;
}

/** Everything of it, tanks full, kg. */
function storeMass(store: Store): number {
  return store.kind === 'tank'
    ? store.tanks.reduce((sum, tank) => sum + tank.emptyMass, 0) + fuelMass(store.tanks, 1)
    : store.batteries.reduce((sum, battery) => sum + battery.mass, 0);
}

/** The heaviest that is carried by itself, kg; a tank under the engine's cover goes with the engine. */
function pieceMass(store: Store): number {
  if (store.kind === 'battery') return Math.max(...store.batteries.map(({ mass }) => mass));
  const loose = store.tanks.filter(({ fixed }) => !fixed);
  return Math.max(0, ...loose.map((tank) => tank.emptyMass + fuelMass([tank], 1)));
}
