import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Catalogue, Suited, SuitTrip } from '../../core/compare/suit-shapes.ts';
import { INCH } from '../../core/units/convert.ts';
import { levelMark } from '../answer/verdict-mark.ts';
import { storeName } from '../load-table/setups.ts';
import type { Measures } from '../units/measures.ts';
import { numberText } from '../units/number-text.ts';
import { propellerText, standingWords, suitReasonText, suitsBecause, suitWords as words } from '../words/en-compare.ts';
import { dataName } from '../words/en-data.ts';

const LEVEL = { fits: 'note', doubtful: 'marginal', out: 'no-go' } as const;

/** One boat with its engine, propeller and tank or battery: why it suits or not, and the figures of the trip. */
export function suitCard(
  one: Suited,
  { hulls, engines, stores }: Catalogue,
  wished: number | undefined,
  m: Measures,
): TemplateResult {
  const { trip, craft, standing } = one;
  const { hull } = hulls.find(({ id }) => id === one.hullId)!;
  const drive = craft?.drive ?? engines.find(({ id }) => id === one.engineId)!.drive;
  const store = stores.find(({ id }) => id === one.storeId)?.store;
  return html`
    <h4>${dataName(hull.name)}</h4>
    <p class="with">${dataName(drive.name)}${store ? html`<br />${storeName(store)}` : nothing}</p>
    ${trip ? bar(trip) : nothing}
    ${
      standing === 'fits'
        ? html`<p class="why">${suitsBecause(one, wished, m)}</p>`
        : html`<ul class="reasons" aria-label=${standingWords[standing]}>
            ${one.reasons.map(
              (reason) =>
                html`<li>${levelMark(LEVEL[standing])}<span>${suitReasonText(reason, m, trip?.store ?? 'fuel')}</span></li>`,
            )}
          </ul>`
    }
    <dl>
      ${
        trip
          ? html`
              ${fact(words.needs, m.show('amount', trip.need.median, trip.store), m.band('amount', trip.need, trip.store))}
              ${fact(words.left, m.show('amount', trip.left.median, trip.store), m.band('amount', trip.left, trip.store))}
              ${fact(words.range, m.show('distance', trip.range))}
              ${fact(words.speedAt, `${m.show('speed', trip.speed)}, ${trip.planing ? words.planing : words.displacement}`)}
            `
          : nothing
      }
      ${fact(words.propeller, html`${propellerText(drive.propeller, m.lang)}${pitched(one, m)}`)}
      ${fact(words.mass, m.show('mass', one.mass))}
      ${fact(words.heaviest, m.show('mass', one.heaviest))}
      ${fact(words.hullShare, m.show('mass', one.hullShare))}
    </dl>
    ${trip ? html`<p class="hint">${words.sure(m.show('share', trip.probability))}.</p>` : nothing}
  `;
}

function fact(name: string, value: unknown, band?: string) {
  return html`<div><dt>${name}</dt><dd>${value}${band ? html` <span class="band">(${band})</span>` : nothing}</dd></div>`;
}

function pitched({ pitchChange }: Suited, m: Measures) {
  if (pitchChange === 0) return nothing;
  const inches = numberText(m.lang, Math.abs(pitchChange) / INCH, { most: 1 });
  return html` <span class="band">(${words.pitched(`${inches}\u00a0in`, pitchChange < 0 ? 'less' : 'more')})</span>`;
}

/** Full to empty: what the trip needs with its band, and the reserve. The figures under it say the same. */
function bar({ need, usable, reserve }: SuitTrip) {
  const at = (amount: number) => Math.min(Math.max(amount / usable, 0), 1) * 100;
  const kept = at(reserve);
  return html`<svg class="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
    ${svg`<rect class="full" x="0" y="0" width="100" height="8" />
    <rect class="kept" x=${100 - kept} y="0" width=${kept} height="8" />
    <rect class="need" x="0" y="1.5" width=${at(need.median)} height="5" />
    <rect class="spread" x=${at(need.low)} y="3.2" width=${Math.max(at(need.high) - at(need.low), 0)} height="1.6" />`}
  </svg>`;
}
