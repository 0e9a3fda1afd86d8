import { nothing, svg } from 'lit';
import type { PieceKind } from './landing.ts';
import type { Laid } from './spread.ts';

/** Half the size of each piece along and across, m. */
export const SIZES: Record<PieceKind, Pick<Laid, 'along' | 'across'>> = {
  adult: { along: 0.14, across: 0.235 },
  child: { along: 0.12, across: 0.18 },
  dog: { along: 0.24, across: 0.11 },
  gear: { along: 0.13, across: 0.19 },
  tank: { along: 0.14, across: 0.18 },
  battery: { along: 0.13, across: 0.17 },
};

/** Pieces are drawn at least this large, px per m, or their figures could not be read. */
export const LEAST_SCALE = 92;

/** A piece from above around the origin, bow up, px; `figure` is its mass without unit. */
export function pieceDrawing(kind: PieceKind, figure: string, scale: number, helm = false) {
  const k = Math.max(scale, LEAST_SCALE);
  switch (kind) {
    case 'adult':
      return svg`${figureFromAbove(k, 1, figure)}${helm ? wheel(0.24 * k, -0.11 * k) : nothing}`;
    case 'child':
      return svg`${figureFromAbove(k, 0.8, figure)}${helm ? wheel(0.2 * k, -0.1 * k) : nothing}`;
    case 'dog':
      return dog(k, figure);
    case 'gear':
      return bag(k, figure);
    case 'tank':
      return tank(k, figure);
    case 'battery':
      return battery(k, figure);
    default:
      return kind satisfies never;
  }
}

/** Shoulders and head; the figure is on the head, which is drawn larger than life for it. */
function figureFromAbove(k: number, size: number, figure: string) {
  const w = 0.47 * k * size;
  const h = 0.2 * k * size;
  const head = Math.max(12.5, 0.125 * k * size);
  return svg`
    <rect class="body" x=${n(-w / 2)} y=${n(-h / 2 + 1)} width=${n(w)} height=${n(h)} rx=${n(h / 2)} />
    <circle class="head" r=${n(head)} />
    ${mass(figure, 0)}`;
}

function dog(k: number, figure: string) {
  const w = Math.max(0.2 * k, 22);
  const l = 0.46 * k;
  const head = w * 0.36;
  const top = -l / 2 + head;
  return svg`
    <path class="tail" d=${`M0 ${n(l / 2 - 4)}q1 6 ${n(w * 0.3)} 8`} />
    <rect class="body" x=${n(-w / 2)} y=${n(top + head * 0.4)} width=${n(w)} height=${n(l / 2 - top - head * 0.4)} rx=${n(w * 0.48)} />
    <circle class="body" cy=${n(top)} r=${n(head)} />
    <path
      class="ear"
      d=${`M${n(-head * 0.75)} ${n(top - head * 0.5)}q${n(-head * 0.9)} ${n(head * 0.2)} ${n(-head * 0.45)} ${n(head * 1.2)}M${n(head * 0.75)} ${n(top - head * 0.5)}q${n(head * 0.9)} ${n(head * 0.2)} ${n(head * 0.45)} ${n(head * 1.2)}`}
    />
    ${mass(figure, l * 0.16)}`;
}

function bag(k: number, figure: string) {
  const w = 0.36 * k;
  const h = 0.25 * k;
  const strap = w * 0.31;
  return svg`
    <rect class="body" x=${n(-w / 2)} y=${n(-h / 2)} width=${n(w)} height=${n(h)} rx=${n(h * 0.36)} />
    <path class="line" d=${`M${n(-strap)} ${n(-h / 2)}v${n(h)}M${n(strap)} ${n(-h / 2)}v${n(h)}`} />
    ${mass(figure, 0)}`;
}

function tank(k: number, figure: string) {
  const w = 0.35 * k;
  const h = 0.26 * k;
  return svg`
    <rect class="body" x=${n(-w / 2)} y=${n(-h / 2)} width=${n(w)} height=${n(h)} rx="5" />
    <circle class="cap" cx=${n(-w / 2 + 7)} cy=${n(-h / 2 + 7)} r="3.6" />
    <path class="line" d=${`M${n(w / 2 - 5)} ${n(-h / 2 + 5)}h-${n(w * 0.42)}`} />
    ${mass(figure, 3)}`;
}

function battery(k: number, figure: string) {
  const w = 0.33 * k;
  const h = 0.24 * k;
  const y = -h / 2 + 6;
  return svg`
    <rect class="body" x=${n(-w / 2)} y=${n(-h / 2)} width=${n(w)} height=${n(h)} rx="3" />
    <path class="line" d=${`M${n(-w / 2 + 4)} ${n(y)}h6m-3 -3v6M${n(w / 2 - 10)} ${n(y)}h6`} />
    ${mass(figure, 3)}`;
}

function wheel(x: number, y: number) {
  return svg`<g class="wheel" transform=${`translate(${n(x)} ${n(y)})`}>
    <circle r="8.5" />
    <path d="M0 -7.5V0M0 0L-6.4 4M0 0L6.4 4" />
    <circle class="hub" r="2" />
  </g>`;
}

function mass(figure: string, y: number) {
  return svg`<text class="mass" y=${y} dy="0.35em">${figure}</text>`;
}

/** Tenths of a pixel are enough. */
export function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}
