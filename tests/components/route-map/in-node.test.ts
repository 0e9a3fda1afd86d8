import { describe, expect, it } from 'vitest';

describe('the map and the table of waypoints', () => {
  it('load without a browser', async () => {
    const { RouteMap } = await import('../../../src/components/route-map/route-map.ts');
    const { WaypointTable } = await import('../../../src/components/waypoint-table/waypoint-table.ts');
    expect(new RouteMap().hazards).toEqual([]);
    expect(new WaypointTable().store).toBe('fuel');
  });
});
