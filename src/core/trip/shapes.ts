import type { Craft } from '../craft/shapes.ts';
import type { Band, Regime } from '../curve/shapes.ts';
import type { LoadBalance } from '../load/balance.ts';
import type { Load } from '../load/shapes.ts';
import type { LatLon, Route } from '../route/shapes.ts';
import type { Trials } from '../trials/shapes.ts';
import type { Conditions, Stream } from '../water/shapes.ts';

/** What stays untouched: a share of the usable fuel or charge at departure, or minutes at the trip's mean flow. */
export type ReserveRule =
  | { readonly kind: 'thirds' }
  | { readonly kind: 'share'; readonly share: number }
  | { readonly kind: 'minutes'; readonly minutes: number };

export interface Policy {
  /** The largest reserve of all rules holds; empty means thirds. */
  readonly reserve: readonly ReserveRule[];
  /** Warm-up, casting off, coming alongside; s. */
  readonly manoeuvring?: number;
  /** Sailed over drawn length, 1 or more. */
  readonly drawnFactor?: number;
  /** The crew's own limits: mean wind m/s, significant wave height m. */
  readonly maxWind?: number;
  readonly maxWave?: number;
  /** Depth of water wanted on shoals and at landings, m. */
  readonly depth?: number;
  /** Time from departure to due back, s. */
  readonly timeAllowed?: number;
}

export interface Trip {
  readonly version: 1;
  readonly name?: string;
  readonly craft: Craft;
  readonly load: Load;
  readonly route: Route;
  readonly conditions: Conditions;
  readonly policy: Policy;
  /** Name of the local waters this trip was planned on. */
  readonly waters?: string;
  /** Evidence from which the boat's calibration is worked out. */
  readonly trials?: Trials;
}

export type Verdict = 'go' | 'marginal' | 'no-go';

/** Fuel in kg or charge in J, as `Plan.store` says. */
export type Amount = number;

export type ReasonCode =
  // the fuel or charge
  | 'reserve-broken'
  | 'runs-dry'
  | 'bad-case-dry'
  | 'reserve-unsure'
  | 'nothing-usable'
  // the boat
  | 'over-plate-load'
  | 'over-plate-persons'
  | 'over-plate-power'
  | 'over-plate-engine-mass'
  | 'over-category'
  | 'plate-unknown'
  | 'no-plate'
  | 'speed-not-held'
  | 'speed-uncertain'
  | 'hump-not-crossed'
  | 'hump-thin'
  | 'stuck-in-stream'
  | 'outside-method'
  | 'beyond-trials'
  | 'porpoising'
  | 'off-balance'
  | 'overtrimmed'
  | 'on-bow-tube'
  | 'outside-boat'
  | 'low-in-water'
  | 'low-freeboard'
  | 'water-comes-in'
  | 'one-side-under'
  // the water
  | 'crosses-land'
  | 'crosses-keep-out'
  | 'crosses-shoal'
  | 'outside-waters'
  | 'waters-unknown'
  | 'waters-expired'
  | 'waters-not-yet'
  | 'too-rough'
  | 'rough'
  | 'over-wind-limit'
  | 'over-wave-limit'
  | 'late'
  | 'late-likely'
  | 'after-dark'
  | 'near-dark'
  | 'forecast-short'
  | 'gusty'
  | 'streams-short'
  | 'wind-against-stream'
  | 'too-shallow'
  | 'shoal-covered'
  // not given
  | 'fill-unknown'
  | 'wind-unknown'
  | 'stream-unknown'
  | 'sea-unknown'
  | 'swell-unknown'
  | 'departure-unknown'
  | 'refill-not-known'
  | 'seat-unknown'
  | 'temperature-unknown'
  | 'nobody-aboard'
  | 'no-helm'
  | 'no-adult'
  | 'helm-far'
  | 'too-few-seats'
  | 'odd-weight';

export type Measure =
  | 'amount'
  | 'mass'
  | 'speed'
  | 'power'
  | 'time'
  | 'length'
  | 'distance'
  | 'count'
  | 'share'
  | 'angle';

/** Why the verdict is what it is. `level` is the best verdict this reason allows; 'note' never changes it. */
export interface Reason {
  readonly code: ReasonCode;
  readonly level: 'no-go' | 'marginal' | 'note';
  readonly measure?: Measure;
  /** The figure, and the limit it is held against, in the SI unit of `measure`. */
  readonly value?: number;
  readonly limit?: number;
  /** Legs concerned, counted from 0. */
  readonly legs?: readonly number[];
  /** Name of the zone, seat or bad case concerned. */
  readonly name?: string;
  readonly at?: LatLon;
  /** What would mend it, each with the figure to change to. */
  readonly fixes?: readonly Fix[];
}

export type FixCode =
  | 'add-fuel'
  | 'shorten-route'
  | 'slow-down'
  | 'leave-behind'
  | 'give-value'
  | 'move-forward'
  | 'move-across'
  | 'draw-round'
  | 'wait'
  | 'read-plate'
  | 'smaller-engine'
  | 'ease-speed'
  | 'leave-earlier';

export interface Fix {
  readonly code: FixCode;
  readonly measure?: Measure;
  readonly value?: number;
}

/** One stretch with one speed: a drawn leg, or the part of it inside or outside a speed limit. */
export interface LegPlan {
  /** Index of the drawn leg in the sailed order (home legs follow out legs). */
  readonly leg: number;
  readonly from: LatLon;
  readonly to: LatLon;
  readonly part: 'out' | 'home';
  readonly distance: number;
  readonly trackDeg: number;
  readonly steerDeg: number;
  readonly speedThroughWater: number;
  readonly speedOverGround: number;
  /** m/s, when a zone slows this stretch. */
  readonly limit?: number;
  readonly limitName?: string;
  readonly time: number;
  readonly use: Amount;
  /** kg/s or W. */
  readonly flow: number;
  readonly rpm: number;
  readonly throttle: number;
  readonly trimDeg: number;
  readonly regime: Regime;
  /** Left at the end of this stretch. */
  readonly left: Band;
  /** Median still needed from the start of this stretch to the end of the trip, reserve not counted. */
  readonly needFromHere: Amount;
  readonly startsAt: number;
  /** Time stood still after this stretch, s. */
  readonly stop: number;
  /** Strongest wind from ahead, m/s, and highest waves, significant, m, on this stretch. */
  readonly headwind: number;
  readonly waveHeight: number;
  /** The strongest on this stretch; absent in slack water. */
  readonly stream?: Stream;
  /** Of streams by tide: names of the places it was taken from, in the order met. */
  readonly streamPlaces?: readonly string[];
}

export type BadCaseKind =
  | 'home-slow'
  | 'home-headwind'
  | 'wind-fresher'
  | 'home-foul-stream'
  | 'home-on-hump'
  | 'less-in-tank'
  | 'cold-battery';

export interface BadCase {
  readonly kinds: readonly BadCaseKind[];
  /** 95th percentile of need in it; Infinity when it cannot get home at all. */
  readonly need: Amount;
  readonly left: Amount;
  readonly time: number;
}

export interface Payload {
  /** Extra kg that may still come aboard; negative: to be left behind; undefined: not known. */
  readonly extra: number | undefined;
  readonly binds:
    | 'plate'
    | 'persons'
    | 'rule'
    | 'floating'
    | 'freeboard'
    | 'stability'
    | 'planing'
    | 'speed'
    | 'reserve'
    | 'search-limit'
    | 'no-plate';
  /** kg all persons, gear and what else the plate counts, now and allowed. */
  readonly counted: number;
  readonly allowed?: number;
}

export interface TippingValue {
  readonly knob: 'crew-mass' | 'consumption' | 'wind' | 'stream' | 'sea' | 'fill' | 'departure';
  readonly from: Verdict;
  readonly to: Verdict;
  /** Value at which the verdict changes: kg of people and gear, factor, m/s, m of wave height, share, s left later. */
  readonly value: number;
  /** The value now. */
  readonly now: number;
  readonly direction: 'up' | 'down';
}

export interface TurnBack {
  /** Along the sailed route from the start, m. */
  readonly distance: number;
  readonly time: number;
  readonly at: LatLon;
  /** False: the whole trip fits, this point lies beyond its turn. */
  readonly onRoute: boolean;
}

export interface Assumption {
  readonly code:
    | 'manoeuvring'
    | 'drawn-factor'
    | 'wind'
    | 'stream'
    | 'sea'
    | 'fill'
    | 'fill-gauge'
    | 'seat'
    | 'battery-temperature'
    | 'unmeasured-boat'
    | 'measured-boat'
    | 'petrol-density'
    | 'reserve-rule'
    | 'keep-out-season'
    | 'waters-undated'
    | 'waters-unanswered'
    | 'waters-date-unknown'
    | 'extra-load-at-centre'
    | 'speed-in-waves'
    | 'sea-from-wind'
    | 'stream-by-tide'
    | 'stream-spread'
    | 'refilled'
    | 'daylight';
  readonly measure?: Measure;
  readonly value?: number;
  readonly name?: string;
}

export interface Plan {
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
  readonly store: 'fuel' | 'charge';
  /** Usable at departure. */
  readonly usable: Amount;
  readonly full: Amount;
  readonly reserve: Amount;
  readonly reserveRule: ReserveRule;
  readonly need: Band;
  readonly need95: Amount;
  readonly needOut: Amount;
  readonly needHome: Amount;
  readonly manoeuvring: Amount;
  readonly left: Band;
  /** That the reserve stays whole, 0 to 0.99. */
  readonly probability: number;
  readonly badCase: BadCase;
  readonly distance: number;
  readonly distanceOut: number;
  /** Under way and stopped, s. */
  readonly time: number;
  readonly legs: readonly LegPlan[];
  readonly turnBack: TurnBack | undefined;
  /**
   * Beyond it, the last point from which the most economical speed still brings the boat home with the reserve whole;
   * undefined where that is no farther, and in quick plans.
   */
  readonly turnBackSlow?: TurnBack | undefined;
  /** Where going on is as quick as turning back. */
  readonly halfway: TurnBack | undefined;
  /** At the planned speed on the outward heading, keeping the reserve, m. */
  readonly range: { readonly oneWay: number; readonly outAndHome: number };
  readonly balance: LoadBalance;
  readonly payload: Payload;
  readonly tipping: readonly TippingValue[];
  /** Share of capacity that just makes this trip a go as far as fuel or charge decides; undefined: more than fits. */
  readonly fillNeeded: number | undefined;
  readonly assumptions: readonly Assumption[];
}
