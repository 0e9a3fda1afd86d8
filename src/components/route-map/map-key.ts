import { html, nothing } from 'lit';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { LegPlan } from '../../core/trip/shapes.ts';
import { mapWords as words } from './words.ts';

const NAMES = {
  out: words.keyOut,
  home: words.keyHome,
  slowed: words.keySlowed,
  land: words.keyLand,
  shoal: words.keyShoal,
  'speed-limit': words.keyLimit,
  'keep-out': words.keyKeepOut,
  landing: words.keyLanding,
  'reach-home': words.keyReachHome,
  'reach-one-way': words.keyReachOneWay,
} as const;

type Sign = keyof typeof NAMES;

/** What the lines and patterns on the map mean, as far as they are on it. */
export function mapKey(waters: WatersFile | undefined, legs: readonly LegPlan[] | undefined, outline: boolean) {
  const kinds = new Set<string>(waters?.features.map((feature) => String(feature.properties?.kind)));
  if (legs?.some((leg) => leg.part === 'out')) kinds.add('out');
  if (legs?.some((leg) => leg.part === 'home')) kinds.add('home');
  if (legs?.some((leg) => leg.limit !== undefined)) kinds.add('slowed');
  if (outline) kinds.add('reach-home').add('reach-one-way');
  const signs = (Object.keys(NAMES) as Sign[]).filter((sign) => kinds.has(sign));
  if (signs.length === 0) return nothing;
  return html`<details class="key">
    <summary>${words.key}</summary>
    <ul>
      ${signs.map((sign) => html`<li><span class="sample ${sign}"></span>${NAMES[sign]}</li>`)}
    </ul>
  </details>`;
}
