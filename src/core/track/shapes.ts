import type { LatLon } from '../route/shapes.ts';

export interface TrackPoint extends LatLon {
  /** s since 1970-01-01 UTC. */
  readonly time: number;
}

/** A recorded way, in order of time. */
export interface Track {
  readonly name: string;
  readonly points: readonly TrackPoint[];
  /** Indices of points before which the recording was interrupted, ascending; never 0. */
  readonly breaks: readonly number[];
}

export type TrackNoteCode =
  // told by the reader of a file
  | 'broken-off'
  | 'no-time'
  | 'bad-time'
  | 'bad-place'
  | 'untimed-track'
  | 'empty-track'
  | 'out-of-order'
  | 'repeated-time'
  | 'future'
  | 'long'
  // told by cleaning
  | 'beyond-latitude'
  | 'jump'
  | 'moved'
  | 'gap';

/** Something found in a track; what was sound is kept. */
export interface TrackNote {
  readonly code: TrackNoteCode;
  /** Name of the track; empty: the file as a whole. */
  readonly track: string;
  readonly message: string;
  /** How many points or gaps. */
  readonly count: number;
  /** Line of the file where it was met first, from 1. */
  readonly line?: number;
  /** When it was met first, s since 1970. */
  readonly at?: number;
  /** Longest gap, or length of the track, s. */
  readonly seconds?: number;
}

/** A part of a track sailed at one speed on one heading. */
export interface Stretch {
  /** Indices of its first and last point. */
  readonly first: number;
  readonly last: number;
  /** s since 1970. */
  readonly start: number;
  readonly end: number;
  readonly begin: LatLon;
  readonly finish: LatLon;
  /** Straight from begin to finish, m. */
  readonly distance: number;
  /** Mean over ground, m/s, and its standard deviation. */
  readonly speed: number;
  readonly deviation: number;
  /** Over ground, true. */
  readonly headingDeg: number;
  /** Change of speed from begin to finish, of the straight line through the speeds, m/s. */
  readonly trend: number;
  /** Speed and heading were held as `STEADY` asks; an end moved by hand may spoil it. */
  readonly steady: boolean;
}

export interface GroupedPass {
  readonly stretch: Stretch;
  readonly way: 'out' | 'back';
  /** Weight in the mean of means. */
  readonly weight: number;
  /** Over ground, less what all passes of the group together say it should have been, m/s. */
  readonly residual: number;
  /** It does not fit the others. */
  readonly odd: boolean;
}

/** Passes out and back on one line at about one throttle setting. */
export interface PassGroup {
  /** In the order sailed; at least one each way. */
  readonly passes: readonly GroupedPass[];
  /** Of the way out. */
  readonly headingDeg: number;
  /** Through still water, m/s, and its standard deviation. */
  readonly speed: number;
  readonly deviation: number;
  /** With the way out, m/s. */
  readonly stream: { readonly along: number; readonly deviation: number };
}
