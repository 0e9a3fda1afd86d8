import type { CurvePoint } from '../../core/curve/shapes.ts';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { Trials } from '../../core/trials/shapes.ts';
import { bandPath, type Point, smoothPath } from '../curve-plot/lines.ts';
import type { Tick } from '../curve-plot/picture.ts';
import { roundTicks } from '../curve-plot/round-ticks.ts';
import { linear, roundUp } from '../curve-plot/scale.ts';
import type { BeforeAfter, Shown } from './fit-curves.ts';
import { balanceOf } from './texts.ts';

/** A run on the plot. */
export interface RunMark {
  /** As the table counts it, from 1. */
  readonly number: number;
  readonly speed: number;
  readonly flow: number;
  /** At the load shown, at another, or not counting. */
  readonly kind: 'near' | 'far' | 'aside';
}

/** Loads within this share of each other are drawn as one. */
const SAME_LOAD = 0.08;

/** Runs with consumption made with the setup shown. */
export function runMarks(trials: Trials, fit: Fit | undefined, { setup, load }: Shown): readonly RunMark[] {
  const { allUpMass } = balanceOf(trials, setup, load);
  return trials.runs.flatMap((run, i): RunMark[] => {
    const found = fit?.runs.find(({ id, kind }) => kind === 'run' && id === run.id);
    if (run.setup !== setup || !found?.consumed) return [];
    const near = Math.abs(found.mass - allUpMass) <= SAME_LOAD * allUpMass;
    const kind = found.setAside ? 'aside' : near ? 'near' : 'far';
    return [{ number: i + 1, speed: found.speed, flow: found.consumed.measured, kind }];
  });
}

export interface BandPicture {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  readonly box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  readonly before: { readonly band: string; readonly line: string };
  readonly after: { readonly band: string; readonly line: string } | undefined;
  readonly marks: readonly (RunMark & { readonly x: number; readonly y: number })[];
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
}

export interface BandSize {
  readonly width: number;
  readonly fontSize: number;
  /** SI in one shown unit. */
  readonly speedUnit: number;
  readonly flowUnit: number;
}

/** Lays out both bands and the runs, up to a little past what the boat holds or the fastest run. */
export function bandPicture({ before, after }: BeforeAfter, marks: readonly RunMark[], size: BandSize): BandPicture {
  const { width, fontSize, speedUnit, flowUnit } = size;
  const font = Math.min(Math.max(fontSize * 0.8, 11.5), 26);
  const height = Math.max(Math.min(width * 0.56, 400), 19 * font);
  const box = { left: font * 3.2, top: font * 2, right: width - 8, bottom: height - font * 2 };
  const held = [before, ...(after ? [after] : [])].flatMap(({ points }) => points.filter((point) => point.held));
  const fastest = Math.max(...held.map(({ speed }) => speed), ...marks.map(({ speed }) => speed), 1) * 1.04;
  const seen = ({ speed }: CurvePoint) => speed <= fastest;
  const most = Math.max(...held.map(({ flow }) => flow.high), ...marks.map(({ flow }) => flow));
  const top = roundUp(most / flowUnit) * flowUnit;
  const x = linear([0, fastest], [box.left, box.right]);
  const y = linear([0, top], [box.bottom, box.top]);
  const lines = (points: readonly CurvePoint[]) => {
    const drawn = points.filter(seen);
    const place = (of: (point: CurvePoint) => number) =>
      drawn.map((point): Point => [x(point.speed), Math.max(y(of(point)), box.top)]);
    return {
      band: bandPath(
        place(({ flow }) => flow.low),
        place(({ flow }) => flow.high),
      ),
      line: smoothPath(place(({ flow }) => flow.median)),
    };
  };
  return {
    width,
    height,
    font,
    box,
    before: lines(before.points.filter((point) => point.held)),
    after: after && lines(after.points.filter((point) => point.held)),
    marks: marks.map((mark) => ({ ...mark, x: x(mark.speed), y: y(mark.flow) })),
    xTicks: roundTicks([0, fastest / speedUnit], (box.right - box.left) / 56).map((value) => ({
      value,
      at: x(value * speedUnit),
    })),
    yTicks: roundTicks([0, top / flowUnit], Math.max((box.bottom - box.top) / 34, 3)).map((value) => ({
      value,
      at: y(value * flowUnit),
    })),
  };
}
