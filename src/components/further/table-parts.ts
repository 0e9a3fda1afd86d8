import { html, type TemplateResult } from 'lit';

export function head(label: string, figure = true): TemplateResult {
  return html`<th role="columnheader" scope="col" class=${figure ? 'figure' : ''}>${label}</th>`;
}

/** A cell with its column's name beside it for where rows are cards. */
export function cell(label: string, value: unknown, kind: 'figure' | 'text' | 'whole' = 'figure'): TemplateResult {
  return html`<td role="cell" class=${kind}><span class="label" aria-hidden="true">${label}</span><span>${value}</span></td>`;
}
