import { html, svg } from 'lit';
import type { Hull } from '../../core/craft/shapes.ts';
import type { LoadBalance } from '../../core/load/balance.ts';
import type { Measures } from '../units/measures.ts';
import { deckWords } from '../words/en-deck.ts';
import { across, along, GOOD_ACROSS, goodAlong } from './good-balance.ts';
import { n } from './piece-drawing.ts';
import type { View } from './view.ts';

/** Half the thickness of a scale's good band, px. */
const BAND = 3.5;

/** Under the pieces: the field where the centre of gravity lies well, and lines from where it is to the scales. */
export function goodField(hull: Hull, balance: LoadBalance, view: View) {
  const { top, bottom, left, right } = field(hull, view);
  const { x, y } = centreOf(hull, balance, view);
  return svg`<path
    class="ray"
    d=${`M${n(view.along + 14)} ${n(y)}H${n(x)}V${n(view.across - 12)}`}
  /><rect
    class="good-field"
    x=${n(left)}
    y=${n(top)}
    width=${n(right - left)}
    height=${n(bottom - top)}
    rx="4"
  />`;
}

/** Scales along and across the boat with their good bands and pointers, and the mark of the centre of gravity itself. */
export function balanceDrawing(hull: Hull, balance: LoadBalance, view: View, m: Measures) {
  const good = field(hull, view);
  const stern = view.point({ x: 0, y: 0 }).y;
  const fore = view.point({ x: hull.wettedLength, y: 0 }).y;
  const middle = view.width / 2;
  const half = (hull.beam / 2) * view.scale;
  const { x, y } = centreOf(hull, balance, view);
  const offAlong = tone(along(balance, hull) === 'good', ['aft', 'forward'].includes(along(balance, hull)));
  const side = across(balance, hull);
  const offAcross = tone(side === 'good' || side === 'middle', side === 'off');
  return svg`
    <g class="scales" aria-hidden="true">
      <path class="rule" d=${`M${n(view.along)} ${n(fore)}V${n(stern)}M${n(view.along - 4)} ${n(fore)}h8M${n(view.along - 4)} ${n(stern)}h8`} />
      <rect class="good" x=${n(view.along - BAND)} y=${n(good.top)} width=${2 * BAND} height=${n(good.bottom - good.top)} rx="2" />
      <path class="pointer ${offAlong}" d=${`M${n(view.along + 4)} ${n(y)}l9 -5.5v11z`} />
      <text class="reading ${offAlong}" x=${n(view.along)} y=${n(readingAt(good, y))}>
        ${m.show('share', balance.lcgShare)}
      </text>
      <path class="rule" d=${`M${n(middle - half)} ${view.across}H${n(middle + half)}M${n(middle - half)} ${view.across - 4}v8M${n(middle + half)} ${view.across - 4}v8`} />
      <rect class="good" x=${n(good.left)} y=${view.across - BAND} width=${n(good.right - good.left)} height=${2 * BAND} rx="2" />
      <path class="pointer ${offAcross}" d=${`M${n(x)} ${view.across - 4}l-5.5 -9h11z`} />
      <text class="side port" x=${n(middle - half)} y=${view.across + 14}>${deckWords.port}</text>
      <text class="side starboard" x=${n(middle + half)} y=${view.across + 14}>${deckWords.starboard}</text>
    </g>
    <g class="centre" transform=${`translate(${n(x)} ${n(y)})`} aria-hidden="true">${mark()}</g>`;
}

/** The mark of the centre of gravity, for the key. */
export function centreSign() {
  return html`<svg class="centre sign" viewBox="-9 -9 18 18" width="18" height="18" aria-hidden="true">${mark()}</svg>`;
}

function mark() {
  return svg`<circle class="disc" r="7.5" />
    <path class="quarters" d="M0 0V-7.5A7.5 7.5 0 0 1 7.5 0ZM0 0V7.5A7.5 7.5 0 0 1 -7.5 0Z" />
    <circle class="ring" r="7.5" />`;
}

/** Kept within the scales: beyond their ends the pointer says no more than "off". */
function centreOf(hull: Hull, balance: LoadBalance, view: View) {
  const half = (hull.beam / 2) * view.scale;
  const { x, y } = view.point({ x: balance.lcg, y: balance.lateral });
  const stern = view.point({ x: 0, y: 0 }).y;
  const fore = view.point({ x: hull.wettedLength, y: 0 }).y;
  return { x: within(x, view.width / 2 - half, view.width / 2 + half), y: within(y, fore - 8, stern + 8) };
}

function field(hull: Hull, view: View) {
  const { low, high } = goodAlong(hull.form);
  const side = GOOD_ACROSS.good * hull.beam;
  const { x: left, y: bottom } = view.point({ x: low * hull.wettedLength, y: -side });
  const { x: right, y: top } = view.point({ x: high * hull.wettedLength, y: side });
  return { left, right, top, bottom };
}

/** Beside the pointer, clear of it and of the good band. */
function readingAt({ top, bottom }: { top: number; bottom: number }, y: number): number {
  return y < top - 20 ? y - 12 : Math.max(bottom + 16, y + 20);
}

function tone(good: boolean, far: boolean): 'is-good' | 'is-little' | 'is-off' {
  return good ? 'is-good' : far ? 'is-off' : 'is-little';
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
