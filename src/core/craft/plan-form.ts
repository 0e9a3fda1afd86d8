import type { Hull, HullForm } from './shapes.ts';

/** Ends of the boat along x, m: aft of the tubes or the transom, and the tip of the bow. */
export interface Ends {
  readonly aft: number;
  readonly bow: number;
}

/** How far tubes reach behind the transom, as a share of the length and at most, m (common practice, no source). */
const TUBE_ENDS = { share: 0.07, most: 0.3 };

/** Tube diameter as a share of the beam where the record gives no tubes (common practice, no source). */
const TUBE_SHARE = 0.24;

/**
 * Plan of a bow: where it begins along the length, exponents of (1 - u^a)^b from there to the tip, and the breadth at
 * transom and tip over the greatest. Drawn by eye for the type; no record has a boat's lines.
 */
interface Lines {
  readonly shoulder: number;
  readonly a: number;
  readonly b: number;
  readonly stern: number;
  readonly tip: number;
}

type Inflatable = 'inflatable-catamaran' | 'rib' | 'flat-floor-inflatable';
export type OneBow = Exclude<HullForm, 'inflatable-catamaran'>;

const LINES: Record<OneBow, Lines> = {
  rib: { shoulder: 0.5, a: 2.2, b: 0.68, stern: 1, tip: 0 },
  'flat-floor-inflatable': { shoulder: 0.56, a: 2.3, b: 0.52, stern: 1, tip: 0 },
  'rigid-v': { shoulder: 0.36, a: 2, b: 0.86, stern: 0.9, tip: 0 },
  'rigid-flat': { shoulder: 0.42, a: 1.9, b: 1, stern: 0.94, tip: 0.52 },
  displacement: { shoulder: 0.42, a: 1.9, b: 0.92, stern: 0.7, tip: 0 },
};

export function inflatable(form: HullForm): form is Inflatable {
  return form === 'inflatable-catamaran' || form === 'rib' || form === 'flat-floor-inflatable';
}

/** Diameter of the tubes, m; 0 for a boat without. */
export function tubeDiameter({ form, beam, tube }: Hull): number {
  return inflatable(form) ? Math.min(tube?.diameter ?? TUBE_SHARE * beam, 0.45 * beam) : 0;
}

export function ends({ form, length, wettedLength }: Hull): Ends {
  const aft = inflatable(form) ? -Math.min(TUBE_ENDS.share * length, TUBE_ENDS.most) : 0;
  return { aft, bow: Math.max(aft + length, wettedLength) };
}

/** Breadth over the greatest, from the stern (0) to the tip of the bow (1), of boats with one bow. */
export function fullness(form: OneBow, along: number): number {
  const { shoulder, a, b, stern, tip } = LINES[form];
  if (along < shoulder) {
    const u = 1 - along / shoulder;
    return 1 - (1 - stern) * u * u;
  }
  const u = Math.min(1, (along - shoulder) / (1 - shoulder));
  return tip + (1 - tip) * (1 - u ** a) ** b;
}
