import { nothing, svg } from 'lit';
import { textWidth } from '../fuel-bar/labels.ts';
import { type Drawn, MARK_ROW } from './drawn.ts';
import { spot, useOf } from './picture.ts';
import { platePlace } from './plate-place.ts';
import { markLabels } from './plot-labels.ts';
import { readAt } from './read-at.ts';

/** Marked speeds, each named in the foot of the plot where there is room. */
export function marksDrawn({ curve, mode, picture, marks, font }: Drawn) {
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

export function plannedLine({ curve, mode, picture, planned }: Drawn) {
  const at = planned && spot(curve, mode, picture, planned.speed);
  return at
    ? svg`<path class="planned-line" d="M${at[0]} ${Math.max(at[1], picture.box.top)}V${picture.zero}" />`
    : nothing;
}

/** The planned speed on the curve, with its figure beside it. */
export function plannedDrawn({ curve, mode, picture, planned, font }: Drawn) {
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
