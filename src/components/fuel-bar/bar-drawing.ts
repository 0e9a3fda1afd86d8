import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Plan } from '../../core/trip/shapes.ts';
import { barLabels, tickLabels } from './bar-labels.ts';
import type { BarTexts } from './bar-texts.ts';
import { type BarPicture, barPicture } from './picture.ts';
import { fuelBarWords as words } from './words.ts';

/** Letters follow the page's, within what the bar can carry, px. */
const LETTERS = { smallest: 12, largest: 28, share: 0.875, small: 0.86 };

/** The bar as SVG: scale on top, then the bar, then the trip as a line with its turn and home, then the labels. */
export function barDrawing(
  plan: Plan,
  texts: BarTexts,
  size: { width: number; fontSize: number },
  unusable: number | undefined,
): TemplateResult {
  const { width } = size;
  const font = Math.min(Math.max(size.fontSize * LETTERS.share, LETTERS.smallest), LETTERS.largest);
  const small = font * LETTERS.small;
  const deep = Math.round(Math.max(font * 3.7, Math.min(width * 0.055, font * 5)));
  const picture = barPicture(plan, { width, height: deep, fontSize: small }, unusable);
  const labels = barLabels(picture, texts, width, font);
  const top = small * 1.2 + 8;
  const line = deep + 16;
  const row = font * 1.45;
  const rows = 1 + Math.max(1, ...labels.under.map((label) => label.row));
  const height = Math.ceil(top + line + 14 + rows * row);
  const said = texts.legend.map(({ term, figure, band }) => `${term} ${figure}${band ? ` (${band})` : ''}`).join(', ');
  return html`<svg
    viewBox="0 0 ${width} ${height}"
    height=${height}
    role="img"
    aria-labelledby="title desc"
  >
    <title id="title">${words.title(plan.store)}</title>
    <desc id="desc">${said}.</desc>
    <g transform="translate(0 ${top})" aria-hidden="true">
      ${texts.ticks.map(({ value }) => svg`<path class="tick" d="M${picture.at(value)} -5v4" />`)}
      ${tickLabels(picture, texts, width, small).map(
        ({ text, left, width: wide }) =>
          svg`<text class="scale" font-size=${small} x=${left + wide / 2} y="-8">${text}</text>`,
      )}
      <path class="glass" d=${picture.glass} />
      ${picture.pieces.map(({ kind, path }) => svg`<path class=${kind} d=${path} />`)}
      <path class="touched" d=${picture.touched} />
      <path class="hatch" d=${picture.hatches.reserve} />
      <path class="hatch pale" d=${picture.hatches.touched} />
      <path class="hatch spill" d=${picture.hatches.short} />
      ${picture.tears.map(({ gap, edges }) => svg`<path class="tear" d=${gap} /><path class="edge" d=${edges} />`)}
      ${numbers(picture, small, deep * 0.4)}
      ${
        labels.onReserve
          ? svg`<rect
                class="plate"
                x=${labels.onReserve.left}
                y=${deep * 0.4 - font * 0.72}
                width=${labels.onReserve.width}
                height=${font * 1.44}
                rx=${font * 0.72}
              /><text
                font-size=${font}
                x=${labels.onReserve.left + labels.onReserve.width / 2}
                y=${deep * 0.4 + font * 0.35}
              >${labels.onReserve.text}</text>`
          : nothing
      }
      ${level(picture, deep - 14, line)}
      ${labels.under.map(
        ({ key, text, left, width: wide, row: at }) =>
          svg`<text
            class=${key}
            font-size=${font}
            x=${left + wide / 2}
            y=${line + 14 + font + at * row}
          >${text}</text>`,
      )}
    </g>
  </svg>`;
}

function numbers({ pieces, touched, spans }: BarPicture, fontSize: number, middle: number) {
  const reserveFrom = spans.find((span) => span.kind === 'reserve')?.from ?? Infinity;
  return pieces.map(({ kind, legs, numbered, from, to }) =>
    numbered && legs && kind !== 'short'
      ? svg`<text
          class="number on-${touched && (from + to) / 2 > reserveFrom ? 'touched' : kind}"
          font-size=${fontSize}
          x=${(from + to) / 2}
          y=${middle + fontSize * 0.35}
        >${legs}</text>`
      : nothing,
  );
}

/** The trip as a line under the bar with its start, turn and home; the level at home and its band across the bar. */
function level({ spans, band, home, turn }: BarPicture, y: number, line: number) {
  const arms = band.open ? 'm-6 -5l6 5l-6 5' : 'm0 -7v14';
  return svg`
    <path class="halo" d="M${band.from} ${y}H${band.to}" />
    <path class="band" d="M${band.from} ${y - 7}v14m0 -7H${band.to}${arms}" />
    <path class="level" d="M${home} -3V${line}" />
    <circle class="sign" cx=${home} cy=${y} r="5" />
    ${spans.map(({ kind, from, to }) =>
      kind === 'reserve' ? nothing : svg`<path class="trip ${kind}-trip" d="M${from} ${line}H${to}" />`,
    )}
    <circle class="sign" cx=${spans[0]?.from ?? 0} cy=${line} r="4.5" />
    ${turn === undefined ? nothing : svg`<path class="sign" d="M${turn - 1} ${line + 5}v-16h1.5l9 4.5l-9 4.5v7Z" />`}
    <path class="sign" d="M${home} ${line - 9}l10 8.5h-3v6.5h-14v-6.5h-3Z" />`;
}
