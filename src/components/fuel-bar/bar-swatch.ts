import { html, nothing, svg, type TemplateResult } from 'lit';
import type { LegendLine } from './bar-texts.ts';
import { hatch, slice } from './shape.ts';

const KEY = { left: 1, top: 1, width: 24, height: 14, radius: 4 };
const PATH = slice(KEY, 1, 25);
const HATCHED = { reserve: ['hatch', true], touched: ['hatch pale', true], short: ['hatch spill', false] } as const;

/** A sample of how a part of the bar is drawn, for its legend. */
export function swatch(kind: LegendLine['kind']): TemplateResult {
  const lines = kind in HATCHED ? HATCHED[kind as keyof typeof HATCHED] : undefined;
  return html`<svg class="key" width="26" height="16" viewBox="0 0 26 16" aria-hidden="true">
    <path class=${kind} d=${PATH} />
    ${lines ? svg`<path class=${lines[0]} d=${hatch(KEY, 1, 25, 6, lines[1])} />` : nothing}
  </svg>`;
}
