import { nothing, svg } from 'lit';
import type { Hull } from '../../core/craft/shapes.ts';
import { dataName } from '../words/en-data.ts';
import { deckWords } from '../words/en-deck.ts';
import type { HullPlan } from './hull-plan.ts';
import { n, SIZES } from './piece-drawing.ts';
import type { PlaceMark } from './place-marks.ts';
import { path, type View } from './view.ts';

/** How a place looks just now. */
export type PlaceState = 'plain' | 'can' | 'here';

/** Hull, transom and engine. `engineMass` is the figure on it, without unit. */
export function boatDrawing(hull: Hull, plan: HullPlan, view: View, engineMass: string) {
  const [port, starboard] = plan.transom.map((spot) => view.point(spot));
  const bow = view.point({ x: plan.bow, y: 0 });
  return svg`
    <g class="boat" aria-hidden="true">
      <path class="hull" d=${path(view, plan.outline)} />
      <path class="floor" d=${path(view, plan.floor)} />
      ${plan.seams.map((seam) => svg`<path class="seam" d=${path(view, seam, false)} />`)}
      <path class="transom" d=${`M${n(port!.x)} ${n(port!.y)}H${n(starboard!.x)}`} />
      ${engine(hull, view, engineMass)}
      <text class="side" x=${n(bow.x)} y=${n(bow.y - 9)}>${deckWords.bow}</text>
    </g>`;
}

function engine(hull: Hull, view: View, mass: string) {
  const { x, y } = view.point(hull.engine);
  const k = view.scale;
  const w = Math.max(0.3 * k, 30);
  const h = Math.max(0.36 * k, 32);
  const top = y - 0.06 * k;
  return svg`
    <g class="engine">
      <path class="clamp" d=${`M${n(x)} ${n(top + 4)}V${n(y - 0.2 * k)}`} />
      <rect x=${n(x - w / 2)} y=${n(top)} width=${n(w)} height=${n(h)} rx=${n(w * 0.36)} />
      <path class="line" d=${`M${n(x - w * 0.24)} ${n(top + h * 0.78)}h${n(w * 0.48)}`} />
      <text class="mass" x=${n(x)} y=${n(top + h * 0.44)} dy="0.35em">${mass}</text>
    </g>`;
}

/** One mark of places; its words show where nothing covers them. */
export function placeDrawing(mark: PlaceMark, view: View, state: PlaceState, covered: boolean) {
  const { x, y } = view.point(mark.spot);
  const seat = mark.use === 'seat' || mark.use === 'helm';
  const { along, across } = seat ? { along: 0.155, across: 0.245 } : SIZES.gear;
  const w = 2 * across * view.scale;
  const h = 2 * along * view.scale;
  const lines = covered || w < 34 ? [] : mark.words;
  const step = Math.min(12, h / Math.max(1, lines.length));
  return svg`
    <g class="place ${mark.use} ${state}">
      <title>${mark.stations.map(({ label }) => dataName(label)).join('; ')}</title>
      <rect x=${n(x - w / 2)} y=${n(y - h / 2)} width=${n(w)} height=${n(h)} rx=${seat ? n(h * 0.32) : 5} />
      ${mark.use === 'helm' ? helmWheel(x, y - h / 2, view.scale) : nothing}
      ${lines.map(
        (word, i) => svg`<text x=${n(x)} y=${n(y + (i - (lines.length - 1) / 2) * step)} dy="0.35em">${word}</text>`,
      )}
    </g>`;
}

function helmWheel(x: number, y: number, k: number) {
  const r = 0.085 * k;
  return svg`<path
    class="helm-wheel"
    d=${`M${n(x - r)} ${n(y - 2)}a${n(r)} ${n(r * 0.62)} 0 0 1 ${n(2 * r)} 0M${n(x)} ${n(y - 2)}v${n(-r * 0.6)}`}
  />`;
}
