import { html } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { openFileStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';

/** A text, and where it is from. */
export interface NamedText {
  readonly text: string;
  readonly name: string;
}

/** The user opened a file, or pasted its text. */
export type TextRead = CustomEvent<NamedText>;

/** What is said about the text wanted. */
export interface SourceWords {
  readonly open: string;
  readonly paste: string;
  readonly pasteLabel: string;
  readonly pastedName: string;
  readonly read: string;
  readonly failed: string;
}

const NO_WORDS: SourceWords = { open: '', paste: '', pasteLabel: '', pastedName: '', read: '', failed: '' };

/**
 * @summary A text from a file, in whatever encoding, or from the clipboard. More buttons may stand beside it.
 * @fires text-read - the text is there
 */
export class TextSource extends SpeakingElement {
  static override styles = [tokens, controls, openFileStyles];

  @property({ attribute: false }) words: SourceWords = NO_WORDS;
  /** Kinds of files, as a file picker wants them. */
  @property() accept = '';
  @property({ type: Boolean }) primary = false;
  /** What the host found amiss with the text. */
  @property() message = '';

  @state() private failed = false;

  @query('input[type=file]') private picker!: HTMLInputElement;
  @query('textarea') private pasted!: HTMLTextAreaElement;

  override render() {
    const { words } = this;
    const message = this.failed ? words.failed : this.message;
    return html`
      <div class="buttons">
        <button type="button" class=${this.primary ? 'primary' : ''} @click=${() => this.picker.click()}>${words.open}</button>
        <input type="file" accept=${this.accept} tabindex="-1" aria-label=${words.open} @change=${this.#picked} />
        <slot></slot>
      </div>
      <details>
        <summary>${words.paste}</summary>
        <div>
          <label for="pasted">${words.pasteLabel}</label>
          <textarea id="pasted" rows="4" spellcheck="false"></textarea>
          <button type="button" @click=${() => this.#tell(this.pasted.value, words.pastedName)}>${words.read}</button>
        </div>
      </details>
      <p role="status" class="problem" ?hidden=${!message}>${message}</p>
    `;
  }

  async #picked(): Promise<void> {
    const file = this.picker.files?.[0];
    this.picker.value = '';
    if (!file) return;
    try {
      const { textOfBytes } = await import('../../core/files/text-of-bytes.ts');
      this.#tell(textOfBytes(new Uint8Array(await file.arrayBuffer())), file.name);
    } catch {
      this.failed = true;
    }
  }

  #tell(text: string, name: string): void {
    this.failed = false;
    this.dispatchEvent(new CustomEvent('text-read', { detail: { text, name } }) satisfies TextRead);
  }
}

define('homeleg-text-source', TextSource);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-text-source': TextSource;
  }
}
