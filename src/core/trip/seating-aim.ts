import type { Craft } from '../craft/shapes.ts';
import type { Afloat, Boat } from '../curve/boat.ts';
import { humpOf } from '../curve/hump.ts';
import { CALM, steady } from '../curve/steady.ts';
import { mayPorpoise } from '../hull/porpoising.ts';
import { equilibrium } from '../load/equilibrium.ts';
import type { FloatBody } from '../load/float-body.ts';
import { DEGREE } from '../units/convert.ts';
import type { Purpose } from './seating-places.ts';

/** What a placement comes to; the mass is the same whoever sits where. */
export interface Spread {
  /** Centre of gravity, m. */
  readonly lcg: number;
  readonly lateral: number;
  readonly vcg: number;
  /** Mean square distance of the mass from its centre along the boat, m2: how slowly it pitches. */
  readonly pitch: number;
}

/** How far from good a placement is; 0 is as good as can be, and each figure below is worth its square. */
export interface Aim {
  cost(spread: Spread): number;
  /** No placement with its centre of gravity within these limits and so little pitch costs less. */
  bound(from: number, to: number, leastPitch: number): number;
}

export interface AimAsked {
  readonly boat: Boat;
  readonly body: FloatBody | undefined;
  readonly afloat: Afloat;
  readonly vcg: number;
  /** Planned, m/s. */
  readonly speed: number;
}

/** Sideways offset over beam, and shares of the wetted length between which a boat lies well (common practice, no source). */
const ACROSS = 0.05;
const ALONG = {
  planing: { low: 0.33, high: 0.4 },
  displacement: { low: 0.42, high: 0.5 },
} as const;
/** What the whole tolerated offset sideways costs, in power: more than any seat forward gains (common practice: left and right first). */
const SIDEWAYS = 0.2;
/** What going so far past those limits costs as much as a tenth of the power, share of the length. */
const PAST = 0.05;
/** In a rough sea: middle of the good range, and how much of the length weight spreads along. */
const ROUGH_PITCH = 0.18;
const NODES = 17;
const FROM = 0.12;
const TO = 0.6;

/** What the placement is judged by: the method's own figures over the centre of gravity, tabulated once. */
export function aimFor(purpose: Purpose, craft: Craft, asked: AimAsked): Aim {
  const { hull } = craft;
  const length = hull.wettedLength;
  const table = Float64Array.from({ length: NODES }, (_, i) => {
    const lcg = length * (FROM + ((TO - FROM) * i) / (NODES - 1));
    return along(purpose, asked, lcg, hull.deadriseDeg);
  });
  const least = table.reduce((a, b) => Math.min(a, b));
  const { low, high } = ALONG[hull.form === 'displacement' ? 'displacement' : 'planing'];
  const lengthwise = (lcg: number): number => {
    const share = lcg / length;
    // Past the good range: bow steer forward, bounce and a following wave aft.
    const past = Math.max(share - high, low - share, 0) / PAST;
    const rough = purpose === 'rough' ? ((share - (low + high) / 2) / PAST) ** 2 : 0;
    return read(table, share) - least + 0.1 * past * past + 0.1 * rough;
  };
  const pitching = (pitch: number): number => (purpose === 'rough' ? 0.1 * (pitch / (ROUGH_PITCH * length) ** 2) : 0);
  return {
    cost: ({ lcg, lateral, pitch }) => {
      const across = lateral / (ACROSS * hull.beam);
      return lengthwise(lcg) + SIDEWAYS * across * across + pitching(pitch);
    },
    bound: (from, to, leastPitch) => {
      let cost = Math.min(lengthwise(from), lengthwise(to));
      for (let i = 1; i < 200; i++) cost = Math.min(cost, lengthwise(from + ((to - from) * i) / 200));
      return cost + pitching(leastPitch);
    },
  };
}

/** Logarithms of what matters, so that a tenth more costs a tenth whatever is asked. */
function along(
  purpose: Purpose,
  { boat, body, afloat, vcg, speed }: AimAsked,
  lcg: number,
  deadriseDeg: number,
): number {
  const now = { ...afloat, lcg };
  switch (purpose) {
    case 'planing':
    case 'tiller':
      return -Math.log(humpOf(boat, now, CALM).margin);
    case 'range': {
      const running = steady(boat, now, speed);
      return Math.log(running.flow) + (mayPorpoise(deadriseDeg, running.hull) ? 0.1 : 0);
    }
    case 'level': {
      const rest = body && equilibrium(body, { mass: now.mass, x: lcg, y: 0, z: vcg }, boat.water.density);
      // A degree of trim at rest counts like a tenth of the power; without lines of the boat its middle is level.
      const trimDeg =
        rest?.state === 'afloat' ? rest.trimDeg : (0.42 - lcg / boat.craft.hull.wettedLength) / DEGREE / 4;
      return 0.1 * trimDeg * trimDeg;
    }
    case 'rough':
      return 0;
    default:
      return purpose satisfies never;
  }
}

/** Linear between the nodes; beyond the ends the last value. */
function read(table: Float64Array, share: number): number {
  const place = Math.min(Math.max(((share - FROM) / (TO - FROM)) * (NODES - 1), 0), NODES - 1 - 1e-9);
  const node = Math.floor(place);
  return table[node]! + (place - node) * (table[node + 1]! - table[node]!);
}
