import { expect } from 'vitest';
import checks from '../../shared/checks/daylight-checks.json' with { type: 'json' };
import { secondsOf } from '../../src/core/water/clock.ts';
import { type Daylight, daylightOn } from '../../src/core/water/daylight.ts';
import { told } from './told.ts';

export interface DaylightCheck {
  readonly id: string;
  readonly source: string;
  readonly provenance: string;
  readonly inputs: { readonly local_date: string; readonly lat_deg: number; readonly lon_deg: number };
  readonly expected: Readonly<Record<string, string | null>>;
  readonly tolerance: { readonly seconds: number };
}

export const entries = checks as unknown as readonly DaylightCheck[];

/** Daylight of a local date, on a clock set by the sun: whole hours from the longitude. */
function daylight({ inputs }: DaylightCheck): Daylight {
  const offset = Math.round(inputs.lon_deg / 15) * 3600;
  const noon = secondsOf(`${inputs.local_date}T12:00:00Z`) - offset;
  return daylightOn({ lat: inputs.lat_deg, lon: inputs.lon_deg }, noon, offset);
}

const FIELDS: Readonly<Record<string, keyof Daylight>> = {
  sunrise_utc: 'sunrise',
  sunset_utc: 'sunset',
  civil_dawn_utc: 'civilDawn',
  civil_dusk_utc: 'civilDusk',
  solar_noon_utc: 'solarNoon',
};

/** Holds every time of an entry against its own tolerance. */
export function holdsTimes(check: DaylightCheck): void {
  const found = daylight(check);
  for (const [name, wanted] of Object.entries(check.expected)) {
    const value = found[FIELDS[name]!] as number | undefined;
    if (wanted === null) expect(value, `${check.id} ${name}`).toBeUndefined();
    else {
      const error = value! - secondsOf(wanted);
      const clock = secondsOf(wanted) % 86_400;
      told(check.id, name, clock, clock + error, 1);
      expect(Math.abs(error), `${check.id} ${name}: off by ${error} s`).toBeLessThanOrEqual(check.tolerance.seconds);
    }
  }
}
