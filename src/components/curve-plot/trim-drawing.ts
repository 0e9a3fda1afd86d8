import { html, svg, type TemplateResult } from 'lit';
import type { Drawn } from './drawn.ts';
import { smoothPath } from './lines.ts';
import { linear, roundUp } from './scale.ts';

/** Height of the strip, in letters. */
const TALL = 5.5;

/** Trim against the same speeds, as a strip under the plot. */
export function trimDrawing({ curve, picture, width, font, number, trimTitle }: Drawn): TemplateResult {
  const height = font * TALL;
  const points = curve.points.filter((point) => point.speed <= picture.fastest);
  const lowest = Math.min(0, ...points.map((point) => point.trimDeg));
  const most = roundUp(Math.max(1, ...points.map((point) => point.trimDeg)));
  const y = linear([lowest < 0 ? -roundUp(-lowest) : 0, most], [height - 6, font + 4]);
  const { box } = picture;
  return html`<svg viewBox="0 0 ${width} ${height}" height=${height} role="img" aria-labelledby="trim">
    <title id="trim">${trimTitle}</title>
    <g aria-hidden="true">
      ${[0, most].map(
        (deg) => svg`<path class="grid" d="M${box.left} ${y(deg)}H${box.right}" /><text
          class="scale end" font-size=${font} x=${box.left - 6} y=${y(deg) + font * 0.35}>${number(deg)}°</text>`,
      )}
      <path class="trim" d=${smoothPath(points.map((point) => [picture.x(point.speed), y(point.trimDeg)]))} />
    </g>
  </svg>`;
}
