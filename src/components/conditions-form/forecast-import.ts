import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { ForecastColumns } from '../../core/files/forecast-table.ts';
import type { Problem, Result } from '../../core/units/result.ts';
import { WIND_UNITS, type WindUnit } from '../../core/units/wind-speed.ts';
import { secondsOf, timeAt } from '../../core/water/clock.ts';
import type { WindAt } from '../../core/water/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { columnChoice, labelledChoice } from '../open-text/column-choice.ts';
import { problemList } from '../open-text/problem-list.ts';
import '../open-text/text-source.ts';
import type { NamedText, TextRead } from '../open-text/text-source.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { openFileStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { forecastWords as words } from '../words/en-forecast.ts';
import { problemText } from '../words/en-problems.ts';
import { importStyles } from './import.styles.ts';
import { dayAndClock, offsetText, placeClock } from './place-clock.ts';

type Door = typeof import('./forecast-door.ts');

/** Winds that the user took over. */
export type ForecastTaken = CustomEvent<{ forecast: readonly WindAt[] }>;

/** What the user chose of the columns; '' stands for not chosen. */
interface Choice {
  readonly time: string;
  readonly direction: string;
  readonly speed: string;
  readonly gust: string;
  readonly speedUnit: WindUnit | '';
  readonly gustUnit: WindUnit | '';
  readonly directionMeans: 'from' | 'towards';
  readonly offset: string;
}

const COLUMNS = ['time', 'direction', 'speed', 'gust'] as const;
const UNCHOSEN: Choice = {
  time: '',
  direction: '',
  speed: '',
  gust: '',
  speedUnit: '',
  gustUnit: '',
  directionMeans: 'from',
  offset: '',
};
/** A time that says its zone, or counts seconds since 1970. */
const ZONED = /(?:Z|UTC|[+-]\d\d(?::?\d\d)?)\s*$|^\d{9,13}$/i;

/**
 * @summary Reads a forecast from a file, the clipboard or an answer of the web: what its columns mean is shown and can be
 * changed before anything is taken over.
 * @fires forecast-taken - the user takes the winds over
 */
export class ForecastImport extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, openFileStyles, importStyles];

  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property() departure: string | undefined;
  @property() timezone: string | undefined;
  /** A text that is there already, with where it is from. */
  @property({ attribute: false }) given: NamedText | undefined;

  @state() private columns: readonly string[] = [];
  @state() private first: readonly string[] = [];
  @state() private choice: Choice = UNCHOSEN;
  @state() private name = '';
  @state() private message = '';

  #door: Door | undefined;
  #text = '';

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('given') && this.given) void this.#read(this.given.text, this.given.name);
  }

  override render() {
    return html`
      <p class="hint">${words.why}</p>
      <homeleg-text-source
        accept=".csv,.tsv,.txt,.json,text/csv,text/plain,application/json"
        .words=${words}
        .message=${this.message}
        @text-read=${({ detail: { text, name } }: TextRead) => this.#read(text, name)}
      ></homeleg-text-source>
      ${this.columns.length > 0 ? this.#mapping() : nothing}
    `;
  }

  #mapping() {
    return html`
      <h4>${words.columnsOf(this.name)}</h4>
      <div class="fields wide">
        ${COLUMNS.map((column) => this.#column(column))}
        ${this.#select(words.means, 'directionMeans', [
          ['from', words.meansFrom],
          ['towards', words.meansTowards],
        ])}
        ${this.#asksOffset ? this.#offset() : nothing}
      </div>
      ${this.#outcome()}
    `;
  }

  #column(column: (typeof COLUMNS)[number]) {
    const unit = column === 'speed' ? 'speedUnit' : column === 'gust' ? 'gustUnit' : undefined;
    return columnChoice(
      this.#choice(column, words[column]),
      { columns: this.columns, first: this.first },
      { none: column === 'gust' ? words.none : words.choose, sample: words.sample },
      unit && {
        ...this.#choice(unit, words.unit(words[column])),
        options: [['', words.choose], ...WIND_UNITS.map((each) => [each, words.units[each]] as const)],
      },
    );
  }

  #offset() {
    const place = this.#placeOffset;
    return this.#select(words.offset, 'offset', [
      ['', words.choose],
      ['Z', words.offsetUtc],
      ...(place === 'Z' ? [] : [[place, words.offsetPlace(offsetText(this.#offsetSeconds))] as const]),
    ]);
  }

  #select(label: string, key: keyof Choice, options: readonly (readonly [string, string])[]) {
    return labelledChoice({ ...this.#choice(key, label), options });
  }

  #choice(key: keyof Choice, label: string) {
    return { id: key, label, now: this.choice[key], chosen: (value: string) => this.#chosen(key, value) };
  }

  #outcome() {
    const found = this.#winds();
    if (typeof found === 'string') return html`<p class="hint" role="status">${found}</p>${this.#buttons(undefined)}`;
    if (!found.ok) return html`${this.#problems(found.problems)}${this.#buttons(undefined)}`;
    const kept = this.#door!.aroundTrip(found.value, this.departure);
    const clock = placeClock(this);
    const told = (wind: WindAt | undefined) => (wind ? dayAndClock(wind.time, clock, this.measures.lang) : '');
    const most = found.value.reduce((a, b) => (b.speed > a.speed ? b : a));
    return html`<p role="status">
        ${words.readable(found.value.length, told(kept[0]), told(kept.at(-1)))}
        ${kept.length < found.value.length ? words.kept(kept.length) : nothing}
        ${words.strongest(this.measures.show('speed', most.speed))}
      </p>
      ${this.#buttons(kept)}`;
  }

  #problems(problems: readonly Problem[]) {
    return html`<div role="status">
      <p class="problem">${words.problems}</p>
      ${problemList(problems, words.more)}
    </div>`;
  }

  #buttons(winds: readonly WindAt[] | undefined) {
    return html`<div class="buttons">
      ${
        winds
          ? html`<button type="button" class="primary" @click=${() => this.#take(winds)}>${words.take(winds.length)}</button>`
          : nothing
      }
      <button type="button" class="quiet" @click=${this.#closed}>${words.close}</button>
    </div>`;
  }

  /** The winds, or what has still to be chosen. */
  #winds(): Result<readonly WindAt[]> | string {
    const { time, direction, speed, gust, speedUnit, gustUnit, directionMeans, offset } = this.choice;
    if (!time || !direction || !speed) return words.needColumns;
    if (!speedUnit) return words.needUnit;
    if (this.#asksOffset && !offset) return words.needOffset;
    const columns: ForecastColumns = {
      time,
      direction,
      speed,
      speedUnit,
      directionMeans,
      ...(gust && { gust, gustUnit: gustUnit || speedUnit }),
      ...(offset && { offset }),
    };
    return this.#door!.readForecastTable(this.#text, columns);
  }

  get #asksOffset(): boolean {
    const at = this.columns.indexOf(this.choice.time);
    return at >= 0 && !ZONED.test(this.first[at] ?? '');
  }

  get #offsetSeconds(): number {
    const { departure } = this;
    return placeClock(this).offsetAt(departure === undefined ? Date.now() / 1000 : secondsOf(departure));
  }

  get #placeOffset(): string {
    return timeAt(0, this.#offsetSeconds).slice(19);
  }

  async #read(text: string, name: string): Promise<void> {
    try {
      this.#door ??= await import('./forecast-door.ts');
    } catch {
      this.message = this.say(() => words.failed);
      return;
    }
    const found = this.#door.forecastHeadings(text);
    this.name = name;
    this.#text = text;
    if (!found.ok) {
      this.columns = [];
      this.message = this.say(() => found.problems.map((problem) => `${name}: ${problemText(problem)}.`).join(' '));
      return;
    }
    this.message = '';
    this.columns = found.value.columns;
    this.first = found.value.first;
    this.choice = { ...UNCHOSEN, ...this.#door.forecastGuess(this.columns, this.first) };
  }

  #chosen(key: keyof Choice, value: string): void {
    this.choice = { ...this.choice, [key]: value };
  }

  #take(forecast: readonly WindAt[]): void {
    this.#closed();
    this.dispatchEvent(
      new CustomEvent('forecast-taken', { detail: { forecast }, bubbles: true }) satisfies ForecastTaken,
    );
  }

  #closed(): void {
    this.columns = [];
    this.message = '';
  }
}

define('homeleg-forecast-import', ForecastImport);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-forecast-import': ForecastImport;
  }
}
