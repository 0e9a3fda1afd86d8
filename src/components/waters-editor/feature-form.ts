import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Problem } from '../../core/units/result.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { problemText } from '../words/en-problems.ts';
import { watersWords as words } from '../words/en-waters.ts';
import './hours-table.ts';
import type { HoursEdited } from './hours-table.ts';
import { describesKind, FIGURES, type FieldName, FLAGS, FORMS, KIND_NAMES } from './kinds.ts';
import './points-table.ts';
import { geometryOf, kindOf, outlinesOf, propertiesOf, withPlaces } from './sheet.ts';
import { typedValue } from './typed-value.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';
import type { PlacesEdited } from './waters-map.ts';

/** Another value of a property, undefined takes it away; or the feature with another geometry. */
export type PropertyEdited = CustomEvent<{ field: string; value: unknown }>;
export type GeometryEdited = CustomEvent<{ feature: unknown }>;
export type OutlineChosen = CustomEvent<{ outline: number }>;

/**
 * @summary One feature of local waters: its properties, and its points as a table.
 * @fires property-edited - a property was typed
 * @fires geometry-edited - points were changed in the table
 * @fires outline-chosen - another outline of the same feature is to be changed
 */
export class FeatureForm extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, watersEditorStyles];

  @property({ attribute: false }) feature: unknown;
  @property({ type: Number }) index = 0;
  @property({ type: Number }) outline = 0;
  /** Those of this feature. */
  @property({ attribute: false }) problems: readonly Problem[] = [];

  /** Points are many: they open when wanted, and at once for what has none yet. */
  @state() private pointsOpen = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('index')) this.pointsOpen = (outlinesOf(this.feature)[0]?.places.length ?? 0) < 4;
  }

  override render() {
    const kind = kindOf(this.feature);
    const fields = describesKind(kind) ? FORMS[kind].fields : (['name'] as const);
    return html`<div class="stack close">
      <div class="fields wide">
        ${describesKind(kind) ? nothing : this.#kindField(kind)} ${fields.map((field) => this.#field(field))}
      </div>
      ${kind === 'stream' ? this.#hours() : nothing} ${this.#geometry()}
    </div>`;
  }

  #kindField(kind: string) {
    return html`<div class="field">
      <label for="kind">${words.kinds.unknown}</label>
      <select
        id="kind"
        aria-invalid="true"
        aria-describedby="kind-problem"
        @change=${(event: Event) => this.#tell('kind', (event.currentTarget as HTMLSelectElement).value)}
      >
        <option value=${kind} selected>${kind || words.notSaid}</option>
        ${KIND_NAMES.map((name) => html`<option value=${name}>${words.kinds[name]}</option>`)}
      </select>
      ${this.#problem('kind')}
    </div>`;
  }

  #field(field: FieldName) {
    const value = propertiesOf(this.feature)[field];
    const wrong = this.#problemOf(field) !== undefined;
    const described = wrong ? `${field}-problem` : nothing;
    const input =
      FLAGS.has(field) || field === 'shape'
        ? html`<select
            id=${field}
            aria-describedby=${described}
            @change=${(event: Event) => this.#chosen(field, (event.currentTarget as HTMLSelectElement).value)}
          >
            ${this.#choices(field).map(
              ([key, label]) => html`<option value=${key} ?selected=${String(value ?? '') === key}>${label}</option>`,
            )}
          </select>`
        : html`<input
            id=${field}
            autocomplete="off"
            inputmode=${FIGURES.has(field) ? 'decimal' : 'text'}
            aria-invalid=${wrong ? 'true' : nothing}
            aria-describedby=${described}
            .value=${value === undefined ? '' : String(value)}
            @change=${(event: Event) => this.#typed(field, (event.currentTarget as HTMLInputElement).value)}
          />`;
    return html`<div class="field">
      <label for=${field}>${words.fields[field]}</label>
      ${input} ${this.#problem(field)}
    </div>`;
  }

  #choices(field: FieldName): [string, string][] {
    if (field === 'shape') return [['', words.notSaid], ...Object.entries(words.shapes)];
    return [
      ['', words.notSaid],
      ['true', words.yes],
      ['false', words.no],
    ];
  }

  #hours() {
    const { hours } = propertiesOf(this.feature);
    return html`<homeleg-hours-table
      .hours=${Array.isArray(hours) ? hours : []}
      problem=${this.#problemOf('hours') ?? ''}
      @hours-edited=${({ detail }: HoursEdited) => this.#tell('hours', detail.hours)}
    ></homeleg-hours-table>`;
  }

  #geometry() {
    const outlines = outlinesOf(this.feature);
    const chosen = outlines[this.outline] ?? outlines[0];
    const problems = this.problems.filter(({ path }) => /^features\.\d+(\.geometry.*|\.type)?$/.test(path));
    const told = problems.map((problem) => html`<p class="problem">${problemText(problem)}</p>`);
    if (!chosen) return [html`<p class="hint">${words.unreadable}</p>`, told];
    const single = geometryOf(this.feature)?.type === 'Point';
    const table = html`<homeleg-points-table
      .places=${chosen.places}
      ?closed=${chosen.closed}
      ?single=${single}
      of="${this.index}:${this.outline}"
      @places-edited=${({ detail }: PlacesEdited) => this.#drawn(withPlaces(this.feature, chosen, detail.places))}
    ></homeleg-points-table>`;
    return [
      outlines.length > 1 ? this.#outlineField(outlines) : nothing,
      told,
      single
        ? table
        : html`<details
            class="points"
            ?open=${this.pointsOpen}
            @toggle=${(event: Event) => {
              this.pointsOpen = (event.currentTarget as HTMLDetailsElement).open;
            }}
          >
            <summary>${words.pointTable} (${words.corners(chosen.places.length)})</summary>
            ${this.pointsOpen ? table : nothing}
          </details>`,
    ];
  }

  #outlineField(outlines: ReturnType<typeof outlinesOf>) {
    return html`<div class="field">
      <label for="outline">${words.outline}</label>
      <select
        id="outline"
        @change=${(event: Event) => {
          const outline = Number((event.currentTarget as HTMLSelectElement).value);
          this.dispatchEvent(new CustomEvent('outline-chosen', { detail: { outline } }) satisfies OutlineChosen);
        }}
      >
        ${outlines.map(
          ({ hole }, i) =>
            html`<option value=${i} ?selected=${i === this.outline}>
              ${words.outlineOf(i + 1, outlines.length, hole)}
            </option>`,
        )}
      </select>
    </div>`;
  }

  #problemOf(field: string): string | undefined {
    const found = this.problems.find(({ path }) => path === `features.${this.index}.properties.${field}`);
    return found && problemText(found);
  }

  #problem(field: string) {
    const text = this.#problemOf(field);
    return text ? html`<p id="${field}-problem" class="problem">${text}</p>` : nothing;
  }

  #typed(field: FieldName, text: string): void {
    if (FIGURES.has(field)) this.#tell(field, typedValue(text));
    // A name has to be there, if only as nothing; anything else that is empty is not said.
    else this.#tell(field, text.trim() === '' && field !== 'name' ? undefined : text.trim());
  }

  #chosen(field: FieldName, key: string): void {
    if (key === '') this.#tell(field, undefined);
    else this.#tell(field, field === 'shape' ? key : key === 'true');
  }

  #tell(field: string, value: unknown): void {
    this.dispatchEvent(new CustomEvent('property-edited', { detail: { field, value } }) satisfies PropertyEdited);
  }

  #drawn(feature: unknown): void {
    this.dispatchEvent(new CustomEvent('geometry-edited', { detail: { feature } }) satisfies GeometryEdited);
  }
}

define('homeleg-feature-form', FeatureForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-feature-form': FeatureForm;
  }
}
