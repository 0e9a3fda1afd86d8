import type { LatLon } from '../../core/route/shapes.ts';

/**
 * Local waters while they are drawn: GeoJSON as it is or will be written, errors included, so that nothing typed or
 * opened is lost and every error has its place in the file.
 */
export interface Sheet {
  readonly [member: string]: unknown;
  readonly type: 'FeatureCollection';
  readonly features: readonly unknown[];
}

export type Fields = Readonly<Record<string, unknown>>;

/** One line of positions inside a geometry that can be edited. */
export interface Outline {
  /** Keys down to it from `coordinates`. */
  readonly path: readonly number[];
  readonly places: readonly LatLon[];
  readonly closed: boolean;
  /** Inside another outline of the same polygon. */
  readonly hole: boolean;
}

export const EMPTY: Sheet = { type: 'FeatureCollection', features: [] };

export function record(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function propertiesOf(feature: unknown): Fields {
  return record(feature) && record(feature.properties) ? feature.properties : {};
}

export function kindOf(feature: unknown): string {
  const { kind } = propertiesOf(feature);
  return typeof kind === 'string' ? kind : '';
}

export function nameOf(feature: unknown): string {
  const { name } = propertiesOf(feature);
  return typeof name === 'string' ? name : '';
}

export function geometryOf(feature: unknown): { readonly type: string; readonly coordinates: unknown } | undefined {
  const geometry = record(feature) ? feature.geometry : undefined;
  return record(geometry) && typeof geometry.type === 'string'
    ? { type: geometry.type, coordinates: geometry.coordinates }
    : undefined;
}

/** The lines of a geometry; none where some position is not one. */
export function outlinesOf(feature: unknown): readonly Outline[] {
  const geometry = geometryOf(feature);
  if (!geometry) return [];
  const { type, coordinates } = geometry;
  if (type === 'Point') {
    const places = Array.isArray(coordinates) && coordinates.length === 0 ? [] : placesOf([coordinates]);
    return places ? [{ path: [], places, closed: false, hole: false }] : [];
  }
  const found: (Outline | undefined)[] = [];
  if (type === 'LineString') found.push(outline(coordinates, [], false));
  if (type === 'Polygon') found.push(...rings(coordinates, []));
  if (type === 'MultiPolygon' && Array.isArray(coordinates)) {
    coordinates.forEach((part, i) => {
      found.push(...rings(part, [i]));
    });
  }
  return found.every((one) => one !== undefined) ? found : [];
}

function rings(part: unknown, path: readonly number[]): (Outline | undefined)[] {
  return Array.isArray(part) ? part.map((ring, i) => outline(ring, [...path, i], true)) : [undefined];
}

function outline(line: unknown, path: readonly number[], closed: boolean): Outline | undefined {
  const places = Array.isArray(line) ? placesOf(line) : undefined;
  if (!places) return undefined;
  const [first, last] = [places[0], places.at(-1)];
  const repeats = closed && places.length > 1 && first!.lat === last!.lat && first!.lon === last!.lon;
  return { path, places: repeats ? places.slice(0, -1) : places, closed, hole: closed && path.at(-1)! > 0 };
}

function placesOf(positions: readonly unknown[]): LatLon[] | undefined {
  const places: LatLon[] = [];
  for (const position of positions) {
    if (!Array.isArray(position) || !Number.isFinite(position[0]) || !Number.isFinite(position[1])) return undefined;
    places.push({ lon: position[0], lat: position[1] });
  }
  return places;
}

/** The feature with other places on one of its lines. A position that stays where it was keeps what else it holds. */
export function withPlaces(feature: unknown, { path, places: before, closed }: Outline, places: readonly LatLon[]) {
  const geometry = geometryOf(feature)!;
  const old = positionsAt(geometry.coordinates, geometry.type === 'Point' ? undefined : path);
  const kept = new Map(before.map((place, i) => [`${place.lon} ${place.lat}`, old[i]]));
  const written = places.map((place) => kept.get(`${place.lon} ${place.lat}`) ?? [place.lon, place.lat]);
  if (closed && written[0]) written.push([...written[0]]);
  const line = geometry.type === 'Point' ? (written.at(-1) ?? []) : written;
  return {
    ...(feature as Fields),
    geometry: { ...geometryFields(feature), coordinates: put(geometry.coordinates, path, line) },
  };
}

function geometryFields(feature: unknown): Fields {
  return (feature as { readonly geometry: Fields }).geometry;
}

function positionsAt(coordinates: unknown, path: readonly number[] | undefined): readonly number[][] {
  if (!path) return Array.isArray(coordinates) && coordinates.length > 0 ? [coordinates as number[]] : [];
  return path.reduce<unknown>((at, key) => (at as unknown[])[key], coordinates) as number[][];
}

function put(coordinates: unknown, path: readonly number[], line: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return line;
  const list = coordinates as readonly unknown[];
  return list.with(key, put(list[key], rest, line));
}

/** The sheet with a member or a feature's property set; undefined takes it away. */
export function withMember(sheet: Sheet, member: string, value: unknown): Sheet {
  return withField(sheet, member, value) as Sheet;
}

export function withProperty(sheet: Sheet, index: number, field: string, value: unknown): Sheet {
  const feature = sheet.features[index];
  const properties = withField(propertiesOf(feature), field, value);
  return withFeature(sheet, index, { ...(record(feature) ? feature : { type: 'Feature' }), properties });
}

export function withFeature(sheet: Sheet, index: number, feature: unknown): Sheet {
  return { ...sheet, features: sheet.features.with(index, feature) };
}

export function withoutFeature(sheet: Sheet, index: number): Sheet {
  return { ...sheet, features: sheet.features.toSpliced(index, 1) };
}

function withField(fields: Fields, field: string, value: unknown): Fields {
  if (value !== undefined) return { ...fields, [field]: value };
  const { [field]: _, ...rest } = fields;
  return rest;
}
