import { html, nothing, type TemplateResult } from 'lit';
import type { Cell } from '../../core/compare/shapes.ts';
import type { Band } from '../../core/curve/shapes.ts';
import type { Measure } from '../../core/trip/shapes.ts';
import { levelMark } from '../answer/verdict-mark.ts';
import type { Measures } from '../units/measures.ts';
import {
  chanceText,
  noteText,
  planesText,
  sparePlaningText,
  spareText,
  cellWords as words,
} from '../words/en-compare.ts';
import { reasonText } from '../words/en-reasons.ts';
import { unitWords } from '../words/en-units.ts';

export type Tone = 'go' | 'marginal' | 'no-go';

/** How a cell is coloured: by the worst that is said of it; "does not plane" alone is no fault. */
export function toneOf({ reasons, planing, cruise }: Cell): Tone {
  if (reasons.some(({ level }) => level === 'no-go')) return 'no-go';
  if (!cruise.held || planing.planes === 'marginal') return 'marginal';
  return reasons.some(({ level }) => level === 'marginal') ? 'marginal' : 'go';
}

/** All that is said of one load on one engine: what forbids it first, then the figures with their bands. */
export function cellDrawing(cell: Cell, m: Measures): TemplateResult {
  const { planing, topSpeed, cruise, spare, store } = cell;
  const stops = cell.reasons.filter(({ level }) => level === 'no-go');
  const others = cell.reasons.filter(({ level }) => level !== 'no-go');
  const speed = (si: number) => m.show('speed', si);
  return html`
    ${stops.map((reason) => html`<p class="stop">${levelMark('no-go')}<span>${reasonText(reason, m, store)}</span></p>`)}
    <p class=${`word ${planing.planes}`}>
      <strong>${planesText(planing)}</strong>
      ${planing.chance > 0 ? html`<span class="band">${chanceText(planing.chance)}</span>` : nothing}
    </p>
    <dl>
      ${fact(words.top, speed(topSpeed.median), band('speed', topSpeed, m))}
      ${fact(words.cruise, html`${speed(cruise.speed)}, ${cruise.held ? words.rules[cell.cruiseRule] : words.notHeld}`)}
      ${
        cruise.held
          ? html`
              ${fact(words.use, m.perDistance(cruise.perMetre.median, store), perDistanceBand(cell, m))}
              ${fact(words.range, m.show('distance', cruise.range.median), band('distance', cruise.range, m))}
              ${fact(words.kept, m.show('distance', cruise.rangeKept.median), band('distance', cruise.rangeKept, m))}
            `
          : nothing
      }
      ${fact(words.spare, spareText(spare, m))}
      ${planing.planes === 'not' && planing.chance === 0 ? nothing : fact(words.sparePlaning, sparePlaningText(spare, m))}
    </dl>
    ${others.map((reason) => html`<p class="remark">${levelMark(reason.level)}<span>${reasonText(reason, m, store)}</span></p>`)}
    ${cell.notes.map((note) => html`<p class="remark">${levelMark('note')}<span>${noteText(note, m)}</span></p>`)}
  `;
}

function fact(name: string, value: unknown, range?: string) {
  return html`<div><dt>${name}</dt><dd>${value}${range ? html` <span class="band">(${range})</span>` : nothing}</dd></div>`;
}

/** Without the unit, which stands with the middle figure. */
function band(measure: Measure, range: Band, m: Measures): string {
  return m.band(measure, range).replace(/\u00a0\D+$/, '');
}

function perDistanceBand({ cruise: { perMetre }, store }: Cell, m: Measures): string {
  const bare = (si: number) => m.perDistance(si, store).replace(/\u00a0\D+$/, '');
  return unitWords.fromTo(bare(perMetre.low), bare(perMetre.high));
}
