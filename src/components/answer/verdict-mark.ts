import { html, type TemplateResult } from 'lit';
import type { Verdict } from '../../core/trip/shapes.ts';

/** Our sign of the answer: the sun clear of the sea, half in it, or upside down under it. Told apart by outline alone. */
const MARKS: Record<Verdict | 'none', string> = {
  go: 'M24 6a10.5 10.5 0 1 1 0 21a10.5 10.5 0 1 1 0-21ZM3 36.5q5.25-4 10.5 0t10.5 0t10.5 0t10.5 0v4.5q-5.25 4-10.5 0t-10.5 0t-10.5 0t-10.5 0Z',
  marginal: 'M7.5 29a16.5 16.5 0 0 1 33 0ZM3 33h42v4.5H3ZM12 41.5h24v4H12Z',
  'no-go':
    'M3 8q5.25-4 10.5 0t10.5 0t10.5 0t10.5 0v5q-5.25 4-10.5 0t-10.5 0t-10.5 0t-10.5 0ZM5 20h38a19 19 0 0 1-1.4 6h-35.2A19 19 0 0 1 5 20ZM8.4 29.5h31.2a19 19 0 0 1-31.2 0Z',
  none: 'M3 33h8v4.5H3ZM20 33h8v4.5h-8ZM37 33h8v4.5h-8Z',
};

/** Drawn in the colour of the text around it; the words beside it say the same, so it has no name of its own. */
export function verdictMark(verdict: Verdict | 'none'): TemplateResult {
  return html`<svg class="mark" viewBox="0 0 48 48" aria-hidden="true">
    <path fill="currentColor" fill-rule="evenodd" d=${MARKS[verdict]} />
  </svg>`;
}

const LEVELS = {
  'no-go': 'M1 2.5h18v3H1ZM2 8h16a8 8 0 0 1-16 0Z',
  marginal: 'M3 12a7 7 0 0 1 14 0ZM1 13.5h18v2.2H1Z',
  note: 'M10 6a4 4 0 1 1 0 8a4 4 0 1 1 0-8Z',
} as const;

/** The same signs, small, before each reason. */
export function levelMark(level: keyof typeof LEVELS): TemplateResult {
  return html`<svg class="level" viewBox="0 0 20 20" aria-hidden="true">
    <path fill="currentColor" fill-rule="evenodd" d=${LEVELS[level]} />
  </svg>`;
}
