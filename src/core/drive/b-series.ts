import series from '../../../shared/propeller/b-series.json' with { type: 'json' };
import type { Propeller } from '../craft/shapes.ts';

/** c0 + c1 J + c2 J^2 + c3 J^3 in the advance ratio J = Va/(n D). */
export type Cubic = readonly [number, number, number, number];

/** Open-water propeller: thrust coefficient KT = T/(rho n^2 D^4) from `a`, torque KQ = Q/(rho n^2 D^5) from `b`. */
export interface OpenWater {
  readonly a: Cubic;
  readonly b: Cubic;
}

/** Which of the three shape numbers lie within the series that was tested. */
export interface SeriesRange {
  readonly pitchRatio: boolean;
  readonly areaRatio: boolean;
  readonly blades: boolean;
}

/** Terms C J^s (P/D)^t (Ae/A0)^u Z^v as rows [C, s, t, u, v]. */
type Terms = readonly (readonly number[])[];

/**
 * Wageningen B-series polynomials for one propeller, exact, at Reynolds number 2e6 and without `quality`.
 * Valid from J = 0 to KT = 0 where `bSeriesRange` holds; extrapolates smoothly beyond.
 * Source: Oosterveld and van Oossanen 1975, Further computer-analyzed data of the Wageningen B-screw series.
 */
export function openWater(propeller: Propeller): OpenWater {
  return collapsed(propeller, powers(propeller.pitch / propeller.diameter, 6));
}

/** Change of the coefficients of `openWater` with pitch, per m. */
export function openWaterPitchSlope(propeller: Propeller): OpenWater {
  const plain = powers(propeller.pitch / propeller.diameter, 6);
  const slopes = plain.map((_, t) => (t === 0 ? 0 : (t * plain[t - 1]!) / propeller.diameter));
  return collapsed(propeller, slopes);
}

export function ktOf(water: OpenWater, advanceRatio: number): number {
  return cubicAt(water.a, advanceRatio);
}

export function kqOf(water: OpenWater, advanceRatio: number): number {
  return cubicAt(water.b, advanceRatio);
}

/** J KT / (2 pi KQ). */
export function openWaterEfficiency(water: OpenWater, advanceRatio: number): number {
  return (advanceRatio * ktOf(water, advanceRatio)) / (2 * Math.PI * kqOf(water, advanceRatio));
}

/** Limits by number of blades as collected from secondary sources; they stand in the coefficient file. */
export function bSeriesRange(propeller: Propeller): SeriesRange {
  const areas = new Map(Object.entries(series.validity.Ae_over_A0_by_Z)).get(String(propeller.blades));
  return {
    pitchRatio: within(propeller.pitch / propeller.diameter, series.validity.P_over_D),
    areaRatio: areas !== undefined && within(propeller.areaRatio, areas),
    blades: areas !== undefined,
  };
}

function within(ratio: number, [low = Number.NaN, high = Number.NaN]: readonly number[]): boolean {
  // A ratio of two lengths in inches lands a rounding beside its limit.
  return ratio > low - 1e-9 && ratio < high + 1e-9;
}

function collapsed(propeller: Propeller, pitchPowers: readonly number[]): OpenWater {
  const areaPowers = powers(propeller.areaRatio, 2);
  const bladePowers = powers(propeller.blades, 2);
  const cubic = (terms: Terms): Cubic => {
    const sum: [number, number, number, number] = [0, 0, 0, 0];
    for (const [c, s, t, u, v] of terms) sum[s!]! += c! * pitchPowers[t!]! * areaPowers[u!]! * bladePowers[v!]!;
    return sum;
  };
  return { a: cubic(series.KT), b: cubic(series.KQ) };
}

function powers(base: number, highest: number): number[] {
  const list = [1];
  for (let i = 0; i < highest; i++) list.push(list[i]! * base);
  return list;
}

function cubicAt(c: Cubic, x: number): number {
  return c[0] + x * (c[1] + x * (c[2] + x * c[3]));
}
