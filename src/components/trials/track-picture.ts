import { STEP } from '../../core/track/over-ground.ts';
import type { Tick } from '../curve-plot/picture.ts';
import { roundTicks } from '../curve-plot/round-ticks.ts';
import { linear, roundUp, type Span } from '../curve-plot/scale.ts';
import { clockOf, type OpenTrack } from './track-work.ts';

export interface TrackPicture {
  readonly box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  /** One path for each uninterrupted piece. */
  readonly lines: readonly string[];
  readonly yTicks: readonly Tick[];
  readonly xTicks: readonly { readonly at: number; readonly text: string }[];
  x(time: number): number;
  y(speed: number): number;
  /** Time under a place, inside what is shown. */
  timeAt(px: number): number;
}

export interface TrackSize {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  /** m/s in one shown unit. */
  readonly speedUnit: number;
}

/** Spacings of clock times that read well, s. */
const STEPS = [10, 30, 60, 120, 300, 600, 1200, 1800, 3600, 7200, 14_400];

/** The whole time of a track, s since 1970. */
export function spanOf({ track }: OpenTrack): Span {
  return [track.points[0]?.time ?? 0, track.points.at(-1)?.time ?? 1];
}

/** Lays out speed over ground against time within `view`. */
export function trackPicture(open: OpenTrack, view: Span, { width, height, font, speedUnit }: TrackSize): TrackPicture {
  const box = { left: font * 2.6, top: font * 1.6, right: width - 10, bottom: height - font * 2 };
  const x = linear(view, [box.left, box.right]);
  const { pieces } = open.measured;
  let fastest = 0.5;
  for (const { speed } of pieces) for (const each of speed) fastest = Math.max(fastest, each);
  const top = roundUp(fastest / speedUnit) * speedUnit;
  const y = linear([0, top], [box.bottom, box.top]);
  const perPx = (view[1] - view[0]) / Math.max(box.right - box.left, 1);
  const step = STEPS.find((each) => each >= perPx * font * 6) ?? STEPS.at(-1)!;
  const first = Math.ceil(view[0] / step) * step;
  const xTicks: { at: number; text: string }[] = [];
  for (let time = first; time <= view[1]; time += step) {
    xTicks.push({ at: x(time), text: step < 60 ? clockOf(time) : clockOf(time).slice(0, 5) });
  }
  return {
    box,
    lines: pieces.map(({ start, speed }) => linePath(start, speed, view, perPx, x, y)),
    yTicks: roundTicks([0, top / speedUnit], Math.max((box.bottom - box.top) / 34, 3)).map((value) => ({
      value,
      at: y(value * speedUnit),
    })),
    xTicks,
    x,
    y,
    timeAt: (px) => {
      const share = (px - box.left) / (box.right - box.left);
      return view[0] + Math.min(Math.max(share, 0), 1) * (view[1] - view[0]);
    },
  };
}

/** Where many samples fall on one pixel, its least and its greatest are drawn. */
function linePath(
  start: number,
  speed: Float64Array,
  view: Span,
  perPx: number,
  x: (time: number) => number,
  y: (speed: number) => number,
): string {
  const bunch = Math.max(1, Math.floor(perPx / STEP));
  const from = Math.max(0, Math.floor((view[0] - start) / STEP) - 1);
  const to = Math.min(speed.length - 1, Math.ceil((view[1] - start) / STEP) + 1);
  const parts: string[] = [];
  const add = (index: number) => {
    const px = Math.round(x(start + index * STEP) * 10) / 10;
    parts.push(`${parts.length === 0 ? 'M' : 'L'}${px} ${Math.round(y(speed[index]!) * 10) / 10}`);
  };
  for (let at = from; at <= to; at += bunch) {
    let [least, most] = [at, at];
    for (let index = at; index < Math.min(at + bunch, to + 1); index++) {
      if (speed[index]! < speed[least]!) least = index;
      if (speed[index]! > speed[most]!) most = index;
    }
    add(Math.min(least, most));
    if (least !== most) add(Math.max(least, most));
  }
  return parts.join('');
}
