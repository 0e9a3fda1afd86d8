import { html, nothing } from 'lit';

/** One choice of a list. */
export interface Choice {
  readonly id: string;
  readonly label: string;
  /** Value and words of each. */
  readonly options: readonly (readonly [string, string])[];
  readonly now: string;
  readonly chosen: (value: string) => void;
}

/** A choice with its label above it. */
export function labelledChoice({ id, label, options, now, chosen }: Choice) {
  return html`<div>
    <label for=${id}>${label}</label>
    ${choice({ id, options, now, chosen })}
  </div>`;
}

/** The bare choice; without a label it needs a `name`. */
export function choice({
  id,
  options,
  now,
  chosen,
  name,
}: Omit<Choice, 'id' | 'label'> & { id?: string; name?: string }) {
  return html`<select
    id=${id ?? nothing}
    aria-label=${name ?? nothing}
    @change=${(event: Event) => chosen((event.target as HTMLSelectElement).value)}
  >
    ${options.map(([value, text]) => html`<option value=${value} .selected=${value === now}>${text}</option>`)}
  </select>`;
}

/** Longest text of a cell that is shown as a sample. */
const SAMPLE = 40;

/** Which column of a table tells something, with what stands in it first, and the unit it is in if it needs one. */
export function columnChoice(
  column: Omit<Choice, 'options'>,
  table: { readonly columns: readonly string[]; readonly first: readonly string[] },
  words: { readonly none: string; readonly sample: (text: string) => string },
  unit?: Choice,
) {
  const at = table.columns.indexOf(column.now);
  const options = [['', words.none] as const, ...table.columns.map((name) => [name, name] as const)];
  return html`<div class="field">
    ${labelledChoice({ ...column, options })}
    ${at >= 0 ? html`<p class="hint">${words.sample((table.first[at] ?? '').slice(0, SAMPLE))}</p>` : nothing}
    ${unit && column.now ? labelledChoice(unit) : nothing}
  </div>`;
}
