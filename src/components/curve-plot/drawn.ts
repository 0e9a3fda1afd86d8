import type { Curve } from '../../core/curve/shapes.ts';
import { textWidth } from '../fuel-bar/labels.ts';
import type { Measures } from '../units/measures.ts';
import { type PlotMode, type PlotPicture, plotPicture } from './picture.ts';
import { type Mark, marksOf, type SpeedLimit } from './plot-labels.ts';
import { curveFacts, useUnit } from './plot-texts.ts';
import { readAt } from './read-at.ts';
import { curveWords as words } from './words.ts';

/** All that the drawing of a plot is made of. */
export interface Drawn {
  readonly curve: Curve;
  readonly mode: PlotMode;
  readonly picture: PlotPicture;
  readonly height: number;
  readonly width: number;
  readonly font: number;
  readonly speedUnit: string;
  readonly useUnit: string;
  readonly marks: readonly Mark[];
  readonly planned: { readonly speed: number; readonly text: string } | undefined;
  /** Speed being read off. */
  readonly reading: number | undefined;
  readonly title: string;
  readonly description: string;
  readonly trimTitle: string;
  number(value: number): string;
}

export interface PlotAsked {
  readonly mode: PlotMode;
  readonly plannedSpeed: number | undefined;
  readonly limits: readonly SpeedLimit[];
  readonly reading: number | undefined;
  /** px, of the element and of its letters. */
  readonly width: number;
  readonly fontSize: number;
}

/** Line height of the names in the foot of the plot, in letters. */
export const MARK_ROW = 1.35;
/** Letters of the plot, px and as a share of the page's. */
const LETTERS = { smallest: 11.5, largest: 26, share: 0.8 };
/** Height over width; at least this many letters, at most this many px. */
const TALL = { share: 0.58, letters: 20.6, most: 420 };
/** Letters of width from which all names fit one row. */
const WIDE = 36;

export function layOut(curve: Curve, measures: Measures, asked: PlotAsked): Drawn {
  const { mode, plannedSpeed, limits, width } = asked;
  const { store } = curve;
  const font = Math.min(Math.max(asked.fontSize * LETTERS.share, LETTERS.smallest), LETTERS.largest);
  const unit = useUnit(curve, mode, measures);
  const height = Math.max(Math.min(width * TALL.share, TALL.most), TALL.letters * font);
  const format = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 3 });
  const marks = marksOf(curve, limits, measures);
  const rows = width < WIDE * font || marks.length > 4 ? 2 : 1;
  const left = textWidth('0,000', font) + 6;
  const size = { width, height, left, bottom: font * 2, top: font * 2, foot: rows * font * MARK_ROW + 4 };
  const marked = [plannedSpeed ?? 0, ...limits.map((limit) => limit.speed)];
  return {
    curve,
    mode,
    picture: plotPicture(curve, mode, size, { speed: measures.toSi('speed', 1), use: unit.si }, marked),
    width,
    height,
    font,
    speedUnit: measures.unit('speed'),
    useUnit: unit.sign,
    marks,
    planned: plannedText(curve, measures, asked),
    reading: asked.reading,
    title: words.title(mode, words.store[store]),
    description: curveFacts(curve, measures).join(' '),
    trimTitle: trimTitle(curve, measures),
    number: (value) => format.format(value),
  };
}

function plannedText(curve: Curve, measures: Measures, { mode, plannedSpeed }: PlotAsked): Drawn['planned'] {
  const point = plannedSpeed === undefined ? undefined : readAt(curve, plannedSpeed);
  if (!point) return undefined;
  const use =
    mode === 'distance'
      ? measures.perDistance(point.perMetre.median, curve.store)
      : measures.flow(point.flow.median, curve.store);
  return { speed: point.speed, text: `${measures.show('speed', point.speed)}, ${use}` };
}

function trimTitle({ points }: Curve, measures: Measures): string {
  const trims = points.map((point) => point.trimDeg);
  return words.trimTitle(measures.show('angle', Math.min(...trims)), measures.show('angle', Math.max(...trims)));
}
