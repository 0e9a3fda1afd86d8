import { html, nothing } from 'lit';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { LegPlan } from '../../core/trip/shapes.ts';
import { mapWords as words } from './words.ts';

/** Which word of the map stands beside which sign, in the order of the key. */
const SIGNS = {
  out: 'keyOut',
  home: 'keyHome',
  slowed: 'keySlowed',
  land: 'keyLand',
  shoal: 'keyShoal',
  'speed-limit': 'keyLimit',
  'keep-out': 'keyKeepOut',
  landing: 'keyLanding',
  'set-route': 'keySetRoute',
  'reach-home': 'keyReachHome',
  'reach-one-way': 'keyReachOneWay',
} as const;

type Sign = keyof typeof SIGNS;

/** What the lines and patterns on the map mean, as far as they are on it. */
export function mapKey(
  waters: WatersFile | undefined,
  legs: readonly LegPlan[] | undefined,
  outline: boolean,
  more: unknown = nothing,
) {
  const kinds = new Set<string>(waters?.features.map((feature) => String(feature.properties?.kind)));
  if (kinds.has('route')) kinds.add('set-route');
  if (legs?.some((leg) => leg.part === 'out')) kinds.add('out');
  if (legs?.some((leg) => leg.part === 'home')) kinds.add('home');
  if (legs?.some((leg) => leg.limit !== undefined)) kinds.add('slowed');
  if (outline) kinds.add('reach-home').add('reach-one-way');
  const signs = (Object.keys(SIGNS) as Sign[]).filter((sign) => kinds.has(sign));
  if (signs.length === 0) return nothing;
  return html`<details class="key">
    <summary>${words.key}</summary>
    <ul>
      ${signs.map((sign) => html`<li><span class="sample ${sign}"></span>${words[SIGNS[sign]]}</li>`)}
      ${more}
    </ul>
  </details>`;
}
