import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Problem } from '../../core/units/result.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { problemText } from '../words/en-problems.ts';
import { watersWords as words } from '../words/en-waters.ts';
import type { Sheet } from './sheet.ts';
import { typedValue } from './typed-value.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';

export type MemberEdited = CustomEvent<{ member: string; value: unknown }>;

const MEMBERS = ['name', 'responsible', 'surveyed', 'validUntil', 'about'] as const;
type Member = (typeof MEMBERS)[number];
const SIDES = ['west', 'south', 'east', 'north'] as const;

/**
 * @summary What local waters are called, who answers for them, until when, and the box inside which all is known.
 * @fires member-edited - a member of the file was typed; undefined takes it away
 */
export class AboutForm extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, watersEditorStyles];

  @property({ attribute: false }) sheet: Sheet | undefined;
  @property({ attribute: false }) problems: readonly Problem[] = [];
  /** The box round everything drawn; undefined while nothing is. */
  @property({ attribute: false }) extent: readonly number[] | undefined;

  /** Puts the cursor where a problem is. */
  focusMember(member: string): void {
    this.renderRoot.querySelector<HTMLElement>(`#${member === 'bbox' ? 'west' : member}`)?.focus();
  }

  override render() {
    return html`<div class="stack close">
      <div class="fields wide">${MEMBERS.map((member) => this.#field(member))}</div>
      ${this.#box()}
    </div>`;
  }

  #field(member: Member) {
    const value = this.sheet?.[member];
    const problem = this.#problemOf(member);
    const hint = member === 'responsible' ? words.responsibleHint : member === 'validUntil' ? words.validUntilHint : '';
    const described = [problem && `${member}-problem`, hint && `${member}-hint`].filter(Boolean).join(' ');
    return html`<div class="field">
      <label for=${member}>${member === 'about' ? words.aboutText : words[member]}</label>
      <input
        id=${member}
        type=${member === 'surveyed' || member === 'validUntil' ? 'date' : 'text'}
        autocomplete="off"
        aria-invalid=${problem ? 'true' : nothing}
        aria-describedby=${described || nothing}
        .value=${typeof value === 'string' ? value : ''}
        @change=${(event: Event) => {
          const typed = (event.currentTarget as HTMLInputElement).value.trim();
          this.#tell(member, typed === '' ? undefined : typed);
        }}
      />
      ${problem ? html`<p id="${member}-problem" class="problem">${problem}</p>` : nothing}
      ${hint ? html`<p id="${member}-hint" class="hint">${hint}</p>` : nothing}
    </div>`;
  }

  #box() {
    const given = this.sheet?.bbox;
    const box: readonly unknown[] = Array.isArray(given) ? given : [];
    const problem = this.#problemOf('bbox');
    // With heights there are six numbers; those of the corners are shown.
    const half = box.length === 6 ? 3 : 2;
    const at = (side: number) => box[side < 2 ? side : half + side - 2];
    return html`<fieldset>
      <legend>${words.box}</legend>
      <div class="box">
        ${SIDES.map(
          (side, i) => html`<div class="field">
            <label for=${side}>${words[side]}</label>
            <input
              id=${side}
              inputmode="decimal"
              autocomplete="off"
              aria-invalid=${problem ? 'true' : nothing}
              aria-describedby=${problem ? 'bbox-problem' : 'bbox-hint'}
              .value=${at(i) === undefined ? '' : String(at(i))}
              @change=${(event: Event) => this.#boxTyped(i, [0, 1, 2, 3].map(at), event)}
            />
          </div>`,
        )}
      </div>
      ${problem ? html`<p id="bbox-problem" class="problem">${problem}</p>` : nothing}
      <p id="bbox-hint" class="hint">${words.boxHint}</p>
      <button
        type="button"
        aria-disabled=${this.extent ? nothing : 'true'}
        @click=${() => this.extent && this.#tell('bbox', this.extent)}
      >
        ${words.boxRound}
      </button>
    </fieldset>`;
  }

  #boxTyped(side: number, sides: readonly unknown[], event: Event): void {
    const typed = typedValue((event.currentTarget as HTMLInputElement).value) ?? '';
    const box = sides.map((value, i) => (i === side ? typed : (value ?? '')));
    this.#tell('bbox', box.every((value) => value === '') ? undefined : box);
  }

  #problemOf(member: string): string | undefined {
    const found = this.problems.find(({ path }) => path === member);
    return found && problemText(found);
  }

  #tell(member: string, value: unknown): void {
    this.dispatchEvent(new CustomEvent('member-edited', { detail: { member, value } }) satisfies MemberEdited);
  }
}

define('homeleg-waters-about', AboutForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-waters-about': AboutForm;
  }
}
