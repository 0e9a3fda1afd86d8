import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { watersWords as words } from '../words/en-waters.ts';
import { featureTitle } from './feature-title.ts';
import { describesKind, KIND_NAMES, type KindName } from './kinds.ts';
import { kindOf, outlinesOf, type Sheet } from './sheet.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';

export type FeatureAdded = CustomEvent<{ kind: KindName }>;
export type FeatureChosen = CustomEvent<{ index: number }>;
export type FeatureRemoved = CustomEvent<{ index: number }>;

/** Rows at once; the rest on demand. */
const STEP = 60;

/**
 * @summary Everything drawn, as a list: to add, choose and delete without the map.
 * @fires feature-added - one more of a kind is wanted
 * @fires feature-chosen - one is to be changed
 * @fires feature-removed - one is to be deleted
 */
export class FeatureList extends SpeakingElement {
  static override styles = [tokens, controls, watersEditorStyles];

  @property({ attribute: false }) sheet: Sheet | undefined;
  @property({ type: Number }) chosen: number | undefined;
  /** Errors by feature. */
  @property({ attribute: false }) errors: ReadonlyMap<number, number> = new Map();

  @state() private kind: KindName | 'all' = 'all';
  @state() private adding: KindName = 'land';
  @state() private most = STEP;

  override render() {
    const features = this.sheet?.features ?? [];
    const rows = [...features.entries()].filter(([, one]) => this.kind === 'all' || kindOf(one) === this.kind);
    const shown = rows.slice(0, this.most);
    return html`
      <div class="row">
        ${this.#kindSelect('adding', words.add, this.adding, false, (kind) => (this.adding = kind as KindName))}
        <button type="button" class="primary" @click=${() => this.#tell('feature-added', { kind: this.adding })}>
          ${words.addKind(words.kinds[this.adding])}
        </button>
      </div>
      ${
        features.length > 8
          ? html`<div class="row">
              ${this.#kindSelect('filter', words.filter, this.kind, true, (kind) => {
                this.kind = kind;
                this.most = STEP;
              })}
            </div>`
          : nothing
      }
      ${features.length === 0 ? html`<p class="muted">${words.empty}</p>` : nothing}
      <ol class="list long" role="list" tabindex=${shown.length > 6 ? '0' : nothing} aria-label=${words.list}>
        ${repeat(
          shown,
          ([index]) => index,
          ([index, one]) => this.#row(index, one),
        )}
      </ol>
      ${
        rows.length > shown.length
          ? html`<div class="row">
              <span class="muted">${words.more(shown.length, rows.length)}</span>
              <button type="button" @click=${() => (this.most += STEP)}>${words.showMore}</button>
            </div>`
          : nothing
      }
    `;
  }

  #row(index: number, one: unknown) {
    const title = featureTitle(this.sheet, index);
    const errors = this.errors.get(index) ?? 0;
    const corners = outlinesOf(one).reduce((sum, { places }) => sum + places.length, 0);
    const point = corners === 1;
    return html`<li aria-current=${index === this.chosen ? 'true' : nothing}>
      <span class="what">
        ${title}${point ? nothing : html` <span class="muted">${words.corners(corners)}</span>`}
        ${errors > 0 ? html`<span class="problem">${words.errors(errors)}</span>` : nothing}
      </span>
      <span class="row">
        <button
          type="button"
          aria-label=${words.change(title)}
          aria-pressed=${index === this.chosen}
          @click=${() => this.#tell('feature-chosen', { index })}
        >
          ${words.changeIt}
        </button>
        <button
          type="button"
          class="quiet"
          aria-label=${words.remove(title)}
          @click=${() => this.#tell('feature-removed', { index })}
        >
          ${words.removeIt}
        </button>
      </span>
    </li>`;
  }

  #kindSelect(id: string, label: string, chosen: string, withAll: boolean, pick: (kind: KindName | 'all') => void) {
    return html`<label for=${id}>${label}</label>
      <select
        id=${id}
        @change=${(event: Event) => {
          const { value } = event.currentTarget as HTMLSelectElement;
          pick(describesKind(value) ? value : 'all');
        }}
      >
        ${withAll ? html`<option value="all" ?selected=${chosen === 'all'}>${words.allKinds}</option>` : nothing}
        ${KIND_NAMES.map(
          (kind) => html`<option value=${kind} ?selected=${kind === chosen}>${words.kinds[kind]}</option>`,
        )}
      </select>`;
  }

  #tell(type: string, detail: object): void {
    this.dispatchEvent(new CustomEvent(type, { detail }));
  }
}

define('homeleg-waters-list', FeatureList);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-waters-list': FeatureList;
  }
}
