import { describe, expect, it } from 'vitest';
import checks from '../../shared/checks/measured-checks.json' with { type: 'json' };
import stations from '../../shared/tides/stations.json' with { type: 'json' };
import { FOOT, HOUR, MINUTE } from '../../src/core/units/convert.ts';
import { secondsOf } from '../../src/core/water/clock.ts';
import { harmonicTide } from '../../src/core/water/harmonic.ts';

interface TideCheck {
  readonly id: string;
  readonly inputs: { readonly station: string };
  readonly expected: {
    readonly extremes: readonly {
      readonly t: string;
      readonly type: 'H' | 'L';
      readonly h_m?: number;
      readonly h_ft?: number;
    }[];
  };
  readonly tolerance: { readonly time_min: number; readonly height_m?: number; readonly height_ft?: number };
}

const entries = (checks as unknown as readonly (TideCheck & { group: string })[]).filter(
  ({ group }) => group === 'tide',
);

/** Largest errors of an entry, s and m, and how many extremes were compared. */
function errors({ inputs, expected }: TideCheck): { time: number; height: number; compared: number } {
  const station = stations.find(({ id }) => id === inputs.station)!;
  const worst = { time: 0, height: 0, compared: 0 };
  for (const { t, type, h_m, h_ft } of expected.extremes) {
    const at = secondsOf(t);
    const tide = harmonicTide(station, { from: at - 4 * HOUR, to: at + 4 * HOUR });
    if (!tide.ok) throw new Error(tide.problems[0]!.message);
    const near = tide.value.turns.filter(({ kind }) => kind === (type === 'H' ? 'high' : 'low'));
    expect(near, t).toHaveLength(1);
    worst.time = Math.max(worst.time, Math.abs(near[0]!.at - at));
    worst.height = Math.max(worst.height, Math.abs(near[0]!.height - (h_m ?? h_ft! * FOOT)));
    worst.compared++;
  }
  return worst;
}

// NOAA CO-OPS tide predictions as recorded in public repositories.
describe('harmonicTide', () => {
  it.each(entries)('meets the published high and low waters of $id', (entry) => {
    const { time, height, compared } = errors(entry);
    expect(compared).toBe(entry.expected.extremes.length);
    const { time_min, height_m, height_ft } = entry.tolerance;
    expect(time).toBeLessThanOrEqual(time_min * MINUTE);
    expect(height).toBeLessThanOrEqual(height_m ?? height_ft! * FOOT);
  });

  it('meets them to 70 s, and to 15 mm where the published constants were not revised since', () => {
    expect(entries).toHaveLength(2);
    const [boston, eastport] = entries.map(errors);
    expect(boston!.time).toBeLessThan(70);
    expect(boston!.height).toBeLessThan(0.015);
    expect(eastport!.time).toBeLessThan(70);
    expect(eastport!.height).toBeLessThan(0.03);
  });
});
