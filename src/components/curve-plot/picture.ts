import type { Band, Curve, CurvePoint, Regime } from '../../core/curve/shapes.ts';
import { bandPath, type Point, runs, smoothPath } from './lines.ts';
import { readAt } from './read-at.ts';
import { roundTicks } from './round-ticks.ts';
import { linear, roundUp } from './scale.ts';

/** Use over distance made through the water, or over time. */
export type PlotMode = 'distance' | 'hour';

export interface PlotSize {
  readonly width: number;
  readonly height: number;
  /** px of the plot kept clear for figures. */
  readonly left: number;
  readonly bottom: number;
  readonly top: number;
  /** Strip between nought and the axis, for the names of marked speeds. */
  readonly foot: number;
}

/** SI in one shown unit, for speed and for use in the mode drawn. */
export interface PlotUnits {
  readonly speed: number;
  readonly use: number;
}

export interface Tick {
  readonly at: number;
  /** In the shown unit. */
  readonly value: number;
}

export interface PlotPicture {
  readonly box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  /** Where use is nought. */
  readonly zero: number;
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  /** Held and not held, the band first. */
  readonly bands: readonly { readonly held: boolean; readonly path: string }[];
  readonly lines: readonly { readonly held: boolean; readonly path: string }[];
  readonly zones: readonly { readonly regime: Regime; readonly from: number; readonly to: number }[];
  readonly fastest: number;
  x(speed: number): number;
  y(use: number): number;
  /** Speed under a pointer, m/s, inside the curve. */
  speedAt(px: number): number;
}

const PX_PER_TICK = { x: 56, y: 34 };

export function useOf(point: CurvePoint, mode: PlotMode): Band {
  return mode === 'distance' ? point.perMetre : point.flow;
}

/** Lays out use against speed through the water. `marked` are speeds that must be in the picture, m/s. */
export function plotPicture(
  curve: Curve,
  mode: PlotMode,
  size: PlotSize,
  units: PlotUnits,
  marked: readonly number[],
): PlotPicture {
  const { points } = curve;
  const slowest = points[0]?.speed ?? 0;
  const last = points.at(-1)?.speed ?? 1;
  const fastest = Math.min(last, Math.max(curve.topSpeed.high, ...marked) * 1.08);
  const seen = points.filter((point) => point.speed <= fastest);
  const box = { left: size.left, top: size.top, right: size.width - 6, bottom: size.height - size.bottom };
  const most = roundUp(tallest(curve, seen, mode) / units.use) * units.use;
  const x = linear([0, fastest], [box.left, box.right]);
  const zero = box.bottom - size.foot;
  const y = linear([0, most], [zero, box.top]);

  const place =
    (of: (band: Band) => number) =>
    (point: CurvePoint): Point => [x(point.speed), y(of(useOf(point, mode)))];
  const [low, median, high] = [place((b) => b.low), place((b) => b.median), place((b) => b.high)];
  // One point past the edge, so that lines leave the picture instead of ending short of it.
  const drawn = withEnds(curve, points.slice(0, seen.length + 1));
  const pieces = runs(drawn, (from, to) => from.held && to.held);
  return {
    box,
    zero,
    xTicks: roundTicks([0, fastest / units.speed], (box.right - box.left) / PX_PER_TICK.x).map((value) => ({
      value,
      at: x(value * units.speed),
    })),
    yTicks: roundTicks([0, most / units.use], Math.max((zero - box.top) / PX_PER_TICK.y, 3)).map((value) => ({
      value,
      at: y(value * units.use),
    })),
    bands: pieces.map(({ kind, items }) => ({ held: kind, path: bandPath(items.map(low), items.map(high)) })),
    lines: pieces.map(({ kind, items }) => ({ held: kind, path: smoothPath(items.map(median)) })),
    zones: zonesOf(curve, fastest).map(({ regime, from, to }) => ({ regime, from: x(from), to: x(to) })),
    fastest,
    x,
    y,
    speedAt: (px) => {
      const share = (px - box.left) / (box.right - box.left);
      return Math.min(Math.max(share * fastest, slowest), fastest);
    },
  };
}

/** What the scale must hold: all speeds held but drifting, where use per mile has no end; the rest if not far above. */
function tallest(curve: Curve, seen: readonly CurvePoint[], mode: PlotMode): number {
  const drifting = curve.bestDisplacement.speed * 0.6;
  const top = (points: readonly CurvePoint[]) =>
    Math.max(0, ...points.map((point) => useOf(point, mode).high).filter(Number.isFinite));
  const under = seen.filter((point) => point.speed >= drifting);
  const held = top(under.filter((point) => point.held));
  const all = top(under);
  return held > 0 ? Math.max(held, Math.min(all, held * 1.5)) : all;
}

/** Points added where the drive gives up, so that lines end there and not at the nearest point. */
function withEnds(curve: Curve, points: readonly CurvePoint[]): readonly CurvePoint[] {
  const last = points.at(-1)?.speed ?? 0;
  const ends = [curve.topSpeed.median, curve.stuckSpeed].filter(
    (speed): speed is number =>
      speed !== undefined && speed < last && points.every((point) => Math.abs(point.speed - speed) > 1e-6),
  );
  const added = ends.flatMap((speed) => {
    const point = readAt(curve, speed);
    return point ? [{ ...point, held: true }] : [];
  });
  return [...points, ...added].toSorted((a, b) => a.speed - b.speed);
}

/** Where the boat is in its wave, on the hump and planing, m/s. */
function zonesOf(curve: Curve, fastest: number): readonly { regime: Regime; from: number; to: number }[] {
  const seen = curve.points.filter((point) => point.speed <= fastest);
  return runs(seen, (_, to) => to.regime).map(({ kind, items }, i, all) => ({
    regime: kind,
    from: i === 0 ? 0 : items[0]!.speed,
    to: i === all.length - 1 ? fastest : items.at(-1)!.speed,
  }));
}

/** The point to read off: where the curve is at this speed. */
export function spot(curve: Curve, mode: PlotMode, picture: PlotPicture, speed: number): Point | undefined {
  const point = readAt(curve, speed);
  return point && [picture.x(point.speed), picture.y(useOf(point, mode).median)];
}
