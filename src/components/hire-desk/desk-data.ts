import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { readDeskFile, writeDeskFile } from '../../core/files/desk-file.ts';
import { define } from '../define.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { saveFile } from '../planner/save-file.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import type { UnitSystem } from '../units/measures.ts';
import { fleetWords as words } from '../words/en-desk.ts';
import { plannerWords } from '../words/en-planner.ts';
import { problemAt } from '../words/en-problems.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import type { Desk } from './desk-keeper.ts';
import type { Replacement } from './desk-place.ts';
import { dayOf } from './desk-time.ts';
import { fleetCardStyles } from './fleet-card.styles.ts';

export type DeskReplaced = CustomEvent<{ by: Replacement }>;
export type UnitsChosen = CustomEvent<{ units: UnitSystem }>;

type Asking = 'import' | 'hires' | 'all';

/**
 * @summary What the computer keeps of a desk: save it, load it, clear it.
 * @fires desk-replaced - everything is to be replaced
 * @fires hires-cleared - hires, weights and contacts are to go
 * @fires units-chosen - other units
 */
export class DeskData extends SpeakingElement {
  static override styles = [tokens, controls, deskFormStyles, fleetCardStyles];

  @property({ attribute: false }) desk!: Desk;
  @property({ type: Number }) now = 0;

  @state() private asking: Asking | undefined;
  @state() private problems: readonly string[] = [];
  @state() private said = '';
  #coming: Replacement | undefined;

  override render() {
    return html`<section class="card" aria-label=${words.data}>
      <h2>${words.data}</h2>
      <p class="muted">${words.dataLead}</p>
      <homeleg-choice-field
        label=${words.units}
        .choices=${(['metric', 'nautical', 'imperial'] as const).map((value) => ({ value, label: plannerWords.unitNames[value] }))}
        .value=${this.desk.units}
        @choice-made=${(event: ChoiceMade) => this.#tell('units-chosen', { units: event.detail.value as UnitSystem })}
      ></homeleg-choice-field>
      <div class="row">
        <button type="button" @click=${this.#save}>${words.exportAll}</button>
        <label class="file">
          ${words.importAll}
          <input type="file" accept=".json,application/json" @change=${this.#opened} />
        </label>
      </div>
      ${this.problems.map((problem) => html`<p class="problem">${problem}</p>`)}
      ${this.asking === 'import' ? this.#ask(words.importAsk, words.importYes) : nothing}
      <div class="row">
        <button type="button" @click=${() => this.#askFor('hires')}>${words.wipe}</button>
        <button type="button" class="quiet" @click=${() => this.#askFor('all')}>${words.wipeAll}</button>
      </div>
      ${this.asking === 'hires' ? this.#ask(words.wipeAsk(this.#out), words.wipeYes) : nothing}
      ${this.asking === 'all' ? this.#ask(words.wipeAllAsk, words.wipeYes) : nothing}
      <p role="status">${this.said}</p>
    </section>`;
  }

  get #out(): number {
    return this.desk.hires.filter(({ leftAt, returnedAt }) => leftAt !== undefined && returnedAt === undefined).length;
  }

  #ask(question: string, yes: string) {
    return html`<div class="refused" role="alert">
      <p>${question}</p>
      <div class="row">
        <button type="button" @click=${this.#confirmed}>${yes}</button>
        <button type="button" @click=${() => (this.asking = undefined)}>${words.no}</button>
      </div>
    </div>`;
  }

  #askFor(asking: Asking): void {
    this.said = '';
    this.asking = asking;
  }

  #save(): void {
    const { fleet, demo, morning, hires, notes } = this.desk;
    const text = writeDeskFile({ ...(!demo && { fleet }), ...(morning && { morning }), hires, fuelNotes: notes });
    saveFile(`hire-desk-${dayOf(this.now)}.json`, text);
  }

  async #opened(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    const read = readDeskFile(await file.text());
    input.value = '';
    this.said = '';
    this.problems = read.ok ? [] : this.say(() => read.problems.slice(0, 8).map(problemAt));
    if (!read.ok) return;
    const { fleet, morning, hires, fuelNotes } = read.value;
    this.#coming = { singles: { fleet, morning, units: this.desk.units }, hires, notes: fuelNotes };
    this.asking = 'import';
  }

  #confirmed(): void {
    const { asking } = this;
    this.asking = undefined;
    if (asking === 'import' && this.#coming) {
      this.#tell('desk-replaced', { by: this.#coming });
      this.said = words.importDone;
    } else if (asking === 'hires') {
      this.#tell('hires-cleared', undefined);
      this.said = words.wipeDone;
    } else if (asking === 'all') {
      this.#tell('desk-replaced', { by: { singles: {}, hires: [], notes: [] } });
      this.said = words.wipeDone;
    }
    this.#coming = undefined;
  }

  #tell(name: 'desk-replaced' | 'hires-cleared' | 'units-chosen', detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true }));
  }
}

define('homeleg-desk-data', DeskData);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-desk-data': DeskData;
  }
}
