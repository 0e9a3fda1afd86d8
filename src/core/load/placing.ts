import type { Hull, Position, Station } from '../craft/shapes.ts';
import type { Aboard, Load } from './shapes.ts';

export interface PlacedItem {
  readonly id: string;
  readonly kind: Aboard['kind'];
  /** kg */
  readonly mass: number;
  readonly place: Position;
}

export interface Placed {
  readonly items: readonly PlacedItem[];
  /** Ids of those aboard whose seat nobody gave; they are assumed where they do most harm. */
  readonly unknownSeats: readonly string[];
}

/**
 * Everybody and everything aboard with a place. An unknown seat counts as the aft-most one that may be meant, on the side
 * that makes the boat lean more; with no stations described, at the aft end of the bottom.
 */
export function placed(hull: Hull, load: Load): Placed {
  const known: PlacedItem[] = [];
  const unknown: Aboard[] = [];
  for (const item of load.items) {
    const place = item.at ?? hull.stations.find(({ id }) => id === item.station);
    if (place) known.push(placedAt(item, place));
    else unknown.push(item);
  }
  const leaning = known.reduce((sum, { mass, place }) => sum + mass * place.y, hull.mass * hull.centre.y);
  const worst = ({ kind }: Aboard): Position => {
    const seat = aftmost(hull.stations, kind);
    if (!seat) return { x: 0, y: 0 };
    return { x: seat.x, y: leaning < 0 ? -Math.abs(seat.y) : Math.abs(seat.y), z: seat.z };
  };
  return {
    items: [...known, ...unknown.map((item) => placedAt(item, worst(item)))],
    unknownSeats: unknown.map(({ id }) => id),
  };
}

function placedAt({ id, kind, mass }: Aboard, { x, y, z }: Position): PlacedItem {
  return { id, kind, mass, place: { x, y, z } };
}

/** Where somebody or something of unknown seat may be: people on seats, dogs and gear anywhere that is not for a tank. */
export function mayBeAt(stations: readonly Station[], kind: Aboard['kind']): readonly Station[] {
  const loose = kind === 'gear' || kind === 'dog';
  const meant = stations.filter(({ use }) => use === 'seat' || use === 'helm' || (loose && use === 'gear'));
  return meant.length > 0 ? meant : stations.filter(({ use }) => use !== 'bow-tube');
}

function aftmost(stations: readonly Station[], kind: Aboard['kind']): Station | undefined {
  return mayBeAt(stations, kind).reduce<Station | undefined>(
    (aft, next) => (aft && !furtherAft(next, aft) ? aft : next),
    undefined,
  );
}

/** Of two seats equally far aft the one farther from the middle. */
function furtherAft(a: Station, b: Station): boolean {
  return a.x < b.x || (a.x === b.x && Math.abs(a.y) > Math.abs(b.y));
}
