import { describe, expect, it } from 'vitest';
import { geoJsonOfRoute } from '../../../src/core/files/route-geojson.ts';
import { shipped } from '../../trips.ts';

const { route } = shipped('petrol-day');

describe('geoJsonOfRoute', () => {
  it('draws a round trip back to its first waypoint, longitude first', () => {
    const line = geoJsonOfRoute('Day out', route).features[0]!.geometry;
    expect(line.type).toBe('LineString');
    const { coordinates } = line as { coordinates: number[][] };
    expect(coordinates[0]).toEqual([-31.99008, 46.02739]);
    expect(coordinates.at(-1)).toEqual(coordinates[0]);
    expect(coordinates).toHaveLength(route.waypoints.length + 1);
  });

  it('names the waypoints that have a name, in the order of the route', () => {
    const points = geoJsonOfRoute('Day out', route).features.slice(1);
    expect(points.map(({ properties }) => properties?.name)).toEqual(route.waypoints.map(({ name }) => name));
    expect(points.map(({ properties }) => properties?.number)).toEqual(route.waypoints.map((_, i) => i + 1));
  });

  it('draws no line through a single waypoint', () => {
    const one = geoJsonOfRoute('x', { ...route, waypoints: route.waypoints.slice(0, 1) });
    expect(one.features.map(({ geometry }) => geometry.type)).toEqual(['Point']);
  });
});
