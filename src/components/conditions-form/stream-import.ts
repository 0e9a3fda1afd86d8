import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { STREAM_UNITS, type StreamColumns, type StreamUnit } from '../../core/files/stream-table.ts';
import type { Problem } from '../../core/units/result.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { columnChoice, labelledChoice } from '../open-text/column-choice.ts';
import { problemList } from '../open-text/problem-list.ts';
import '../open-text/text-source.ts';
import type { TextRead } from '../open-text/text-source.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { openFileStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { problemText } from '../words/en-problems.ts';
import { streamTableWords as words } from '../words/en-streams.ts';
import { importStyles } from './import.styles.ts';
import { draftOf, draftOfTable, type PlaceDraft } from './place-draft.ts';

type Door = typeof import('./stream-door.ts');

/** Places that the user took over; what their file left out is still empty. */
export type PlacesTaken = CustomEvent<{ drafts: readonly PlaceDraft[] }>;

const COLUMNS = ['hour', 'direction', 'springs', 'neaps', 'name', 'lat', 'lon'] as const;
type Column = (typeof COLUMNS)[number];
const NEEDED: readonly Column[] = ['hour', 'direction', 'springs'];

/** What came out of a file. */
type Found =
  | { readonly ok: true; readonly drafts: readonly PlaceDraft[]; readonly strongest: number }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * @summary Reads places with streams from a file or the clipboard: what its columns mean is shown first.
 * @fires places-taken - the user takes the places over
 */
export class StreamImport extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, openFileStyles, importStyles];

  @property({ attribute: false }) measures: Measures = NAUTICAL;
  /** Names of places there are already. */
  @property({ attribute: false }) own: readonly string[] = [];

  @state() private columns: readonly string[] = [];
  @state() private first: readonly string[] = [];
  @state() private choice: Partial<Record<Column, string>> & { readonly unit?: StreamUnit } = {};
  @state() private name = '';
  @state() private message = '';
  /** A file of our own, whose columns nobody has to explain. */
  @state() private whole: Found | undefined;

  #door: Door | undefined;
  #text = '';

  override render() {
    return html`
      <p class="hint">${words.why}</p>
      <homeleg-text-source
        accept=".csv,.tsv,.txt,.json,text/csv,text/plain,application/json"
        .words=${words}
        .message=${this.message}
        @text-read=${({ detail: { text, name } }: TextRead) => this.#read(text, name)}
      ></homeleg-text-source>
      ${this.columns.length > 0 ? this.#mapping() : this.whole ? this.#outcome(this.whole) : nothing}
    `;
  }

  #mapping() {
    return html`
      <h4>${words.columnsOf(this.name)}</h4>
      <div class="fields wide">
        ${COLUMNS.map((column) => this.#column(column))}
        ${labelledChoice({
          id: 'unit',
          label: words.unit,
          options: [['', words.choose], ...STREAM_UNITS.map((unit) => [unit, words.units[unit]] as const)],
          now: this.choice.unit ?? '',
          chosen: (unit) => this.#chosen('unit', unit),
        })}
      </div>
      ${this.#outcome(this.#places())}
    `;
  }

  #column(column: Column) {
    return columnChoice(
      {
        id: column,
        label: words[column],
        now: this.choice[column] ?? '',
        chosen: (value) => this.#chosen(column, value),
      },
      { columns: this.columns, first: this.first },
      { none: NEEDED.includes(column) ? words.choose : words.none, sample: words.sample },
    );
  }

  #outcome(found: Found | string) {
    if (typeof found === 'string') return html`<p class="hint" role="status">${found}</p>${this.#buttons([])}`;
    if (!found.ok) {
      return html`<div role="status">
          <p class="problem">${words.refused}</p>
          ${problemList(found.problems, words.more)}
        </div>
        ${this.#buttons([])}`;
    }
    const { lang } = this.measures;
    const list = new Intl.ListFormat(lang);
    const names = found.drafts.map(({ name }) => name);
    const replaced = names.filter((name) => this.own.includes(name));
    return html`<p role="status">
        ${words.readable(list.format(names), this.measures.show('speed', found.strongest))}
        ${replaced.length > 0 ? words.replaces(list.format(replaced)) : nothing}
      </p>
      ${this.#buttons(found.drafts)}`;
  }

  #buttons(drafts: readonly PlaceDraft[]) {
    return html`<div class="buttons">
      ${
        drafts.length > 0
          ? html`<button type="button" class="primary" @click=${() => this.#take(drafts)}>${words.take(drafts.length)}</button>`
          : nothing
      }
      <button type="button" class="quiet" @click=${this.#closed}>${words.close}</button>
    </div>`;
  }

  /** The places, or what has still to be chosen. */
  #places(): Found | string {
    const { hour, direction, springs, unit, ...rest } = this.choice;
    if (!hour || !direction || !springs) return words.needColumns;
    if (!unit) return words.needUnit;
    const others = Object.fromEntries(Object.entries(rest).filter(([, column]) => column));
    const columns: StreamColumns = { hour, direction, springs, unit, ...others };
    const read = this.#door!.readStreamTable(this.#text, columns);
    if (!read.ok) return read;
    const bare = this.name.replace(/\.\w+$/, '');
    return {
      ok: true,
      drafts: read.value.map((place) => draftOfTable({ ...place, name: place.name || bare }, 0, this.measures)),
      strongest: Math.max(...read.value.flatMap(({ hours }) => hours.map((each) => each.springs))),
    };
  }

  async #read(text: string, name: string): Promise<void> {
    try {
      this.#door ??= await import('./stream-door.ts');
    } catch {
      this.message = this.say(() => words.failed);
      return;
    }
    this.#closed();
    this.name = name;
    this.#text = text;
    const refused = (problems: readonly Problem[]) =>
      this.say(() => problems.map((problem) => `${name}: ${problemText(problem)}.`).join(' '));
    if (this.#door.saysStreamPlaces(text)) {
      const read = this.#door.readStreamPlaces(text);
      if (!read.ok) {
        this.message = refused(read.problems.slice(0, 3));
        return;
      }
      this.whole = {
        ok: true,
        drafts: read.value.map((place) => draftOf(place, 0, this.measures)),
        strongest: Math.max(...read.value.flatMap(({ springs }) => springs.map(({ rate }) => rate))),
      };
      return;
    }
    const found = this.#door.tableHeadings(text);
    if (!found.ok) {
      this.message = refused(found.problems);
      return;
    }
    this.columns = found.value.columns;
    this.first = found.value.first;
    this.choice = this.#door.streamGuess(this.columns);
  }

  #chosen(key: Column | 'unit', value: string): void {
    this.choice = { ...this.choice, [key]: value };
  }

  #take(drafts: readonly PlaceDraft[]): void {
    this.#closed();
    this.dispatchEvent(new CustomEvent('places-taken', { detail: { drafts } }) satisfies PlacesTaken);
  }

  #closed(): void {
    this.columns = [];
    this.whole = undefined;
    this.message = '';
  }
}

define('homeleg-stream-import', StreamImport);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-stream-import': StreamImport;
  }
}
