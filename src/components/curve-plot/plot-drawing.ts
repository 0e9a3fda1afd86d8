import { nothing, svg, type TemplateResult } from 'lit';
import type { Curve } from '../../core/curve/shapes.ts';
import { textWidth } from '../fuel-bar/labels.ts';
import { smoothPath } from './lines.ts';
import { type PlotMode, type PlotPicture, spot, useOf } from './picture.ts';
import { platePlace } from './plate-place.ts';
import { type Mark, markLabels } from './plot-labels.ts';
import { readAt } from './read-at.ts';
import { linear, roundUp } from './scale.ts';

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
  number(value: number): string;
}

/** Line height of the names in the foot of the plot, in letters. */
export const MARK_ROW = 1.35;

const REGIME_NAMES = { displacement: 'displacement', hump: 'hump', planing: 'planing' } as const;

export function plotDrawing(drawn: Drawn): TemplateResult {
  const { picture, width, height, mode, curve } = drawn;
  const { box } = picture;
  const inner = { width: Math.max(box.right - box.left, 1), height: Math.max(picture.zero - box.top, 1) };
  return svg`<svg viewBox="0 0 ${width} ${height}" height=${height} role="img" aria-labelledby="title desc">
    <title id="title">${drawn.title}</title>
    <desc id="desc">${drawn.description}</desc>
    <g aria-hidden="true">
      ${picture.zones.map(
        ({ regime, from, to }) =>
          svg`<path class="zone ${regime}" d="M${from} ${box.top}H${to}V${box.bottom}H${from}Z" />`,
      )}
      ${axes(drawn)}
      <svg
        x=${box.left}
        y=${box.top}
        width=${inner.width}
        height=${inner.height}
        viewBox="${box.left} ${box.top} ${inner.width} ${inner.height}"
        overflow="hidden"
      >
        ${picture.bands.map(({ held, path }) => svg`<path class="band ${held ? '' : 'beyond'}" d=${path} />`)}
        ${picture.lines.map(({ held, path }) => svg`<path class="line ${held ? '' : 'beyond'}" d=${path} />`)}
      </svg>
      ${zoneNames(drawn)}
      ${plannedLine(drawn)}
      ${marksDrawn(drawn)}
      ${plannedDrawn(drawn)}
      ${readingDrawn(curve, mode, picture, drawn.reading)}
    </g>
  </svg>` as TemplateResult;
}

function axes({ picture, font, speedUnit, useUnit, number }: Drawn) {
  const { box } = picture;
  const lastX = picture.xTicks.at(-1);
  return svg`
    ${picture.yTicks.map(
      ({ at, value }) => svg`<path class="grid" d="M${box.left} ${at}H${box.right}" /><text
        class="scale end" font-size=${font} x=${box.left - 6} y=${at + font * 0.35}>${number(value)}</text>`,
    )}
    <text class="scale start" font-size=${font} x="0" y=${font * 0.9}>${useUnit}</text>
    <path class="axis" d="M${box.left} ${box.bottom}H${box.right}" />
    ${picture.xTicks.map(
      (tick) => svg`<path class="axis" d="M${tick.at} ${box.bottom}v5" /><text
        class="scale" font-size=${font} x=${Math.min(tick.at, box.right - (tick === lastX ? font : 0))}
        y=${box.bottom + 8 + font}>${number(tick.value)}${tick === lastX ? `\u00a0${speedUnit}` : ''}</text>`,
    )}`;
}

function zoneNames({ picture, font }: Drawn) {
  return picture.zones.map(({ regime, from, to }) => {
    const name = REGIME_NAMES[regime];
    return textWidth(name, font) + 6 <= to - from
      ? svg`<text class="zone-name" font-size=${font} x=${(from + to) / 2} y=${picture.box.top + font + 5}>${name}</text>`
      : nothing;
  });
}

function marksDrawn({ curve, mode, picture, marks, font }: Drawn) {
  const { box, zero } = picture;
  const rows = Math.max(Math.floor((box.bottom - zero) / (font * MARK_ROW)), 1);
  const labels = markLabels(marks, picture, font, rows);
  return marks.map(({ kind, speed }, i) => {
    const at = spot(curve, mode, picture, speed);
    if (!at || speed > picture.fastest) return nothing;
    const label = labels.find(({ key }) => key === String(i));
    const row = rows - 1 - (label?.row ?? rows - 1);
    const base = zero + (row + 1) * font * MARK_ROW - font * 0.2;
    const [x, y] = [at[0], Math.max(at[1], box.top)];
    const best = kind === 'best';
    return svg`
      <path class="mark ${kind}" d="M${x} ${best ? y : box.top}V${label ? base - font : zero}" />
      ${best ? svg`<circle class="best" cx=${x} cy=${y} r="4.5" />` : nothing}
      ${
        label
          ? svg`<text class="mark-name ${kind}" font-size=${font} x=${label.left + label.width / 2} y=${base}>${label.text}</text>`
          : nothing
      }`;
  });
}

function plannedLine({ curve, mode, picture, planned }: Drawn) {
  const at = planned && spot(curve, mode, picture, planned.speed);
  return at
    ? svg`<path class="planned-line" d="M${at[0]} ${Math.max(at[1], picture.box.top)}V${picture.zero}" />`
    : nothing;
}

function plannedDrawn({ curve, mode, picture, planned, font }: Drawn) {
  const at = planned && spot(curve, mode, picture, planned.speed);
  if (!planned || !at) return nothing;
  const { box } = picture;
  const [x, y] = [at[0], Math.min(Math.max(at[1], box.top), picture.zero)];
  const taken = (px: number): readonly [number, number] => {
    const use = useOf(readAt(curve, picture.speedAt(px))!, mode);
    return [picture.y(use.high), picture.y(use.low)];
  };
  const height = font * 1.7;
  const clear = { ...box, top: box.top + font * 1.6, bottom: picture.zero };
  const plate = platePlace({ x, y }, { width: textWidth(planned.text, font) + 16, height }, clear, taken);
  const middle = (plate.top + plate.bottom) / 2;
  return svg`
    <path class="planned-line" d="M${x} ${middle}V${y}" />
    <rect class="plate" x=${plate.left} y=${plate.top} width=${plate.right - plate.left} height=${height} rx=${height / 2} />
    <text class="on-plate" font-size=${font} x=${(plate.left + plate.right) / 2} y=${middle + font * 0.35}>${planned.text}</text>
    <circle class="planned" cx=${x} cy=${y} r="7" />`;
}

function readingDrawn(curve: Curve, mode: PlotMode, picture: PlotPicture, reading: number | undefined) {
  const at = reading === undefined ? undefined : spot(curve, mode, picture, reading);
  if (!at) return nothing;
  const { box } = picture;
  return svg`<path class="reading" d="M${at[0]} ${box.top}V${box.bottom}" />
    <circle class="reading" cx=${at[0]} cy=${Math.min(Math.max(at[1], box.top), picture.zero)} r="5" />`;
}

/** Trim against the same speeds, as a strip under the plot. */
export function trimDrawing(
  { curve, picture, width, font, number }: Drawn,
  title: string,
  height: number,
): TemplateResult {
  const points = curve.points.filter((point) => point.speed <= picture.fastest);
  const lowest = Math.min(0, ...points.map((point) => point.trimDeg));
  const most = roundUp(Math.max(1, ...points.map((point) => point.trimDeg)));
  const y = linear([lowest < 0 ? -roundUp(-lowest) : 0, most], [height - 6, font + 4]);
  const { box } = picture;
  return svg`<svg viewBox="0 0 ${width} ${height}" height=${height} role="img" aria-labelledby="trim">
    <title id="trim">${title}</title>
    <g aria-hidden="true">
      ${[0, most].map(
        (deg) => svg`<path class="grid" d="M${box.left} ${y(deg)}H${box.right}" /><text
          class="scale end" font-size=${font} x=${box.left - 6} y=${y(deg) + font * 0.35}>${number(deg)}°</text>`,
      )}
      <path class="trim" d=${smoothPath(points.map((point) => [picture.x(point.speed), y(point.trimDeg)]))} />
    </g>
  </svg>` as TemplateResult;
}
