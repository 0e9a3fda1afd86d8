import { describe, expect, it } from 'vitest';
import { HOUR } from '../../src/core/units/convert.ts';
import { manualWaves, northSeaWaves } from '../../src/core/water/growth-laws.ts';
import { windSea } from '../../src/core/water/sea-growth.ts';
import { entriesOf, entry, holds } from '../published/sea-checks.ts';

function blow({ wind_speed_m_per_s, fetch_km, duration_h }: ReturnType<typeof entry>['inputs']) {
  const duration = typeof duration_h === 'number' ? duration_h * HOUR : undefined;
  return { wind: wind_speed_m_per_s!, fetch: fetch_km! * 1000, duration };
}

// Figures of our own prototype of EM 1110-2-1100 Part II ch. 2, eq. II-2-35 to 38.
describe('manualWaves', () => {
  it.each(entriesOf(/^cem-U/))('still gives $id', (check) => {
    const { wind, fetch, duration } = blow(check.inputs);
    const waves = manualWaves(wind, fetch, duration);
    holds(check, 'hm0_m', waves.height);
    holds(check, 'tp_s', waves.period);
    const sea = windSea({ wind, fetch, duration });
    holds(check, 'time_to_fetch_limit_h', sea.timeToFetchLimit / HOUR);
    expect(sea.limit).toBe(check.expected.regime);
  });

  it('covers five entries', () => {
    expect(entriesOf(/^cem-U/)).toHaveLength(5);
  });
});

// Our own prototype of the equivalent fetch of the North Sea laws.
describe('northSeaWaves', () => {
  it('still gives jonswap-U15-F200-t10', () => {
    const check = entry('jonswap-U15-F200-t10');
    const { wind, fetch, duration } = blow(check.inputs);
    const waves = northSeaWaves(wind, fetch, duration);
    holds(check, 'hm0_m', waves.height);
    holds(check, 'tp_s', waves.period);
    expect(waves.height).toBeLessThan(northSeaWaves(wind, fetch).height);
  });
});

// Table of our method: fetch limited heights, m, of the manual and of Bretschneider, at 1, 2, 5, 10 and 20 km.
const HEIGHTS: readonly (readonly [number, string])[] = [
  [6, '0.09/0.14 0.13/0.18 0.20/0.26 0.29/0.35 0.40/0.45'],
  [8, '0.12/0.19 0.18/0.25 0.28/0.37 0.39/0.49 0.55/0.64'],
  [10, '0.16/0.25 0.22/0.33 0.36/0.48 0.50/0.64 0.71/0.85'],
  [12, '0.20/0.31 0.28/0.41 0.44/0.60 0.62/0.79 0.87/1.05'],
  [14, '0.23/0.37 0.33/0.49 0.52/0.71 0.74/0.95 1.04/1.26'],
];

describe('windSea', () => {
  it.each(HEIGHTS)('still gives the row of %d m/s, the higher law ruling', (wind, row) => {
    row.split(' ').forEach((pair, i) => {
      const [manual, shore] = pair.split('/').map(Number);
      const fetch = [1000, 2000, 5000, 10_000, 20_000][i]!;
      const sea = windSea({ wind, fetch });
      expect(Math.abs(sea.height - shore!)).toBeLessThanOrEqual(0.0051);
      expect(Math.abs(manualWaves(wind, fetch).height - manual!)).toBeLessThanOrEqual(0.0051);
      expect(sea.low).toBeLessThan(sea.height);
    });
  });
});
