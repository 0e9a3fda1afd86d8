import type { Craft } from '../../../src/core/craft/shapes.ts';
import { type Afloat, type Boat, boatOf } from '../../../src/core/curve/boat.ts';
import { curve } from '../../../src/core/curve/curve.ts';
import type { Curve, CurvePoint } from '../../../src/core/curve/shapes.ts';
import { type Steady, steady } from '../../../src/core/curve/steady.ts';
import { craftFrom } from '../../../src/core/files/catalogue.ts';
import { balance } from '../../../src/core/load/balance.ts';
import { KNOT } from '../../../src/core/units/convert.ts';

/** A shipped boat with its crew, as the curve takes it. */
export interface Loaded {
  readonly craft: Craft;
  readonly boat: Boat;
  readonly afloat: Afloat;
}

export interface Aboard {
  /** Stations of adults of 85 kg. */
  readonly crew?: readonly string[];
  /** kg more, at the boat's own centre of gravity. */
  readonly extra?: number;
  /** kg of petrol. */
  readonly fuel?: number;
  readonly temperatureC?: number;
  readonly change?: (craft: Craft) => Craft;
}

export function loaded(hull: string, engine: string, store: string, aboard: Aboard = {}): Loaded {
  const {
    crew = ['helm', 'seat-fore-port'],
    extra = 0,
    fuel = 8,
    temperatureC = 20,
    change = (craft) => craft,
  } = aboard;
  const craft = change(craftFrom(hull, engine, store));
  const items = crew.map((station, i) => ({ id: `p${i}`, kind: 'adult' as const, mass: 85, station }));
  const { allUpMass, lcg, airArea } = balance(craft, { items }, craft.store.kind === 'tank' ? fuel : 0);
  return { craft, boat: boatOf(craft, 'sea', temperatureC), afloat: { mass: allUpMass + extra, lcg, airArea } };
}

/** 12 kg of petrol, or 8 MJ. */
export function curveOf({ boat, afloat, craft }: Loaded): Curve {
  return curve(boat, afloat, craft.store.kind === 'tank' ? 12 : 8e6);
}

export function at({ boat, afloat }: Loaded, knots: number): Steady {
  return steady(boat, afloat, knots * KNOT);
}

/** kg or J per metre through the water. */
export function perMetre(craft: Loaded, knots: number): number {
  return at(craft, knots).flow / (knots * KNOT);
}

/** The last point held, next to full throttle. */
export function fullThrottle(drawn: Curve): CurvePoint {
  return drawn.points.findLast((point) => point.held)!;
}

/** Local minima and maxima of consumption per distance, in order. */
export function turns(drawn: Curve): readonly { readonly kind: 'least' | 'most'; readonly point: CurvePoint }[] {
  const held = drawn.points.filter((point) => point.held);
  const found: { kind: 'least' | 'most'; point: CurvePoint }[] = [];
  for (let i = 1; i < held.length - 1; i++) {
    const [before, here, after] = [held[i - 1]!, held[i]!, held[i + 1]!].map((point) => point.perMetre.median);
    if (here! < before! && here! <= after!) found.push({ kind: 'least', point: held[i]! });
    if (here! > before! && here! >= after!) found.push({ kind: 'most', point: held[i]! });
  }
  return found;
}

/** The craft with its propeller's pitch changed by this many inches. */
export function pitched(inches: number): (craft: Craft) => Craft {
  return (craft) => {
    const { propeller } = craft.drive;
    return {
      ...craft,
      drive: { ...craft.drive, propeller: { ...propeller, pitch: propeller.pitch + inches * 0.0254 } },
    };
  };
}
