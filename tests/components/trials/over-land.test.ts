import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { landCrossed } from '../../../src/components/trials/over-land.ts';
import { readWaters } from '../../../src/core/files/waters-file.ts';

const waters = readWaters(JSON.parse(readFileSync('shared/waters/haven.geojson', 'utf8')));

describe('landCrossed', () => {
  it('names the stretches that go over land, and leaves those on open water alone', () => {
    if (!waters.ok) throw new Error('the shipped waters cannot be read');
    const open = { begin: { lat: 45.982, lon: -32.05 }, finish: { lat: 45.984, lon: -32.04 } };
    const island = waters.value.features.find(({ properties }) => properties?.name === 'Ward Island')!;
    const ring = (island.geometry as unknown as { coordinates: [number, number][][] }).coordinates[0]!;
    const lats = ring.map(([, lat]) => lat);
    const middle = ring.reduce((sum, [lon]) => sum + lon, 0) / ring.length;
    const across = {
      begin: { lat: Math.min(...lats) - 0.002, lon: middle },
      finish: { lat: Math.max(...lats) + 0.002, lon: middle },
    };
    expect(landCrossed([open, across], waters.value)).toEqual([1]);
  });
});
