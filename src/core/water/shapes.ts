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

/** One entry of a forecast; holds at its time, ISO 8601 with offset, and between entries by interpolation. */
export interface WindAt extends Wind {
  readonly time: string;
  /** m/s; what a plan is held against is the mean wind, gusts are told. */
  readonly gust?: number;
}

/** Streams of one place by hour from high water at the standard port. */
export interface StreamPlace {
  readonly name: string;
  readonly lat: number;
  readonly lon: number;
  /** From `firstHour` on, one an hour: at mean springs and mean neaps. Lists are of one length. */
  readonly firstHour: number;
  readonly springs: readonly Stream[];
  readonly neaps: readonly Stream[];
  /** All that was known of it, out of which the hours were spread by rule: nothing is counted on that helps. */
  readonly spread?: TwoRuns;
}

/** A stream that runs to and fro: its strongest both ways, and when it turns. */
export interface TwoRuns {
  readonly flood: StrongestRun;
  readonly ebb: StrongestRun;
  /** Hours from high water at the standard port at which the ebb begins. */
  readonly turns: number;
}

/** The strongest of one run of a stream, degrees true and m/s. */
export interface StrongestRun {
  readonly setDeg: number;
  readonly springs: number;
  readonly neaps: number;
}

/** The tide of the day at the standard port that streams are told for; ranges m. */
export interface Tide {
  readonly port: string;
  /** Of the high water nearest to the trip, ISO 8601 with offset. */
  readonly highWater: string;
  readonly range: number;
  readonly meanSpringRange: number;
  readonly meanNeapRange: number;
  /** Height of that high water above chart datum, m. */
  readonly highWaterHeight?: number;
}

/** Wind by time, in any order. */
export interface Forecast {
  readonly forecast: readonly WindAt[];
}

/** Absent fields are unknown, never calm. */
export interface Conditions {
  /** ISO 8601 with offset, such as 2026-07-15T09:30:00+01:00. */
  readonly departure?: string;
  /** Zone of the IANA database whose clock the place keeps: how times are typed and shown. */
  readonly timezone?: string;
  readonly wind?: 'calm' | Wind | Forecast;
  /** `by-tide`: by place and hour, from the local waters and `streamPlaces`, at the hour of the `tide`. */
  readonly stream?: 'slack' | 'by-tide' | Stream;
  /** Places of one's own, beside those of the local waters. */
  readonly streamPlaces?: readonly StreamPlace[];
  /** The tide of the day; heights and streams follow from it. */
  readonly tide?: Tide;
  /** Significant wave height, m; or the swell alone, to which the waves that the wind raises are added. */
  readonly sea?: 'calm' | { readonly height: number } | { readonly swell: number };
  readonly water: 'sea' | 'fresh';
  /** Of the battery itself, C. */
  readonly batteryTemperatureC?: number;
  /** Of the water, C. No figure of a plan depends on it; what to wear and check does. */
  readonly waterTemperatureC?: number;
}

/** A tide station: its heights follow from the constants of its tide. */
export interface TideStation {
  readonly id: string;
  readonly name: string;
  readonly lat: number;
  readonly lon: number;
  /** Zone of the IANA database whose clock the place keeps. */
  readonly timezone?: string;
  /** Mean level above chart datum, m, about which the tide swings. */
  readonly meanLevel: number;
  /** Name of that datum, such as MLLW. */
  readonly chartDatum?: string;
  /** By the usual names (M2, S2, ...); phases are those of Greenwich, UTC. */
  readonly constituents: readonly TidalConstituent[];
  /** Shown wherever a height of the station is. */
  readonly licence?: string;
  readonly attribution?: string;
  /** Address of the station's page at its source. */
  readonly source?: string;
}

export interface TidalConstituent {
  readonly name: string;
  /** m */
  readonly amplitude: number;
  readonly phaseDeg: number;
}
