import type { Curve } from '../../core/curve/shapes.ts';
import { type Placed, placeLabels, textWidth } from '../fuel-bar/labels.ts';
import type { Measures } from '../units/measures.ts';
import type { PlotPicture } from './picture.ts';
import { curveWords } from './words.ts';

/** A speed limit on the way, m/s. */
export interface SpeedLimit {
  readonly speed: number;
  readonly name?: string;
}

/** A speed worth a line of its own, m/s. */
export interface Mark {
  readonly kind: 'best' | 'top' | 'stuck' | 'limit';
  readonly speed: number;
  readonly text: string;
  readonly weight: number;
}

export function marksOf(curve: Curve, limits: readonly SpeedLimit[], measures: Measures): readonly Mark[] {
  const at = (si: number) => measures.show('speed', si);
  const words = curveWords.marks;
  const marks: Mark[] = [];
  const add = (kind: Mark['kind'], speed: number | undefined, text: (speed: string) => string, weight: number) => {
    if (speed !== undefined) marks.push({ kind, speed, text: text(at(speed)), weight });
  };
  add('best', curve.bestDisplacement.speed, words.least, 3);
  add('best', curve.bestPlaning?.speed, words.leastPlaning, 3);
  add('stuck', curve.stuckSpeed, words.stuck, 4);
  add('top', curve.topSpeed.median, words.top, 2);
  for (const limit of limits) add('limit', limit.speed, (speed) => words.limit(speed, limit.name ?? ''), 1);
  return marks;
}

/** Marks with room for their words in the rows along the foot of the plot; the others keep their line only. */
export function markLabels(
  marks: readonly Mark[],
  { x, box }: PlotPicture,
  fontSize: number,
  rows: number,
): readonly Placed[] {
  return placeLabels(
    marks.map(({ speed, text, weight }, i) => ({
      key: String(i),
      text,
      x: x(speed) - box.left,
      width: textWidth(text, fontSize),
      weight,
    })),
    box.right - box.left,
    rows,
  ).map((label) => ({ ...label, left: label.left + box.left }));
}
