import { html, type TemplateResult } from 'lit';
import type { Catalogue, Suited } from '../../core/compare/suit-shapes.ts';
import type { Measures } from '../units/measures.ts';
import { suitReasonText } from '../words/en-compare.ts';
import { dataName } from '../words/en-data.ts';

/** What falls out, boat by boat, each engine with its first reason. */
export function outList(out: readonly Suited[], { hulls, engines }: Catalogue, m: Measures): TemplateResult {
  return html`<div class="outs">
    ${hulls.map(({ id, hull }) => {
      const here = out.filter(({ hullId }) => hullId === id);
      if (here.length === 0) return '';
      return html`<details>
        <summary>${dataName(hull.name)}: ${here.length}</summary>
        <ul>
          ${here.map((one) => html`<li>${lineOf(one, engines, m)}</li>`)}
        </ul>
      </details>`;
    })}
  </div>`;
}

function lineOf({ engineId, reasons, trip }: Suited, engines: Catalogue['engines'], m: Measures) {
  const { drive } = engines.find(({ id }) => id === engineId)!;
  const store = trip?.store ?? (drive.kind === 'petrol' ? 'fuel' : 'charge');
  return html`<strong>${dataName(drive.name)}</strong> ${suitReasonText(reasons[0]!, m, store)}`;
}
