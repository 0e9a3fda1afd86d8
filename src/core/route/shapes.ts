import type { Feature, FeatureCollection, MultiPolygon, Point, Polygon } from 'geojson';

/** WGS 84 degrees. */
export interface LatLon {
  readonly lat: number;
  readonly lon: number;
}

/** Speed through the water, m/s; or the speed of least consumption over the ground, anywhere or on the plane. */
export type PlannedSpeed = number | 'best' | 'best-planing';

export interface Waypoint extends LatLon {
  readonly name?: string;
  /** Time spent here with the engine off, s. */
  readonly stop?: number;
  /** Share of capacity to which tank or battery is filled here, where a landing offers it. */
  readonly refill?: number;
  /** For the leg that starts here; absent: the route's speed. */
  readonly speed?: PlannedSpeed;
  /** Of streams by tide: name of the place whose stream the leg that starts here takes; absent: the nearest in sight. */
  readonly streamPlace?: string;
}

export interface Route {
  /** `out-and-home` comes back the same way, `loop` closes from the last waypoint to the first. */
  readonly shape: 'out-and-home' | 'loop' | 'one-way';
  readonly waypoints: readonly Waypoint[];
  readonly speed: PlannedSpeed;
}

export type ZoneKind = 'land' | 'shoal' | 'speed-limit' | 'keep-out';

export interface ZoneProperties {
  readonly kind: ZoneKind;
  readonly name: string;
  readonly note?: string;
  /** Shoal: height above chart datum, m; negative is a least depth. */
  readonly dries_m?: number;
  /** Speed limit: knots through the water. */
  readonly limit_kn?: number;
  readonly reason?: string;
  /** Keep-out: MM-DD/MM-DD or "all year". */
  readonly season?: string;
}

export interface LandingProperties {
  readonly kind: 'landing';
  readonly name: string;
  readonly id?: string;
  readonly access?: string;
  readonly fuel?: boolean;
  readonly power?: boolean;
  readonly hire_desk?: boolean;
  readonly usable?: string;
  /** Height of its foot above chart datum, m; negative is a least depth. */
  readonly dries_m?: number;
}

/** Who answers for local waters, and between which days (ISO dates, both included) they may be relied on. */
export interface Answerable {
  readonly responsible?: string;
  readonly surveyed?: string;
  readonly validUntil?: string;
}

/** Local waters as GeoJSON. Water is what is not land inside `bbox`; outside it nothing is known. */
export interface WatersFile extends FeatureCollection, Answerable {
  readonly name?: string;
  readonly about?: string;
}

export type ZoneFeature = Feature<Polygon | MultiPolygon, ZoneProperties>;
export type LandingFeature = Feature<Point, LandingProperties>;
