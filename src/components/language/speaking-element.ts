import { LitElement } from 'lit';
import { ENGLISH, type Language, speak, speakOn } from '../words/spoken.ts';
import { fetchLanguage, languageNow } from './languages.ts';
import { nearestLang } from './nearest-lang.ts';

/**
 * An element that speaks the language of the nearest `lang` around it: whatever it renders, it renders in that language.
 * It appears once its words are there. Outside of rendering the language is that of the element touched last.
 *
 * @attr lang - language of words and figures, such as `de` or `de-AT`; without it, that of the nearest `lang` around
 * @cssprop --homeleg-paper - ground of the element
 * @cssprop --homeleg-raised - ground of cards, fields and buttons
 * @cssprop --homeleg-ink - text
 * @cssprop --homeleg-muted - hints and lesser text
 * @cssprop --homeleg-line - rules between things
 * @cssprop --homeleg-edge - borders of fields and buttons; 3:1 against the ground
 * @cssprop --homeleg-accent - lines, links and pressed buttons; 4.5:1 against the ground
 * @cssprop --homeleg-on-accent - text on the accent; 4.5:1 against it
 * @cssprop --homeleg-go - the answer that the reserve holds, always with words
 * @cssprop --homeleg-doubt - the answer that it is not sure enough, and warnings
 * @cssprop --homeleg-stop - the answer that it does not fit, and faults
 * @cssprop --homeleg-water - water on the map
 * @cssprop --homeleg-land - land on the map
 * @cssprop --homeleg-radius - corners
 * @cssprop --homeleg-gap - space between things
 * @cssprop --homeleg-font - typeface; without it, that of the page
 */
export class SpeakingElement extends LitElement {
  #language: Language = ENGLISH;
  #coming: Promise<void> | undefined;

  static override get observedAttributes(): string[] {
    // biome-ignore lint/complexity/noThisInStatic: each element has attributes of its own
    return [...super.observedAttributes, 'lang'];
  }

  /** By which numbers and dates are written here, such as "de-AT". */
  protected get language(): string {
    return this.#language.tag;
  }

  /** For words said after an `await` that nobody's touch began. */
  protected say<T>(words: () => T): T {
    return speak(this.#language, words);
  }

  override connectedCallback(): void {
    listeners.set(this, () => this.#listen());
    watch();
    this.#listen();
    super.connectedCallback();
  }

  override disconnectedCallback(): void {
    listeners.delete(this);
    if (listeners.size === 0) unwatch();
    super.disconnectedCallback();
  }

  override attributeChangedCallback(name: string, before: string | null, now: string | null): void {
    super.attributeChangedCallback(name, before, now);
    if (name === 'lang') listeners.get(this)?.();
  }

  protected override scheduleUpdate(): ReturnType<LitElement['scheduleUpdate']> {
    // Not first in English and then again.
    return this.#coming ? this.#coming.then(() => this.scheduleUpdate()) : super.scheduleUpdate();
  }

  protected override performUpdate(): void {
    speak(this.#language, () => super.performUpdate());
  }

  #listen(): void {
    const lang = nearestLang(this);
    const language = languageNow(lang);
    if (!language) {
      this.#coming ??= fetchLanguage(lang).then(() => {
        this.#coming = undefined;
        this.#listen();
      });
      return;
    }
    spokenBy.set(this, language);
    if (!touchedYet) speakOn(language);
    if (language === this.#language) return;
    this.#language = language;
    this.requestUpdate();
  }
}

/** What each one on the page does to learn its language anew. */
const listeners = new Map<SpeakingElement, () => void>();
const spokenBy = new WeakMap<EventTarget, Language>();
const TOUCHES = ['pointerdown', 'click', 'keydown', 'input', 'change', 'toggle', 'drop'];
let watching: MutationObserver | undefined;
let touchedYet = false;

/** One watch for the whole page, while there is an element on it: over changed languages, and over what is touched. */
function watch(): void {
  if (watching) return;
  watching = new MutationObserver(() => {
    for (const listen of listeners.values()) listen();
  });
  watching.observe(document, { subtree: true, attributeFilter: ['lang'] });
  for (const type of TOUCHES) window.addEventListener(type, touched, true);
}

function unwatch(): void {
  watching?.disconnect();
  watching = undefined;
  for (const type of TOUCHES) window.removeEventListener(type, touched, true);
}

function touched(event: Event): void {
  const language = event
    .composedPath()
    .map((at) => spokenBy.get(at))
    .find(Boolean);
  if (!language) return;
  touchedYet = true;
  speakOn(language);
}
