import { html, nothing } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { readSavedFile, type SavedBoat, type SavedEntry, savedFileText } from '../../core/files/saved-file.ts';
import type { Waters } from '../../core/route/waters.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { saveFile } from '../planner/save-file.ts';
import { whenHeld } from '../store/open-store.ts';
import { type Unkept, whyUnkept } from '../store/why-unkept.ts';
import { controls } from '../theme/controls.styles.ts';
import { filePickerStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { companyWords } from '../words/en-company.ts';
import { problemText } from '../words/en-problems.ts';
import { savedWords as words } from '../words/en-saved.ts';
import './company.ts';
import './compare-saved.ts';
import { freeName } from './names.ts';
import { savedStyles } from './saved.styles.ts';
import { keepEntries, removeEntry, type Saved, savedEntries } from './saved-store.ts';

/** A saved trip or boat to take the place of the one on screen. */
export type SavedOpened = CustomEvent<{ name: string } & ({ trip: Trip } | { boat: SavedBoat })>;

const LONGEST_NAME = 120;

/**
 * @summary Trips and boats kept on this device: save, open, rename, duplicate, delete and put back, all of them as one
 * file, and two plans side by side.
 * @fires saved-opened - one of them is to be on screen
 */
export class SavedTrips extends SpeakingElement {
  static override styles = [tokens, controls, filePickerStyles, savedStyles];

  /** As entered; as planned with its plan. */
  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) planned: Trip | undefined;
  @property({ attribute: false }) plan: Plan | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  @property({ attribute: false }) prepared: (trip: Trip) => Trip | undefined = (trip) => trip;
  /** Trials can be worked out at once. */
  @property({ type: Boolean }) fitted = false;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private entries: readonly Saved[] = [];
  @state() private unreadable = 0;
  @state() private name: string | undefined;
  @state() private renaming: { id: string; name: string } | undefined;
  @state() private removed: Saved | undefined;
  @state() private said = '';
  @state() private held = false;
  @state() private unkept: { why: Unkept; entries: readonly SavedEntry[] } | undefined;

  @query('input[type="file"]') private picker!: HTMLInputElement;

  #unhear: (() => void) | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('visibilitychange', this.#look);
    this.#unhear = whenHeld((held) => {
      this.held = held;
    });
    this.#look();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('visibilitychange', this.#look);
    this.#unhear?.();
  }

  /** Another tab may have changed them. */
  readonly #look = (): void => {
    if (document.visibilityState === 'visible') void this.#try([], async () => undefined);
  };

  override render() {
    const { trip } = this;
    if (!trip) return nothing;
    return html`
      <p class="hint">${words.about}</p>
      <div class="buttons">
        <label>
          ${words.name}
          <input maxlength=${LONGEST_NAME} .value=${this.#nameNow(trip)} @input=${this.#nameTyped} />
        </label>
        <button type="button" class="primary" @click=${() => this.#save(this.#asTrip(trip))}>${words.saveTrip}</button>
        <button type="button" @click=${() => this.#save(this.#asBoat(trip))}>${words.saveBoat}</button>
      </div>
      <p class="said" role="status">
        ${this.said}${
          this.removed
            ? html` <button type="button" class="quiet" @click=${this.#putBack}>${words.putBack}</button>`
            : nothing
        }
      </p>
      ${this.#trouble()}
      ${
        this.entries.length === 0
          ? html`<p class="hint">${words.empty}</p>`
          : html`<ul>${this.entries.map((entry) => this.#entry(entry))}</ul>`
      }
      ${this.unreadable > 0 ? html`<p class="hint">${words.unreadable(this.unreadable)}</p>` : nothing}
      <div class="buttons file">
        <button type="button" ?disabled=${this.entries.length === 0} @click=${() => this.#toFile(this.entries)}>
          ${words.exportAll}
        </button>
        <button type="button" @click=${() => this.picker.click()}>${words.importAll}</button>
        <input
          type="file"
          accept=".json,application/json"
          tabindex="-1"
          aria-label=${words.importAll}
          @change=${this.#filePicked}
        />
      </div>
      ${
        this.entries.some(({ kind }) => kind === 'trip')
          ? html`<details>
              <summary>${words.compare}</summary>
              <homeleg-compare-saved
                .entries=${this.entries}
                .trip=${this.planned}
                .plan=${this.plan}
                .waters=${this.waters}
                .prepared=${this.prepared}
                ?fitted=${this.fitted}
                .measures=${this.measures}
              ></homeleg-compare-saved>
            </details>`
          : nothing
      }
      <details>
        <summary>${companyWords.title}</summary>
        <homeleg-company
          .entries=${this.entries}
          .trip=${this.plan && this.planned}
          .waters=${this.waters}
          .prepared=${this.prepared}
          .measures=${this.measures}
        ></homeleg-company>
      </details>
    `;
  }

  #trouble() {
    const { unkept } = this;
    if (this.held) return html`<p class="problem" role="alert">${words.held}</p>`;
    if (!unkept) return nothing;
    return html`<p class="problem" role="alert">
      ${words.unkept[unkept.why]}
      ${
        unkept.entries.length > 0
          ? html`<button type="button" class="quiet" @click=${() => this.#toFile(unkept.entries)}>${words.toFile}</button>`
          : nothing
      }
    </p>`;
  }

  #entry(entry: Saved) {
    const { id, name, kind } = entry;
    const button = (action: string, press: () => void) => html`<button
      type="button"
      class="quiet"
      aria-label=${words.ofEntry(action, name)}
      @click=${press}
    >${action}</button>`;
    const day = new Intl.DateTimeFormat(this.language, { dateStyle: 'medium', timeStyle: 'short' });
    const at = Date.parse(entry.savedAt);
    return html`<li>
      ${
        this.renaming?.id === id
          ? this.#renameForm(entry)
          : html`<span class="called">
              ${name}
              <span class="sub">${[words.kinds[kind], Number.isNaN(at) ? '' : day.format(at)].filter(Boolean).join(' · ')}</span>
            </span>`
      }
      <span class="buttons">
        ${button(words.open, () => this.#open(entry))}
        ${button(words.rename, () => this.#rename(entry))}
        ${button(words.duplicate, () => this.#duplicate(entry))}
        ${button(words.remove, () => this.#remove(entry))}
      </span>
    </li>`;
  }

  #renameForm(entry: Saved) {
    const typed = (event: Event) => {
      this.renaming = { id: entry.id, name: (event.target as HTMLInputElement).value };
    };
    const done = (event: Event) => {
      event.preventDefault();
      const name = this.renaming?.name.trim();
      this.renaming = undefined;
      if (name && name !== entry.name) void this.#try([entry], () => keepEntries([{ ...entry, name }]));
    };
    return html`<form class="rename" @submit=${done}>
      <label>
        ${words.newName(entry.name)}
        <input maxlength=${LONGEST_NAME} .value=${this.renaming?.name ?? entry.name} @input=${typed} />
      </label>
      <button type="submit">${words.renameDone}</button>
    </form>`;
  }

  #nameNow(trip: Trip): string {
    return this.name ?? trip.name ?? trip.craft.hull.name;
  }

  #nameTyped(event: Event): void {
    this.name = (event.target as HTMLInputElement).value;
  }

  #asTrip(trip: Trip): SavedEntry {
    return { kind: 'trip', name: this.#nameNow(trip), savedAt: new Date().toISOString(), trip };
  }

  #asBoat({ craft: { calibration: _, ...craft }, trials }: Trip): SavedEntry {
    const name = this.name ?? craft.hull.name;
    return { kind: 'boat', name, savedAt: new Date().toISOString(), boat: { craft, ...(trials && { trials }) } };
  }

  async #save(entry: SavedEntry): Promise<void> {
    const name = freeName(entry.name.trim() || words.kinds[entry.kind], this.#names);
    const kept = await this.#try([entry], () => keepEntries([{ ...entry, name, id: crypto.randomUUID() }]));
    if (!kept) return;
    this.name = undefined;
    this.said = this.say(() => words.saved(name));
  }

  #duplicate(entry: Saved): void {
    void this.#save(entry);
  }

  async #remove(entry: Saved): Promise<void> {
    if (!(await this.#try([], () => removeEntry(entry.id)))) return;
    this.removed = entry;
    this.said = this.say(() => words.removed(entry.name));
  }

  async #putBack(): Promise<void> {
    const { removed } = this;
    if (removed) await this.#try([removed], () => keepEntries([removed]));
  }

  async #rename(entry: Saved): Promise<void> {
    this.renaming = { id: entry.id, name: entry.name };
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLInputElement>('.rename input')?.select();
  }

  #open(entry: Saved): void {
    const { name } = entry;
    const detail = entry.kind === 'trip' ? { name, trip: entry.trip } : { name, boat: entry.boat };
    this.said = '';
    this.dispatchEvent(new CustomEvent('saved-opened', { detail, bubbles: true }) satisfies SavedOpened);
  }

  #toFile(entries: readonly SavedEntry[]): void {
    // Ids mean nothing on another device.
    const plain = entries.map((entry) => {
      const { id: _, ...rest } = entry as Saved;
      return rest;
    });
    saveFile('saved-trips-and-boats.json', savedFileText(plain));
  }

  async #filePicked(): Promise<void> {
    const file = this.picker.files?.[0];
    this.picker.value = '';
    if (!file) return;
    const read = readSavedFile(await file.text().catch(() => ''));
    if (!read.ok) {
      const [first] = read.problems;
      this.said = this.say(() => `${words.notImported} ${first ? problemText(first) : ''}.`);
      return;
    }
    const { entries, problems } = read.value;
    const contents = new Set(this.entries.map(contentOf));
    const fresh = entries.filter((entry) => !contents.has(contentOf(entry)));
    const names = [...this.#names];
    const added = fresh.map((entry): Saved => {
      const name = freeName(entry.name || this.say(() => words.kinds[entry.kind]), names);
      names.push(name);
      return { ...entry, name, id: crypto.randomUUID() };
    });
    if (!(await this.#try(added, () => keepEntries(added)))) return;
    const left = new Set(problems.map(({ path }) => path.split('.')[1])).size;
    this.said = this.say(() => words.imported(added.length, left));
  }

  get #names(): readonly string[] {
    return this.entries.map(({ name }) => name);
  }

  /** Does something with what is kept and shows it anew; what could not be kept is offered as a file. */
  async #try(entries: readonly SavedEntry[], work: () => Promise<void>): Promise<boolean> {
    this.removed = undefined;
    this.said = '';
    try {
      await work();
      const kept = await savedEntries();
      this.entries = kept.entries;
      this.unreadable = kept.unreadable;
      this.unkept = undefined;
      return true;
    } catch (error) {
      this.unkept = { why: whyUnkept(error), entries };
      return false;
    }
  }
}

/** What an entry is, whatever it is called and whenever it was saved. */
function contentOf(entry: SavedEntry): string {
  return JSON.stringify(entry.kind === 'trip' ? entry.trip : entry.boat);
}

define('homeleg-saved', SavedTrips);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-saved': SavedTrips;
  }
}
