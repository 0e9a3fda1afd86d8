/** Wind blows from `fromDeg` (true), m/s at 10 m. */
export interface Wind {
  readonly fromDeg: number;
  readonly speed: number;
}

/** Stream flows towards `setDeg` (true), m/s. */
export interface Stream {
  readonly setDeg: number;
  readonly rate: number;
}

/** Absent fields are unknown, never calm. */
export interface Conditions {
  /** ISO 8601 with offset, such as 2026-07-15T09:30:00+01:00. */
  readonly departure?: string;
  readonly wind?: 'calm' | Wind;
  readonly stream?: 'slack' | Stream;
  /** Significant wave height, m. */
  readonly sea?: 'calm' | { readonly height: number };
  readonly water: 'sea' | 'fresh';
  /** Of the battery itself, C. */
  readonly batteryTemperatureC?: number;
}
