export type Regime = 'displacement' | 'hump' | 'planing';

/** 10th, 50th and 90th percentile. */
export interface Band {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** One steady speed through the water. SI: m/s, N, W, degrees; flow kg/s of petrol or W out of the battery. */
export interface CurvePoint {
  readonly speed: number;
  readonly resistance: number;
  /** At the propshaft. */
  readonly power: number;
  readonly rpm: number;
  /** Power over what full throttle gives at these revs. */
  readonly throttle: number;
  readonly flow: Band;
  /** Flow over speed: kg/m or J/m through the water. */
  readonly perMetre: Band;
  readonly trimDeg: number;
  readonly slip: number;
  readonly regime: Regime;
  /** The drive can hold this speed; false beyond full throttle, rev limit or battery limit. */
  readonly held: boolean;
}

export interface BestSpeed {
  readonly speed: number;
  readonly perMetre: Band;
  /** Distance on all usable fuel or charge, m, and time, s. No reserve kept. */
  readonly range: number;
  readonly endurance: number;
}

/** Everything that a boat, a load and a headwind say about steady speeds. */
export interface Curve {
  readonly store: 'fuel' | 'charge';
  readonly points: readonly CurvePoint[];
  /** Highest speed held; `reached` is false where the hump stands before it. */
  readonly topSpeed: Band & { readonly limit: 'power' | 'revs' | 'battery'; readonly reached: boolean };
  /** Where the boat stays when it cannot get over the hump: the top of the lowest range of held speeds. */
  readonly stuckSpeed: number | undefined;
  /** Speed of the largest power share on the hump, and the least thrust over drag there (1.05 or more crosses it). */
  readonly humpSpeed: number;
  readonly humpMargin: number;
  /** From here on the boat planes; undefined where it cannot. */
  readonly planingSpeed: number | undefined;
  readonly bestDisplacement: BestSpeed;
  readonly bestPlaning: BestSpeed | undefined;
  /** Running in neutral. */
  readonly idleFlow: number;
}
