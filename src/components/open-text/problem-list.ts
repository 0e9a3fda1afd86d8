import { html, nothing } from 'lit';
import type { Problem } from '../../core/units/result.ts';
import { problemText } from '../words/en-problems.ts';

/** Problems shown at once; the rest are counted. */
const MOST_SHOWN = 8;

/** What was amiss with a file, one by one, as long as they are few. */
export function problemList(problems: readonly Problem[], more: (n: number) => string) {
  if (problems.length === 0) return nothing;
  return html`<ul class="problems">
    ${problems.slice(0, MOST_SHOWN).map((problem) => html`<li>${problemText(problem)}</li>`)}
    ${problems.length > MOST_SHOWN ? html`<li>${more(problems.length - MOST_SHOWN)}</li>` : nothing}
  </ul>`;
}
