import { html, nothing, svg, type TemplateResult } from 'lit';
import { textWidth } from '../fuel-bar/labels.ts';
import type { Drawn } from './drawn.ts';
import { marksDrawn, plannedDrawn, plannedLine } from './marks-drawing.ts';
import { spot } from './picture.ts';
import { curveWords as words } from './words.ts';

/** The plot as SVG. */
export function plotDrawing(drawn: Drawn): TemplateResult {
  const { picture, width, height } = drawn;
  const { box } = picture;
  const inner = { width: Math.max(box.right - box.left, 1), height: Math.max(picture.zero - box.top, 1) };
  return html`<svg viewBox="0 0 ${width} ${height}" height=${height} role="img" aria-labelledby="title desc">
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
      ${readingDrawn(drawn)}
    </g>
  </svg>`;
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
    const name = words.zones[regime];
    return textWidth(name, font) + 6 <= to - from
      ? svg`<text class="zone-name" font-size=${font} x=${(from + to) / 2} y=${picture.box.top + font + 5}>${name}</text>`
      : nothing;
  });
}

function readingDrawn({ curve, mode, picture, reading }: Drawn) {
  const at = reading === undefined ? undefined : spot(curve, mode, picture, reading);
  if (!at) return nothing;
  const { box } = picture;
  return svg`<path class="reading" d="M${at[0]} ${box.top}V${box.bottom}" />
    <circle class="reading" cx=${at[0]} cy=${Math.min(Math.max(at[1], box.top), picture.zero)} r="5" />`;
}
