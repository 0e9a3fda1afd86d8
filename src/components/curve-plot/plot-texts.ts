import type { Curve, CurvePoint } from '../../core/curve/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { regimeText } from '../words/en.ts';
import type { PlotMode } from './picture.ts';

/** What the drive runs into at its highest speed. */
const LIMITS: Record<Curve['topSpeed']['limit'], string> = {
  power: 'full throttle',
  revs: 'the rev limit',
  battery: 'what the battery gives',
};

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
    `${per(median)} (${per(low)} to ${per(high)})`,
    measures.flow(point.flow.median, store),
    `${number.format(tens(point.rpm))}\u00a0rpm`,
    `trim ${measures.show('angle', point.trimDeg)}`,
    regimeText(point.regime),
  ];
  const held = point.held ? '' : '; this engine cannot hold it';
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
    `Least ${store} per distance: ${measures.perDistance(bestDisplacement.perMetre.median, store)} at ${speed(bestDisplacement.speed)}.`,
  ];
  if (bestPlaning) {
    const use = measures.perDistance(bestPlaning.perMetre.median, store);
    facts.push(`Least while planing: ${use} at ${speed(bestPlaning.speed)}.`);
  }
  facts.push(humpFact(curve, measures));
  const band = measures.band('speed', topSpeed);
  facts.push(
    topSpeed.reached
      ? `Top speed ${speed(topSpeed.median)} (${band}), where it meets ${LIMITS[topSpeed.limit]}.`
      : `Once over the hump it would hold up to ${speed(topSpeed.median)} (${band}).`,
  );
  return facts;
}

/** Thrust over drag from which the trade calls the hump crossed with something to spare (shape of `Curve.humpMargin`). */
const THIN = 1.05;

function humpFact({ planingSpeed, humpSpeed, humpMargin, stuckSpeed }: Curve, measures: Measures): string {
  const at = measures.show('speed', humpSpeed);
  if (stuckSpeed !== undefined) {
    return `The engine does not lift this load over the hump at ${at}: the boat stays at ${measures.show('speed', stuckSpeed)}.`;
  }
  if (planingSpeed === undefined) return 'With this load the boat does not plane.';
  const planes = `planing from ${measures.show('speed', planingSpeed)}`;
  if (humpMargin < THIN) return `The hump at ${at} is only just crossed, ${planes}.`;
  return `The hump at ${at} is crossed with ${measures.show('share', humpMargin - 1)} more thrust than it takes, ${planes}.`;
}
