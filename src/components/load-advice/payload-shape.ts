import type { PayloadPoint, PayloadStretch } from '../../core/trip/payload-curve.ts';
import { roundTicks } from '../curve-plot/round-ticks.ts';
import { linear, roundUp } from '../curve-plot/scale.ts';

export interface PlotBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PayloadPicture {
  readonly box: PlotBox;
  readonly zero: number;
  readonly line: string;
  /** Under the line down to nought, one for each stretch. */
  readonly areas: readonly {
    readonly stretch: PayloadStretch;
    readonly path: string;
    readonly from: number;
    readonly to: number;
  }[];
  readonly xTicks: readonly { readonly at: number; readonly value: number }[];
  readonly yTicks: readonly { readonly at: number; readonly value: number }[];
  x(at: number): number;
  y(extra: number): number;
}

/** SI in one shown unit. */
export interface PayloadUnits {
  readonly at: number;
  readonly mass: number;
}

/** Lowest figure drawn, share of the highest: what must stay ashore is told, not drawn to the end. */
const LOW = 0.45;
const PX_PER_TICK = { x: 62, y: 34 };

/** Lays out safe payload against length or speed. Points have a payload that is known. */
export function payloadPicture(
  points: readonly PayloadPoint[],
  stretches: readonly PayloadStretch[],
  box: PlotBox,
  units: PayloadUnits,
): PayloadPicture {
  const known = points.map(({ at, payload }) => ({ at, extra: payload.extra ?? 0 }));
  const first = known[0]?.at ?? 0;
  const last = known.at(-1)?.at ?? 1;
  const most = roundUp(Math.max(20 * units.mass, ...known.map(({ extra }) => extra)) / units.mass) * units.mass;
  const lowest = Math.min(0, ...known.map(({ extra }) => extra));
  const least = Math.max(lowest, -LOW * most);
  const x = linear([first, last], [box.left, box.right]);
  const y = linear([least, most], [box.bottom, box.top]);
  const spot = (at: number, extra: number) => `${x(at).toFixed(1)} ${y(Math.max(extra, least)).toFixed(1)}`;
  const zero = y(0);
  const between = (at: number): number => {
    const next = Math.max(
      1,
      known.findIndex((point) => point.at >= at),
    );
    const a = known[next - 1]!;
    const b = known[next] ?? a;
    return b.at === a.at ? a.extra : a.extra + ((b.extra - a.extra) * (at - a.at)) / (b.at - a.at);
  };
  const areas = stretches.map((stretch) => {
    const inside = known.filter(({ at }) => at > stretch.from && at < stretch.to);
    const along = [
      { at: stretch.from, extra: between(stretch.from) },
      ...inside,
      { at: stretch.to, extra: between(stretch.to) },
    ];
    const path = `M${x(stretch.from).toFixed(1)} ${zero.toFixed(1)}L${along
      .map(({ at, extra }) => spot(at, extra))
      .join('L')}L${x(stretch.to).toFixed(1)} ${zero.toFixed(1)}Z`;
    return { stretch, path, from: x(stretch.from), to: x(stretch.to) };
  });
  return {
    box,
    zero,
    line: `M${known.map(({ at, extra }) => spot(at, extra)).join('L')}`,
    areas,
    xTicks: roundTicks([first / units.at, last / units.at], (box.right - box.left) / PX_PER_TICK.x).map((value) => ({
      value,
      at: x(value * units.at),
    })),
    yTicks: roundTicks([least / units.mass, most / units.mass], (box.bottom - box.top) / PX_PER_TICK.y).map(
      (value) => ({ value, at: y(value * units.mass) }),
    ),
    x,
    y: (extra) => y(Math.max(extra, least)),
  };
}
