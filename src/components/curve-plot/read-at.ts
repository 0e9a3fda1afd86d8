import type { Band, Curve, CurvePoint } from '../../core/curve/shapes.ts';

/** The curve at a speed between its points, straight from one to the next; held at its ends. Undefined without points. */
export function readAt({ points }: Pick<Curve, 'points'>, speed: number): CurvePoint | undefined {
  const next = points.findIndex((point) => point.speed >= speed);
  if (next === 0) return points[0];
  if (next < 0) return points.at(-1);
  const [a, b] = [points[next - 1]!, points[next]!];
  const share = (speed - a.speed) / (b.speed - a.speed);
  // Between something and no end there is no end.
  const mix = (from: number, to: number) =>
    Number.isFinite(to - from) ? from + (to - from) * share : Math.max(from, to);
  const mixBand = (from: Band, to: Band): Band => ({
    low: mix(from.low, to.low),
    median: mix(from.median, to.median),
    high: mix(from.high, to.high),
  });
  const nearest = share < 0.5 ? a : b;
  return {
    ...nearest,
    speed,
    resistance: mix(a.resistance, b.resistance),
    power: mix(a.power, b.power),
    rpm: mix(a.rpm, b.rpm),
    throttle: mix(a.throttle, b.throttle),
    flow: mixBand(a.flow, b.flow),
    perMetre: mixBand(a.perMetre, b.perMetre),
    trimDeg: mix(a.trimDeg, b.trimDeg),
    slip: mix(a.slip, b.slip),
  };
}
