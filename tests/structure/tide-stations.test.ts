import { stationsById } from '@neaps/tide-database';
import { describe, expect, it } from 'vitest';
import stations from '../../shared/tides/stations.json' with { type: 'json' };

describe('shared/tides/stations.json', () => {
  it('holds only stations in the public domain, each with its licence, attribution and source', () => {
    for (const { id, licence, attribution, source } of stations) {
      expect(stationsById.get(id)?.license.type, id).toBe('public domain');
      expect(stationsById.get(id)?.license.commercial_use, id).toBe(true);
      expect(licence, id).toContain('public domain');
      expect(attribution, id).toContain(stationsById.get(id)!.source.name);
      expect(source, id).toMatch(/^https:/);
    }
  });

  it('has the constants and the mean level of the database', () => {
    for (const { id, constituents, meanLevel } of stations) {
      const { harmonic_constituents, datums } = stationsById.get(id)!;
      for (const { name, amplitude, phaseDeg } of constituents) {
        const original = harmonic_constituents.find((other) => other.name === name)!;
        expect(Math.abs(amplitude - original.amplitude), `${id} ${name}`).toBeLessThan(1e-4);
        expect(Math.abs(phaseDeg - original.phase), `${id} ${name}`).toBeLessThan(0.01);
      }
      expect(Math.abs(meanLevel - (datums.MSL! - datums.MLLW!)), id).toBeLessThan(0.001);
    }
  });
});
