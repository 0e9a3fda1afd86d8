import type { Hull, HullForm } from '../craft/shapes.ts';
import { DEGREE } from '../units/convert.ts';
import { segmentAt, segmentDraft } from './tube-segment.ts';

/** Twin tubes: diameter, distance between centre lines, effective length of one (volume over section); m. */
export type Tubes = NonNullable<Hull['tube']>;

export interface Afloat {
  /** All up, kg. */
  readonly mass: number;
  /** Centre of gravity above the tubes' underside, m. */
  readonly centreHeight: number;
  /** Of the water, kg/m3. */
  readonly density: number;
}

export interface TubesAtRest {
  /** m */
  readonly draft: number;
  /** Of the tubes, m. */
  readonly freeboard: number;
  /** Waterline breadth of one tube, m, and area of both, m2. */
  readonly breadth: number;
  readonly waterplane: number;
  /** kg per m of sinkage. */
  readonly massPerMetre: number;
  /** Centre of buoyancy and metacentres above the tubes' underside and the centre of gravity, m. */
  readonly centreOfBuoyancy: number;
  readonly metacentricHeight: number;
  readonly longitudinalMetacentricHeight: number;
  /** Share of the tubes under water. */
  readonly immersed: number;
}

/** Whether two cylinders describe the boat: twin-tube hulls; for flat-floor inflatables a lower bound of what they carry. */
export function tubesCover(form: HullForm, _length: number): boolean {
  return form === 'inflatable-catamaran' || form === 'flat-floor-inflatable';
}

/** How two equal cylinders float level and at rest (geometry; I_T = 2 (L b^3/12 + L b (s/2)^2)). Undefined: they do not carry it. */
export function tubesAtRest(tubes: Tubes, { mass, centreHeight, density }: Afloat): TubesAtRest | undefined {
  const { diameter, spacing, length } = tubes;
  const draft = segmentDraft(diameter, mass / (2 * density * length));
  if (draft === undefined) return undefined;
  const { area, breadth, centroid } = segmentAt(diameter, draft);
  const volume = mass / density;
  const waterplane = 2 * breadth * length;
  const across = 2 * ((length * breadth ** 3) / 12 + length * breadth * (spacing / 2) ** 2);
  const along = (2 * breadth * length ** 3) / 12;
  return {
    draft,
    freeboard: diameter - draft,
    breadth,
    waterplane,
    massPerMetre: density * waterplane,
    centreOfBuoyancy: centroid,
    metacentricHeight: centroid + across / volume - centreHeight,
    longitudinalMetacentricHeight: centroid + along / volume - centreHeight,
    immersed: area / (Math.PI * (diameter / 2) ** 2),
  };
}

export type TubesHeeled =
  | {
      readonly state: 'afloat';
      /** By the tubes, which share the load as two supports, and by the metacentre; show the larger. */
      readonly heelDeg: number;
      readonly smallAngleDeg: number;
      /** kg on each tube. */
      readonly loadedMass: number;
      readonly lightMass: number;
      /** Of the tube on the loaded side, m. */
      readonly loadedFreeboard: number;
    }
  /** The light tube leaves the water, or the loaded one goes under. */
  | { readonly state: 'tube-lifts' | 'tube-under' };

/** Heel under a moment, kg m to either side, of masses already counted in `mass`. Ignores the floor's own stiffness. */
export function tubesHeeled(tubes: Tubes, afloat: Afloat, moment: number): TubesHeeled {
  const { diameter, spacing, length } = tubes;
  const { mass, density } = afloat;
  const shift = Math.abs(moment) / spacing;
  const loadedMass = mass / 2 + shift;
  const lightMass = mass / 2 - shift;
  const loaded = segmentDraft(diameter, loadedMass / (density * length));
  const rest = tubesAtRest(tubes, afloat);
  if (loaded === undefined || rest === undefined) return { state: 'tube-under' };
  const light = lightMass >= 0 ? segmentDraft(diameter, lightMass / (density * length)) : undefined;
  if (light === undefined) return { state: 'tube-lifts' };
  return {
    state: 'afloat',
    heelDeg: Math.atan((loaded - light) / spacing) / DEGREE,
    smallAngleDeg: leanOf(Math.abs(moment), mass * rest.metacentricHeight) / DEGREE,
    loadedMass,
    lightMass,
    loadedFreeboard: diameter - loaded,
  };
}

export interface TubesTrimmed {
  /** Bow down positive. */
  readonly trimDeg: number;
  /** Difference of draft between the ends of the tubes, m, bow down positive. */
  readonly trimOverLength: number;
}

/** Trim at rest under a moment forward of mid-length of the tubes, kg m; small angles. Undefined: the tubes do not carry the mass. */
export function tubesTrimmed(tubes: Tubes, afloat: Afloat, momentForward: number): TubesTrimmed | undefined {
  const rest = tubesAtRest(tubes, afloat);
  if (rest === undefined) return undefined;
  const angle = leanOf(momentForward, afloat.mass * rest.longitudinalMetacentricHeight);
  return { trimDeg: angle / DEGREE, trimOverLength: tubes.length * Math.tan(angle) };
}

/** Angle whose tangent is moment over stiffness; upright without a moment, a right angle where nothing rights the boat. */
function leanOf(moment: number, stiffness: number): number {
  if (moment === 0) return 0;
  return stiffness > 0 ? Math.atan(moment / stiffness) : (Math.sign(moment) * Math.PI) / 2;
}
