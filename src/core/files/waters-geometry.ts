/** What is wrong with a geometry, and where inside it. */
export interface GeometryFault {
  readonly code: string;
  /** Keys inside the geometry, such as `coordinates.0.3`. */
  readonly path: string;
  /** Goes on from "Feature 3 (name): ". */
  readonly message: string;
}

/** What stands for each kind of geometry, by its types in RFC 7946. */
const WANTED = { area: 'Polygon or MultiPolygon', point: 'Point', line: 'LineString' } as const;

/** Checks a polygon, multipolygon, point or line of RFC 7946; `wanted` tells which of them belongs here. */
export function geometryFault(geometry: unknown, wanted: keyof typeof WANTED): GeometryFault | undefined {
  if (typeof geometry !== 'object' || geometry === null) return fault('missing', 'it has no geometry');
  const { type, coordinates } = geometry as { type?: unknown; coordinates?: unknown };
  if (wanted === 'area' && type === 'Polygon') return within('coordinates', polygonFault(coordinates));
  if (wanted === 'area' && type === 'MultiPolygon') {
    return within('coordinates', outlineFault(coordinates, polygonFault));
  }
  if (wanted === 'point' && type === 'Point') return within('coordinates', positionFault(coordinates));
  if (wanted === 'line' && type === 'LineString') return within('coordinates', lineFault(coordinates));
  return within('type', fault('not-listed', `its geometry must be a ${WANTED[wanted]}`));
}

/** Positions in a checked geometry. */
export function positionsIn(coordinates: unknown): number {
  if (!Array.isArray(coordinates)) return 0;
  if (!Array.isArray(coordinates[0])) return 1;
  return coordinates.reduce((sum: number, inner) => sum + positionsIn(inner), 0);
}

function polygonFault(rings: unknown): GeometryFault | undefined {
  return outlineFault(rings, ringFault);
}

function outlineFault(parts: unknown, check: (part: unknown) => GeometryFault | undefined): GeometryFault | undefined {
  if (!Array.isArray(parts) || parts.length === 0) return fault('missing', 'it has no outline');
  return firstFault(parts, check);
}

function lineFault(line: unknown): GeometryFault | undefined {
  if (!Array.isArray(line)) return fault('wrong-type', 'a line must be a list of positions');
  const wrong = firstFault(line, positionFault);
  if (wrong) return wrong;
  return line.length < 2 ? fault('too-few', 'a line needs at least 2 positions') : undefined;
}

/** Corners of the smallest ring, the first one repeated at the end. */
const LEAST_POSITIONS = 4;

function ringFault(ring: unknown): GeometryFault | undefined {
  if (!Array.isArray(ring)) return fault('wrong-type', 'an outline must be a list of positions');
  const wrong = firstFault(ring, positionFault);
  if (wrong) return wrong;
  if (ring.length < LEAST_POSITIONS) {
    return fault('too-few', 'an outline needs at least 4 positions, the last equal to the first');
  }
  const [first, last] = [ring[0], ring.at(-1)];
  if (first[0] === last[0] && first[1] === last[1]) return undefined;
  return fault('not-closed', 'an outline is not closed: its last position must equal its first');
}

function positionFault(position: unknown): GeometryFault | undefined {
  if (!Array.isArray(position) || position.length < 2 || !position.every(Number.isFinite)) {
    return fault('wrong-type', 'a position must be a list of numbers: longitude, latitude');
  }
  const [lon, lat] = position;
  if (Math.abs(lon) <= 180 && Math.abs(lat) <= 90) return undefined;
  return fault('out-of-range', `the position ${lon}, ${lat} is off the globe (longitude comes first)`);
}

function firstFault(
  values: readonly unknown[],
  check: (value: unknown) => GeometryFault | undefined,
): GeometryFault | undefined {
  for (let i = 0; i < values.length; i++) {
    const found = check(values[i]);
    if (found) return within(String(i), found);
  }
  return undefined;
}

function fault(code: string, message: string): GeometryFault {
  return { code, path: '', message };
}

function within(key: string, found: GeometryFault | undefined): GeometryFault | undefined {
  return found && { ...found, path: found.path === '' ? key : `${key}.${found.path}` };
}
