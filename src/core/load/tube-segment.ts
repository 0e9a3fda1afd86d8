export interface Segment {
  /** Under water, m2. */
  readonly area: number;
  /** At the waterline, m. */
  readonly breadth: number;
  /** Of the immersed part, m above the underside. */
  readonly centroid: number;
}

/** Halvings of the draft: to less than a nanometre of any tube. */
const HALVINGS = 40;

/** Immersed part of a round tube at a draft between 0 and its diameter, m (circular segment). */
export function segmentAt(diameter: number, draft: number): Segment {
  const r = diameter / 2;
  const phi = Math.acos(Math.min(1, Math.max(-1, (r - draft) / r)));
  const twice = 2 * phi - Math.sin(2 * phi);
  return {
    area: (r * r * twice) / 2,
    breadth: 2 * r * Math.sin(phi),
    centroid: twice > 0 ? r - (4 * r * Math.sin(phi) ** 3) / (3 * twice) : 0,
  };
}

/** Draft, m, at which so much of a tube's section, m2, is under water; undefined when the tube is smaller than that. */
export function segmentDraft(diameter: number, area: number): number | undefined {
  if (area >= Math.PI * (diameter / 2) ** 2) return undefined;
  let low = 0;
  let high = diameter;
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (segmentAt(diameter, middle).area < area) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
