import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Waters } from '../../core/route/waters.ts';
import { type LatestStart, latestStart } from '../../core/trip/latest-start.ts';
import { type Minimum, minimums } from '../../core/trip/minimums.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { standingOf } from '../../core/trip/standing.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { Unhurried } from '../load-advice/unhurried.ts';
import type { TripWay } from '../planner/planner-events.ts';
import { saveFile } from '../planner/save-file.ts';
import { tellLeft } from '../planner/trip-left.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { passageWords as words } from '../words/en-passage.ts';
import { canSend, copied, sent } from './hand-on.ts';
import { messageText, overdueCalendar } from './overdue.ts';
import {
  keepNotes,
  keptNotes,
  LONGEST_NOTE,
  MARGINS,
  type NoteField,
  notesUnread,
  withoutTyped,
} from './passage-notes.ts';
import { passagePlanStyles } from './passage-plan.styles.ts';
import { dueBack, type Passage, passageSheet, sheetText } from './passage-sheet.ts';
import { printSheet } from './print-sheet.ts';
import './sheet-paper.ts';

const LONG: readonly NoteField[] = ['who', 'gear'];
const ENDINGS = { calendar: 'ics', text: 'txt', gpx: 'gpx', geojson: 'geojson' } as const satisfies Partial<
  Record<TripWay, string>
>;

/**
 * @summary The passage plan of a trip: what is typed here stays on the device; print, message, calendar and files of the
 * route. On the paper of the whole plan it stands without the points, which are there already.
 * @fires trip-left - it was printed, sent, copied or saved
 */
export class PassagePlan extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, passagePlanStyles];

  /** As planned: measured, and with the limits of the host. */
  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) plan: Plan | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;
  @property({ type: Boolean }) settled = false;
  /** Nothing is worked out while nobody sees it. */
  @property({ type: Boolean }) shown = false;

  @state() private notes = keptNotes();
  readonly #unread = notesUnread();
  @state() private said = '';
  @state() private unkept = false;
  /** The message to mark and copy by hand. */
  @state() private byHand = '';

  readonly #latest = new Unhurried<LatestStart | undefined>(this);
  #minimums: readonly Minimum[] = [];
  #madeFor: Plan | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('beforeprint', this.#toPrint);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('beforeprint', this.#toPrint);
    this.#madeFor = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('plan') && changed.get('plan') && this.plan !== this.#madeFor) this.said = '';
    if (this.shown && this.settled) this.#make();
  }

  /** What the plan of the moment needs beyond itself. */
  #make(): void {
    const { trip, plan, waters } = this;
    if (!trip || !plan || plan === this.#madeFor) return;
    this.#madeFor = plan;
    const standing = standingOf(trip, waters);
    this.#minimums = standing.ok ? minimums(standing.value) : [];
    this.#latest.result = undefined;
    this.#latest.start(() => latestStart(trip, waters, plan));
  }

  override render() {
    const passage = this.#passage(true);
    if (!passage || this.#madeFor !== this.plan) {
      return html`<h3>${words.title}</h3>
        <p class="empty">${words.empty}</p>`;
    }
    const paper = passageSheet(this.#passage(this.notes.onPaper) ?? passage);
    return html`
      <h3>${words.title}</h3>
      <p class="hint">${words.about}</p>
      ${passage.plan.verdict === 'no-go' ? html`<p class="note">${words.noFit}</p>` : nothing}
      ${this.#form(passage)} ${this.#buttons(passage)}
      <p class="said" role="status">${this.said}</p>
      ${
        this.byHand
          ? html`<textarea class="message" readonly aria-label=${words.copy} .value=${this.byHand}></textarea>`
          : nothing
      }
      <details class="preview">
        <summary>${words.preview}</summary>
        <homeleg-sheet-paper .sheet=${paper}></homeleg-sheet-paper>
      </details>
      <homeleg-sheet-paper class="paper" without-points .sheet=${paper}></homeleg-sheet-paper>
    `;
  }

  #form(passage: Passage) {
    const { notes, measures } = this;
    const { departure } = passage.trip.conditions;
    const back = (margin: number) => measures.clock(departure, dueBack({ ...passage, notes: { ...notes, margin } }));
    return html`
      ${departure ? nothing : html`<p class="hint">${words.noDeparture}</p>`}
      <div class="fields wide">
        ${(['contact', 'rescue', 'who', 'reach', 'marks', 'vehicle', 'gear'] as const).map((field) => this.#field(field))}
        <div class="field">
          <label for="margin">${words.margin}</label>
          <select id="margin" @change=${this.#marginPicked}>
            ${MARGINS.map(
              (minutes) => html`<option value=${minutes} ?selected=${minutes === notes.margin}>
                ${minutes === 0 ? words.marginOn(back(0)) : words.marginAfter(back(minutes), minutes)}
              </option>`,
            )}
          </select>
        </div>
      </div>
      <div>
        ${this.#tick('onPaper', words.onPaper)} ${this.#tick('inMessages', words.inMessages)}
      </div>
      ${this.#unread ? html`<p class="hint">${words.unread}</p>` : nothing}
      ${this.unkept ? html`<p class="problem">${words.notKept}</p>` : nothing}
      ${this.#latest.working ? html`<p class="hint">${words.working}</p>` : nothing}
    `;
  }

  #field(field: NoteField) {
    const text = this.notes[field];
    const typed = (event: Event) => this.#typed(field, (event.target as HTMLInputElement).value);
    return html`<div class="field">
      <label for=${field}>${words[field]}</label>
      ${
        LONG.includes(field)
          ? html`<textarea id=${field} maxlength=${LONGEST_NOTE} .value=${text} @input=${typed}></textarea>`
          : html`<input
              id=${field}
              autocomplete="off"
              maxlength=${LONGEST_NOTE}
              aria-describedby=${field === 'rescue' ? 'rescue-hint' : nothing}
              .value=${text}
              @input=${typed}
            />`
      }
      ${field === 'rescue' ? html`<p class="hint" id="rescue-hint">${words.rescueHint}</p>` : nothing}
    </div>`;
  }

  #tick(which: 'onPaper' | 'inMessages', label: string) {
    const ticked = (event: Event) => this.#noted({ [which]: (event.target as HTMLInputElement).checked });
    return html`<label class="check">
      <input type="checkbox" .checked=${this.notes[which]} @change=${ticked} /> <span>${label}</span>
    </label>`;
  }

  #buttons(passage: Passage) {
    const calendar = passage.trip.conditions.departure !== undefined;
    return html`<div class="buttons">
      <button type="button" class="primary" @click=${this.#printPressed}>${words.print}</button>
      ${canSend() ? html`<button type="button" @click=${this.#sendPressed}>${words.send}</button>` : nothing}
      <button type="button" @click=${this.#copyPressed}>${words.copy}</button>
      ${calendar ? html`<button type="button" @click=${this.#calendarPressed}>${words.calendar}</button>` : nothing}
      <button type="button" @click=${this.#textPressed}>${words.saveText}</button>
      <button type="button" @click=${this.#gpxPressed}>${words.gpx}</button>
      <button type="button" @click=${this.#geoJsonPressed}>${words.geojson}</button>
    </div>`;
  }

  #passage(typed: boolean): Passage | undefined {
    const { trip, plan, measures, notes } = this;
    if (!trip || !plan) return undefined;
    return {
      trip,
      plan,
      measures,
      minimums: this.#minimums,
      latest: this.#latest.result,
      notes: typed ? notes : withoutTyped(notes),
    };
  }

  /** What goes to others: with what was typed only where that was ticked, and never the title, which may name people. */
  #forOthers(): Passage | undefined {
    const passage = this.#passage(this.notes.inMessages);
    if (!passage || this.notes.inMessages) return passage;
    const { name: _, ...trip } = passage.trip;
    return { ...passage, trip };
  }

  #typed(field: NoteField, text: string): void {
    this.#noted({ [field]: text });
  }

  #marginPicked(event: Event): void {
    const margin = MARGINS.find((minutes) => String(minutes) === (event.target as HTMLSelectElement).value);
    if (margin !== undefined) this.#noted({ margin });
  }

  #noted(change: Partial<typeof this.notes>): void {
    this.notes = { ...this.notes, ...change };
    this.unkept = !keepNotes(this.notes);
  }

  #printPressed(): void {
    const passage = this.#passage(this.notes.onPaper);
    if (!passage) return;
    tellLeft(this, 'print');
    void printSheet(passageSheet(passage), this.language);
  }

  async #sendPressed(): Promise<void> {
    const passage = this.#forOthers();
    if (!passage) return;
    const text = messageText(passage);
    if (await sent({ title: words.title, text })) tellLeft(this, 'message');
    else await this.#copy(text);
  }

  async #copyPressed(): Promise<void> {
    const passage = this.#forOthers();
    if (passage) await this.#copy(messageText(passage));
  }

  async #copy(text: string): Promise<void> {
    const done = await copied(text);
    if (done) tellLeft(this, 'message');
    this.byHand = done ? '' : text;
    this.said = this.say(() => (done ? words.copied : words.copyByHand));
  }

  #calendarPressed(): void {
    const passage = this.#forOthers();
    const file = passage && overdueCalendar(passage, { at: Date.now() / 1000, uid: `${crypto.randomUUID()}@homeleg` });
    if (file) this.#save(file, 'calendar', 'text/calendar');
  }

  #textPressed(): void {
    const passage = this.#forOthers();
    if (passage) this.#save(sheetText(passageSheet(passage)), 'text', 'text/plain');
  }

  async #gpxPressed(): Promise<void> {
    if (!this.trip) return;
    const { name, route } = this.trip;
    const { gpxOfRoute } = await import('../../core/files/gpx-writer.ts');
    const [first] = route.waypoints;
    const closed = route.shape === 'loop' && first ? [...route.waypoints, first] : route.waypoints;
    this.#save(gpxOfRoute(name ?? this.say(() => words.title), closed), 'gpx', 'application/gpx+xml');
  }

  async #geoJsonPressed(): Promise<void> {
    if (!this.trip) return;
    const { name, route } = this.trip;
    const { geoJsonOfRoute } = await import('../../core/files/route-geojson.ts');
    const text = JSON.stringify(geoJsonOfRoute(name ?? this.say(() => words.title), route), undefined, 1);
    this.#save(text, 'geojson', 'application/geo+json');
  }

  #save(text: string, way: keyof typeof ENDINGS, type: string): void {
    const day = this.trip?.conditions.departure?.slice(0, 10);
    const name = `${['passage-plan', day].filter(Boolean).join('-')}.${ENDINGS[way]}`;
    saveFile(name, text, type);
    tellLeft(this, way);
    this.said = this.say(() => words.saved(name));
  }

  readonly #toPrint = (): void => {
    if (!this.plan || this.plan === this.#madeFor) return;
    this.#make();
    this.requestUpdate();
  };
}

define('homeleg-passage-plan', PassagePlan);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-passage-plan': PassagePlan;
  }
}
