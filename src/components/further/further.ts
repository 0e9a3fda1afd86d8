import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Waters } from '../../core/route/waters.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../from-here/from-here.ts';
import '../how-sure/how-sure.ts';
import '../minimums/minimums.ts';
import '../mishaps/mishaps.ts';
import '../speed-choice/speed-choice.ts';
import '../start-times/start-times.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { furtherWords as words } from '../words/en-further.ts';
import { Ask } from './ask.ts';
import { furtherStyles } from './further.styles.ts';

const SECTIONS = ['minimums', 'start', 'mishaps', 'sure', 'speed', 'here'] as const;
type Section = (typeof SECTIONS)[number];

/**
 * @summary What a trip can be asked beyond its answer, in closed sections: each is worked out only while it is open, and
 * anew when the plan has settled. The least aboard on the way is printed with the trip.
 */
export class Further extends SpeakingElement {
  static override styles = [tokens, controls, furtherStyles];

  /** The trip as planned: measured, and with the host's limits. */
  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) plan: Plan | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  @property({ attribute: false }) watersFile: WatersFile | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** False while figures are still being worked out: the last answers stand. */
  @property({ type: Boolean }) settled = false;

  @state() private open: ReadonlySet<Section> = new Set();
  /** What each section was last given. */
  @state() private given: ReadonlyMap<Section, Ask> = new Map();

  #ask: Ask | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('beforeprint', this.#toPrint);
    this.#giveNext();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('beforeprint', this.#toPrint);
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  protected override willUpdate(): void {
    const { trip, plan } = this;
    if (!plan || !trip) {
      if (this.given.size > 0) this.given = new Map();
      this.#ask = undefined;
    } else if (this.settled && plan !== this.#ask?.plan) {
      this.#ask = new Ask(trip, plan, this.waters, this.watersFile);
      this.#giveNext();
    }
  }

  protected override updated(): void {
    this.#giveNext();
  }

  override render() {
    return html`${SECTIONS.map((section) => this.#section(section))}
      <p class="cautions">${cautions().join(' ')}</p>`;
  }

  #section(section: Section) {
    return html`<details
      class=${section}
      @toggle=${(event: Event) => this.#toggled(section, (event.currentTarget as HTMLDetailsElement).open)}
    >
      <summary><h3>${words[section]}</h3></summary>
      <div class="inside">${this.#inside(section)}</div>
    </details>`;
  }

  #inside(section: Section) {
    const { measures } = this;
    if (!this.plan) return html`<p class="hint">${words.empty}</p>`;
    const ask = this.given.get(section);
    if (!ask) return this.open.has(section) ? html`<p class="hint">${words.working}</p>` : nothing;
    switch (section) {
      case 'minimums':
        return html`<homeleg-minimums .ask=${ask} .measures=${measures}></homeleg-minimums>`;
      case 'start':
        return html`<homeleg-start-times .ask=${ask} .measures=${measures}></homeleg-start-times>`;
      case 'mishaps':
        return html`<homeleg-mishaps .ask=${ask} .measures=${measures}></homeleg-mishaps>`;
      case 'sure':
        return html`<homeleg-how-sure .ask=${ask} .measures=${measures}></homeleg-how-sure>`;
      case 'speed':
        return html`<homeleg-speed-choice .ask=${ask} .measures=${measures}></homeleg-speed-choice>`;
      case 'here':
        return html`<homeleg-from-here .ask=${ask} .measures=${measures}></homeleg-from-here>`;
      default:
        return section satisfies never;
    }
  }

  #toggled(section: Section, open: boolean): void {
    const sections = new Set(this.open);
    if (open) sections.add(section);
    else sections.delete(section);
    this.open = sections;
  }

  /** Gives the open sections the trip as it stands, one in each turn of the page, so that none is kept waiting long. */
  #giveNext(): void {
    if (this.#timer !== undefined || !this.isConnected || !this.#nextStale()) return;
    this.#timer = setTimeout(() => {
      this.#timer = undefined;
      const next = this.#nextStale();
      if (next) this.#give(next);
    }, 0);
  }

  #nextStale(): Section | undefined {
    const ask = this.#ask;
    return ask && SECTIONS.find((section) => this.open.has(section) && this.given.get(section) !== ask);
  }

  #give(section: Section): void {
    if (this.#ask) this.given = new Map(this.given).set(section, this.#ask);
  }

  readonly #toPrint = (): void => {
    if (this.given.get('minimums') !== this.#ask) this.#give('minimums');
  };
}

define('homeleg-further', Further);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-further': Further;
  }
}
