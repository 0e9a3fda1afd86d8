import type { Curve, CurvePoint } from '../../core/curve/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { regimeText } from '../words/en-regime.ts';
import type { PlotMode } from './picture.ts';
import { curveWords as words } from './words.ts';

/** SI in one shown unit of use, with its sign. */
export function useUnit(curve: Curve, mode: PlotMode, measures: Measures): { sign: string; si: number } {
  const { store } = curve;
  const amount = measures.toSi('amount', 1, store);
  const sign = measures.unit('amount', store);
  if (mode === 'distance') {
    return { sign: `${sign}/${measures.unit('distance')}`, si: amount / measures.toSi('distance', 1) };
  }
  if (store === 'fuel') return { sign: `${sign}/h`, si: amount / 3600 };
  const large = curve.points.some((point) => point.held && point.flow.median >= 2000);
  return large ? { sign: 'kW', si: 1000 } : { sign: 'W', si: 1 };
}

/** Everything about one speed, for the line under the plot and for screen readers. */
export function readout(point: CurvePoint, { store }: Curve, measures: Measures): string {
  const per = (si: number) => measures.perDistance(si, store);
  const { low, median, high } = point.perMetre;
  const number = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 0 });
  const parts = [
    words.likelyBand(per(median), per(low), per(high)),
    measures.flow(point.flow.median, store),
    words.rpmOf(number.format(tens(point.rpm))),
    words.trimOf(measures.show('angle', point.trimDeg)),
    regimeText(point.regime),
  ];
  const held = point.held ? '' : words.cannotHold;
  return `${measures.show('speed', point.speed)}: ${parts.join(', ')}${held}.`;
}

/** Nobody reads a rev counter closer. */
export function tens(rpm: number): number {
  return Math.round(rpm / 10) * 10;
}

/** The curve in sentences. */
export function curveFacts(curve: Curve, measures: Measures): readonly string[] {
  const speed = (si: number) => measures.show('speed', si);
  const { bestDisplacement, bestPlaning, topSpeed, store } = curve;
  const facts = [
    words.least(store, measures.perDistance(bestDisplacement.perMetre.median, store), speed(bestDisplacement.speed)),
  ];
  if (bestPlaning) {
    const use = measures.perDistance(bestPlaning.perMetre.median, store);
    facts.push(words.leastPlaning(use, speed(bestPlaning.speed)));
  }
  facts.push(humpFact(curve, measures));
  const band = measures.band('speed', topSpeed);
  facts.push(
    topSpeed.reached
      ? words.top(speed(topSpeed.median), band, words.limits[topSpeed.limit])
      : words.topBeyond(speed(topSpeed.median), band),
  );
  return facts;
}

/** Thrust over drag from which the trade calls the hump crossed with something to spare (shape of `Curve.humpMargin`). */
const THIN = 1.05;

function humpFact({ planingSpeed, humpSpeed, humpMargin, stuckSpeed }: Curve, measures: Measures): string {
  const at = measures.show('speed', humpSpeed);
  if (stuckSpeed !== undefined) return words.stuck(at, measures.show('speed', stuckSpeed));
  if (planingSpeed === undefined) return words.noPlaning;
  const planes = words.planingFrom(measures.show('speed', planingSpeed));
  if (humpMargin < THIN) return words.humpThin(at, planes);
  return words.humpCrossed(at, measures.show('share', humpMargin - 1), planes);
}
