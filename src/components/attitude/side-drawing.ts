import { html, svg } from 'lit';
import type { Hull } from '../../core/craft/shapes.ts';
import type { Piece } from '../deck-plan/pieces.ts';
import { type SidePoint, sideShape } from './side-shape.ts';

/** How the boat lies: bow up, degrees, and the aft end of its keel so far under still water, m. */
export interface Lie {
  readonly trimDeg: number;
  readonly sternUnder: number;
}

/** m of air over the keel that people need, and of water under it. */
const AIR = 1.35;
const WATER = 0.75;
const AHEAD = 0.15;

/** The boat from the side at one attitude, to scale; `width` px. */
export function sideDrawing(hull: Hull, pieces: readonly Piece[], lie: Lie, width: number) {
  const shape = sideShape(hull);
  const long = shape.bow - shape.aft + 2 * AHEAD;
  const scale = width / long;
  const height = Math.round((AIR + WATER) * scale);
  const surface = AIR * scale;
  const at = ({ x, z }: SidePoint) => `${(x * scale).toFixed(1)} ${(-z * scale).toFixed(1)}`;
  const ring = (points: readonly SidePoint[]) => `M${points.map(at).join('L')}Z`;
  const left = (AHEAD - shape.aft) * scale;
  const down = surface + lie.sternUnder * scale;
  return html`<svg class="side" viewBox="0 0 ${width} ${height}" width=${width} height=${height} aria-hidden="true">
    <rect class="below" x="0" y=${surface} width=${width} height=${height - surface} />
    <g transform="translate(${left.toFixed(1)} ${down.toFixed(1)}) rotate(${(-lie.trimDeg).toFixed(2)})">
      <path class="leg" d=${ring(shape.leg)} />
      ${pieces.map((piece) => aboard(piece, scale))}
      <path class="hull" d=${ring(shape.hull)} />
      <path class="seam" d=${`M${shape.line.map(at).join('L')}`} />
      <path class="engine" d=${ring(shape.engine)} />
    </g>
    <path class="over" d="M0 ${surface}H${width}V${height}H0Z" />
    <path class="surface" d="M0 ${surface}H${width}" />
  </svg>`;
}

/** Somebody or something from the side; people sit. */
function aboard({ kind, place, helm }: Piece, scale: number) {
  if (!place) return '';
  const x = place.x * scale;
  const z = (place.z ?? 0.45) * scale;
  if (kind === 'adult' || kind === 'child') {
    const k = (kind === 'adult' ? 1 : 0.78) * scale;
    return svg`<g class="person ${helm ? 'helm' : ''}" transform="translate(${x.toFixed(1)} ${(-z).toFixed(1)})">
      <path d=${`M${(-0.13 * k).toFixed(1)} ${(0.24 * k).toFixed(1)}V${(-0.14 * k).toFixed(1)}q0 ${(-0.12 * k).toFixed(1)} ${(0.13 * k).toFixed(1)} ${(-0.12 * k).toFixed(1)}t${(0.13 * k).toFixed(1)} ${(0.12 * k).toFixed(1)}V${(0.06 * k).toFixed(1)}h${(0.26 * k).toFixed(1)}v${(0.18 * k).toFixed(1)}Z`} />
      <circle cx="0" cy=${(-0.4 * k).toFixed(1)} r=${(0.12 * k).toFixed(1)} />
    </g>`;
  }
  const w = (kind === 'dog' ? 0.4 : 0.34) * scale;
  const h = 0.24 * scale;
  return svg`<rect class="thing" x=${(x - w / 2).toFixed(1)} y=${(-z - h / 2).toFixed(1)} width=${w.toFixed(1)} height=${h.toFixed(1)} rx="3" />`;
}
