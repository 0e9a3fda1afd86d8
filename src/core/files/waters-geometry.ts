/** What is wrong with a geometry, and where inside it. */
export interface GeometryFault {
  readonly code: string;
  /** Keys inside the geometry, such as `coordinates.0.3`. */
  readonly path: string;
  /** Goes on from "Feature 3 (name): ". */
  readonly message: string;
}

/** Checks a polygon, multipolygon or point of RFC 7946; `area` tells which of them belongs here. */
export function geometryFault(geometry: unknown, area: boolean): GeometryFault | undefined {
  if (typeof geometry !== 'object' || geometry === null) return fault('missing', '', 'it has no geometry');
  const { type, coordinates } = geometry as { type?: unknown; coordinates?: unknown };
  if (area && type === 'Polygon') return polygonFault(coordinates, 'coordinates');
  if (area && type === 'MultiPolygon') {
    if (!filled(coordinates)) return fault('missing', 'coordinates', 'it has no outline');
    return firstFault(coordinates, 'coordinates', polygonFault);
  }
  if (!area && type === 'Point') return positionFault(coordinates, 'coordinates');
  const wanted = area ? 'Polygon or MultiPolygon' : 'Point';
  return fault('not-listed', 'type', `its geometry must be a ${wanted}`);
}

/** Positions in a checked geometry. */
export function positionsIn(coordinates: unknown): number {
  if (!Array.isArray(coordinates)) return 0;
  if (!Array.isArray(coordinates[0])) return 1;
  return coordinates.reduce((sum: number, inner) => sum + positionsIn(inner), 0);
}

function polygonFault(rings: unknown, path: string): GeometryFault | undefined {
  if (!filled(rings)) return fault('missing', path, 'it has no outline');
  return firstFault(rings, path, ringFault);
}

/** Corners of the smallest ring, the first one repeated at the end. */
const LEAST_POSITIONS = 4;

function ringFault(ring: unknown, path: string): GeometryFault | undefined {
  if (!Array.isArray(ring)) return fault('wrong-type', path, 'an outline must be a list of positions');
  const wrong = firstFault(ring, path, positionFault);
  if (wrong) return wrong;
  if (ring.length < LEAST_POSITIONS) {
    return fault('too-few', path, 'an outline needs at least 4 positions, the last equal to the first');
  }
  const [first, last] = [ring[0], ring.at(-1)];
  if (first[0] === last[0] && first[1] === last[1]) return undefined;
  return fault('not-closed', path, 'an outline is not closed: its last position must equal its first');
}

function positionFault(position: unknown, path: string): GeometryFault | undefined {
  if (!Array.isArray(position) || position.length < 2 || !position.every(Number.isFinite)) {
    return fault('wrong-type', path, 'a position must be a list of numbers: longitude, latitude');
  }
  const [lon, lat] = position;
  if (Math.abs(lon) <= 180 && Math.abs(lat) <= 90) return undefined;
  return fault('out-of-range', path, `the position ${lon}, ${lat} is off the globe (longitude comes first)`);
}

function filled(value: unknown): value is unknown[] {
  return Array.isArray(value) && value.length > 0;
}

function firstFault(
  values: readonly unknown[],
  path: string,
  check: (value: unknown, path: string) => GeometryFault | undefined,
): GeometryFault | undefined {
  for (let i = 0; i < values.length; i++) {
    const found = check(values[i], `${path}.${i}`);
    if (found) return found;
  }
  return undefined;
}

function fault(code: string, path: string, message: string): GeometryFault {
  return { code, path, message };
}
