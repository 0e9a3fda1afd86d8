import { html, type TemplateResult } from 'lit';
import type { Pitch, PropellerAdvice } from '../../core/compare/propeller-advice.ts';
import { INCH } from '../../core/units/convert.ts';
import type { Measures } from '../units/measures.ts';
import { numberText } from '../units/number-text.ts';
import { lookWords as words } from '../words/en-compare.ts';

/** Whole and half inches round the pitch now, with what full throttle gives on each. */
export function pitchTable({ pitches, window, rpm }: PropellerAdvice, m: Measures): TemplateResult {
  const judged = ({ inWindow, rpm: turned, planes }: Pitch) => {
    const revs = inWindow ? words.inWindow : turned < window.low ? words.tooLow : words.tooHigh;
    return planes ? revs : `${revs}, ${words.noPlane}`;
  };
  const near = pitches.filter(({ change }) => Math.abs(change) < 3.1 * INCH);
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${words.pitches}>
    <table>
      <thead>
        <tr>
          <th scope="col">${words.pitch}</th>
          <th scope="col" class="figure">${words.rpm}</th>
          <th scope="col" class="figure">${words.top}</th>
          <th scope="col">${words.fits}</th>
        </tr>
      </thead>
      <tbody>
        ${near.map(
          (pitch) => html`<tr class=${Math.abs(pitch.change) < 1e-9 ? 'now' : ''}>
            <th scope="row">
              ${numberText(m.lang, pitch.pitch / INCH, { least: 1, most: 1 })}&nbsp;in${Math.abs(pitch.change) < 1e-9 ? ` (${words.now})` : ''}
            </th>
            <td class="figure">${numberText(m.lang, Math.round((Math.abs(pitch.change) < 1e-9 ? rpm.median : pitch.rpm) / 10) * 10)}</td>
            <td class="figure">${m.show('speed', pitch.topSpeed)}</td>
            <td>${judged(pitch)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
