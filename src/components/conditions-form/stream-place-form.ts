import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Waypoint } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { labelledChoice } from '../open-text/column-choice.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { showPosition } from '../units/coordinates.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { streamPlaceWords as words } from '../words/en-streams.ts';
import { FASTEST, newDraft, type PlaceDraft, type PlaceFault, type PlaceFaults, type RunTexts } from './place-draft.ts';
import { streamPlacesStyles } from './stream-places.styles.ts';

/** The place as it is typed now. */
export type DraftEdited = CustomEvent<{ draft: PlaceDraft }>;

type Cell = keyof RunTexts;

/** Hours from high water at which the ebb may begin. */
const TURNS = [-3, -2, -1, 0, 1, 2, 3];

/**
 * @summary One place with streams: name, position, and its rates and directions by the hour, or its strongest alone.
 * @fires draft-edited - at every change, whole or not
 */
export class StreamPlaceForm extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, streamPlacesStyles];

  @property({ attribute: false }) draft: PlaceDraft = newDraft(0);
  @property({ attribute: false }) faults: PlaceFaults = {};
  @property({ attribute: false }) waypoints: readonly Waypoint[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** Fields that somebody left, whose faults are said. */
  @state() private left: ReadonlySet<string> = new Set();

  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>('#name')?.focus(options);
  }

  override render() {
    const { draft } = this;
    return html`<div class="stack close">
      <div class="fields wide">
        ${this.#text('name', words.name)} ${this.#text('position', words.position, words.positionHint)}
        ${this.waypoints.length > 0 ? this.#waypoint() : nothing}
      </div>
      <homeleg-choice-field
        label=${words.known}
        .choices=${[{ value: 'hourly', label: words.hourly }, { value: 'two-runs', label: words.twoRuns }]}
        .value=${draft.known}
        @choice-made=${({ detail }: ChoiceMade) => this.#edit({ known: detail.value as PlaceDraft['known'] })}
      ></homeleg-choice-field>
      ${draft.known === 'hourly' ? this.#hours() : this.#twoRuns()}
      <p class="state ${this.#sound ? '' : 'open'}" role="status">
        ${this.#sound ? words.counts : draft.whole ? words.standing : words.unfinished}
      </p>
    </div>`;
  }

  get #sound(): boolean {
    return Object.keys(this.faults).length === 0;
  }

  #text(field: 'name' | 'position', label: string, hint = '') {
    const said = this.#said(field);
    return html`<div class="field">
      <label for=${field}>${label}</label>
      <input
        id=${field}
        autocomplete="off"
        spellcheck="false"
        maxlength="120"
        aria-invalid=${said ? 'true' : nothing}
        aria-describedby=${said || hint ? `${field}-said` : nothing}
        .value=${this.draft[field]}
        @input=${({ target }: Event) => field === 'position' && this.#edit({ position: (target as HTMLInputElement).value })}
        @change=${({ target }: Event) => this.#leave(field, () => this.#edit({ [field]: (target as HTMLInputElement).value }))}
      />
      ${said || hint ? html`<p id="${field}-said" class=${said ? 'problem' : 'hint'}>${said || hint}</p>` : nothing}
    </div>`;
  }

  #waypoint() {
    return labelledChoice({
      id: 'waypoint',
      label: words.take,
      options: [
        ['', words.choose],
        ...this.waypoints.map(({ name }, i) => [String(i), words.waypoint(i + 1, name ?? '')] as const),
      ],
      now: '',
      chosen: (value) => {
        const at = value === '' ? undefined : this.waypoints[Number(value)];
        if (at) this.#edit({ position: showPosition(at, this.measures.system) });
        this.requestUpdate();
      },
    });
  }

  #hours() {
    const { hours } = this.draft;
    const turned = hours.some(({ neapSet }) => neapSet !== '');
    const said = this.#said('hours');
    return html`<table role="table" class="hours">
        <caption class="sr">${words.hours}</caption>
        ${this.#head(words.hour, turned)}
        <tbody role="rowgroup">
          ${hours.map((row) => this.#row(String(row.hour), hourName(row.hour, this.measures.lang), row, turned))}
        </tbody>
      </table>
      ${said ? html`<p class="problem">${said}</p>` : nothing}
      <p class="hint">${words.ends}</p>`;
  }

  #twoRuns() {
    const { flood, ebb, turns } = this.draft;
    const said = this.#said('turns');
    return html`<table role="table" class="hours">
        <caption class="sr">${words.twoRuns}</caption>
        ${this.#head('', false)}
        <tbody role="rowgroup">
          ${this.#row('flood', words.flood, flood, false)} ${this.#row('ebb', words.ebb, ebb, false)}
        </tbody>
      </table>
      <div class="fields wide">
        ${labelledChoice({
          id: 'turns',
          label: words.turns,
          options: [
            ['', words.choose],
            ...TURNS.map((hour) => [String(hour), hourName(hour, this.measures.lang)] as const),
          ],
          now: turns,
          chosen: (value) => this.#leave('turns', () => this.#edit({ turns: value })),
        })}
      </div>
      ${said ? html`<p class="problem">${said}</p>` : nothing}
      <p class="hint">${words.guessed}</p>`;
  }

  #columns(turned: boolean): readonly (readonly [Cell, string])[] {
    const unit = this.measures.unit('speed');
    return [
      ['set', words.set],
      ['springs', words.springs(unit)],
      ['neaps', words.neaps(unit)],
      ...(turned ? [['neapSet', words.neapSet] as const] : []),
    ];
  }

  #head(first: string, turned: boolean) {
    return html`<thead role="rowgroup">
      <tr role="row">
        ${first ? html`<th role="columnheader" scope="col">${first}</th>` : html`<td role="cell"></td>`}
        ${this.#columns(turned).map(([, name]) => html`<th role="columnheader" scope="col">${name}</th>`)}
      </tr>
    </thead>`;
  }

  #row(part: string, name: string, run: RunTexts, turned: boolean) {
    const columns = this.#columns(turned);
    const faults = columns.map(([cell]) => this.#said(`${part} ${cell}`)).filter((text) => text !== '');
    return html`<tr role="row">
        <th role="rowheader" scope="row">${name}</th>
        ${columns.map(([cell, column]) => this.#cell(part, cell, words.cell(column, name), run))}
      </tr>
      ${
        faults.length > 0
          ? html`<tr role="row"><td role="cell" colspan=${columns.length + 1}>
              <p id=${faultId(part)} class="problem">${name}: ${[...new Set(faults)].join(' ')}</p>
            </td></tr>`
          : nothing
      }`;
  }

  #cell(part: string, cell: Cell, name: string, run: RunTexts) {
    const field = `${part} ${cell}`;
    const said = this.#said(field);
    return html`<td role="cell">
      <input
        inputmode=${cell === 'set' || cell === 'neapSet' ? nothing : 'decimal'}
        autocomplete="off"
        autocapitalize="characters"
        maxlength="12"
        aria-label=${name}
        aria-invalid=${said ? 'true' : nothing}
        aria-describedby=${said ? faultId(part) : nothing}
        .value=${run[cell]}
        @input=${({ target }: Event) => this.#typed(part, cell, (target as HTMLInputElement).value)}
        @change=${() => this.#leave(field)}
      />
    </td>`;
  }

  #said(field: string): string {
    const fault = this.faults[field];
    const { whole, checked } = this.draft;
    // An empty field of a new place is only told once somebody was there.
    return fault && (this.left.has(field) || whole || checked) ? this.#faultText(fault) : '';
  }

  #faultText(fault: PlaceFault): string {
    return fault === 'too-much' ? words.tooMuch(this.measures.show('speed', FASTEST)) : words.faults[fault];
  }

  #typed(part: string, cell: Cell, text: string): void {
    const { hours, flood, ebb } = this.draft;
    if (part === 'flood') this.#edit({ flood: { ...flood, [cell]: text } });
    else if (part === 'ebb') this.#edit({ ebb: { ...ebb, [cell]: text } });
    else this.#edit({ hours: hours.map((row) => (String(row.hour) === part ? { ...row, [cell]: text } : row)) });
  }

  #leave(field: string, edit?: () => void): void {
    this.left = new Set([...this.left, field, ...(/^-?\d/.test(field) ? ['hours'] : [])]);
    edit?.();
  }

  #edit(change: Partial<PlaceDraft>): void {
    this.draft = { ...this.draft, ...change };
    const detail = { draft: this.draft };
    this.dispatchEvent(new CustomEvent('draft-edited', { detail }) satisfies DraftEdited);
  }
}

/** "3 h before", "High water", "2 h after". */
function hourName(hour: number, lang: string): string {
  if (hour === 0) return words.highWater;
  const size = new Intl.NumberFormat(lang).format(Math.abs(hour));
  return hour < 0 ? words.before(size) : words.after(size);
}

function faultId(part: string): string {
  return `fault-${part}`;
}

define('homeleg-stream-place-form', StreamPlaceForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-stream-place-form': StreamPlaceForm;
  }
}
