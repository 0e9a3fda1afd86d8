import type { Craft, DesignCategory } from '../craft/shapes.ts';
import type { LoadBalance } from './balance.ts';

export interface PlateFinding {
  readonly over: 'load' | 'persons' | 'power' | 'engine-mass';
  /** kg, count, W and kg, as is the limit. */
  readonly value: number;
  readonly limit: number;
}

/** Rounding of unit conversions, as a share; not a margin. */
const SAME = 1e-9;

/** What exceeds the builder's plate; empty when nothing does, and also when there is no plate to hold it against. */
export function plateFindings({ hull, drive }: Craft, balance: LoadBalance): PlateFinding[] {
  const { plate } = hull;
  if (plate === undefined || plate === 'none') return [];
  const findings: PlateFinding[] = [];
  const hold = (over: PlateFinding['over'], value: number, limit: number | undefined) => {
    if (limit !== undefined && value > limit * (1 + SAME)) findings.push({ over, value, limit });
  };
  hold('load', balance.counted, plate.maxLoad);
  hold('persons', balance.persons, plate.persons);
  hold('power', drive.ratedPower, plate.maxPower);
  hold('engine-mass', drive.mass, plate.maxEngineMass);
  return findings;
}

export interface CategoryLimits {
  /** Wind force, and significant wave height, m, that the hull is designed for; Infinity where the category sets no figure. */
  readonly maxBeaufort: number;
  readonly maxWave: number;
  /** Single waves now and then, m, where the category names them. */
  readonly occasionalWave?: number;
}

/** Directive 2013/53/EU, Annex I, design categories, as restated in an owner's manual and in survey guidance. */
const CATEGORIES: Readonly<Record<DesignCategory, CategoryLimits>> = {
  A: { maxBeaufort: Infinity, maxWave: Infinity },
  B: { maxBeaufort: 8, maxWave: 4 },
  C: { maxBeaufort: 6, maxWave: 2 },
  D: { maxBeaufort: 4, maxWave: 0.3, occasionalWave: 0.5 },
};

/** Upper limits of a design category: for the hull in good order, not for comfort. A may exceed those of B. */
export function categoryLimits(category: DesignCategory): CategoryLimits {
  return CATEGORIES[category];
}

/** Whether a boat can carry a design category: hull length 2.5 to 24 m (Directive 2013/53/EU). */
export function categoryCovers(hullLength: number): boolean {
  return hullLength >= 2.5 && hullLength <= 24;
}
