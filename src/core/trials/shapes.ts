import type { Drive, Fouling, Hull, Store } from '../craft/shapes.ts';
import type { Load } from '../load/shapes.ts';

/** An engine with its propeller and its tanks or batteries, as runs were made with it. */
export interface Setup {
  readonly id: string;
  /** Setups of the same drive name share an engine and differ in the propeller. */
  readonly drive: Drive;
  readonly store: Store;
}

/** One steady pass: speed over ground, m/s, out or back on the same line. */
export interface Pass {
  readonly over: number;
  readonly way: 'out' | 'back';
}

/** What a run consumed: a rate (kg/s of petrol or W out of the battery), or an amount (kg or J) over a time, s. */
export type Consumed =
  | { readonly kind: 'rate'; readonly rate: number }
  | { readonly kind: 'amount'; readonly amount: number; readonly seconds: number };

/** A boat held at one throttle setting, with what was read meanwhile. */
export interface Run {
  readonly id: string;
  /** When it was made, a date of ISO 8601 such as 2026-07-15. */
  readonly day?: string;
  /** Id of a setup. */
  readonly setup: string;
  /** Who and what was aboard, where, and the fill. */
  readonly load: Load;
  /** In the order sailed. */
  readonly passes: readonly Pass[];
  /** With the way out, m/s; only needed where there is no pass back. Absent: not known. */
  readonly stream?: number;
  /** Of the engine or motor. */
  readonly rpm?: number;
  readonly fullThrottle?: boolean;
  readonly consumed?: Consumed;
  /** Relative standard deviation of what was consumed, where the one measuring knows it better than the default. */
  readonly consumedError?: number;
  /** True wind over the ground, m/s, and where it came from on the way out: 0 ahead, 180 astern. */
  readonly wind?: { readonly speed: number; readonly offBowDeg: number };
  /** Significant, m. Absent: flat. */
  readonly waveHeight?: number;
  /** True: left out of the fit by the one measuring. */
  readonly leftOut?: boolean;
  readonly note?: string;
}

/** A whole trip with what was put back afterwards. */
export interface Refill {
  readonly id: string;
  readonly day?: string;
  readonly setup: string;
  /** At departure. */
  readonly load: Load;
  /** Time spent at each speed over ground; 0 m/s is the engine running in neutral. */
  readonly spent: readonly { readonly speed: number; readonly seconds: number }[];
  /** kg of petrol or J put back. */
  readonly amount: number;
  /** Where charge was read: into the battery, or at the socket with the charger's loss. */
  readonly readAt?: 'battery' | 'socket';
  readonly consumedError?: number;
  readonly waveHeight?: number;
  readonly leftOut?: boolean;
  readonly note?: string;
}

/** The evidence of trial days on one boat. Everything said of the boat's factors is worked out from it anew. */
export interface Trials {
  /** The hull as measured. */
  readonly hull: Hull;
  readonly water: 'sea' | 'fresh';
  readonly measuredBy?: string;
  readonly fouling?: Fouling;
  readonly setups: readonly Setup[];
  readonly runs: readonly Run[];
  readonly refills: readonly Refill[];
}

/** The file that carries a measured boat: the craft as it is used, and the evidence. */
export interface BoatProfile {
  readonly format: 'homeleg-profile';
  readonly version: 1;
  readonly name: string;
  /** The setup as which the boat usually goes. */
  readonly usual: string;
  readonly trials: Trials;
}
