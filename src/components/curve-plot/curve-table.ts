import { html, type TemplateResult } from 'lit';
import type { Curve } from '../../core/curve/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { regimeText } from '../words/en-regime.ts';
import { unitWords } from '../words/en-units.ts';
import { tens } from './plot-texts.ts';
import { curveWords as words } from './words.ts';

/** The curve as a table, for those whom the picture tells nothing. */
export function curveTable(curve: Curve, measures: Measures): TemplateResult {
  const { store } = curve;
  const per = (si: number) => measures.perDistance(si, store);
  const number = new Intl.NumberFormat(measures.lang, { maximumFractionDigits: 0 });
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.table}>
    <table>
      <thead>
        <tr>
          <th scope="col">${words.speed}</th>
          <th scope="col" class="figure">${words.use}</th>
          <th scope="col" class="figure">${words.likely}</th>
          <th scope="col" class="figure">${words.flow}</th>
          <th scope="col" class="figure">${words.rpm}</th>
          <th scope="col" class="figure">${words.trim}</th>
          <th scope="col">${words.regime}</th>
        </tr>
      </thead>
      <tbody>
        ${curve.points.map(
          (point) => html`<tr>
            <th scope="row">${measures.show('speed', point.speed)}</th>
            <td class="figure">${per(point.perMetre.median)}</td>
            <td class="figure">${unitWords.fromTo(per(point.perMetre.low), per(point.perMetre.high))}</td>
            <td class="figure">${measures.flow(point.flow.median, store)}</td>
            <td class="figure">${number.format(tens(point.rpm))}</td>
            <td class="figure">${measures.show('angle', point.trimDeg)}</td>
            <td>${point.held ? regimeText(point.regime) : words.notHeld}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
