import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Trip } from '../../core/trip/shapes.ts';
import { HostProblems } from '../host/host-problems.ts';
import { knowValues, THEMES } from '../host/known-values.ts';
import { SharedTrip } from '../host/shared-trip.ts';
import { written } from '../host/written.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { checklistConditions, checklistWords as words } from '../words/en-checklist.ts';
import { checklistStyles } from './checklist.styles.ts';
import { concern } from './concern.ts';
import { holdingOf, keptTrip, PLANNER_KEY } from './kept-trip.ts';
import { readChecklist } from './read-checklist.ts';
import type { Checklist, Condition, Holding, Point, Section } from './shapes.ts';
import { shippedLists } from './shipped-lists.ts';
import { TickKeeper } from './tick-keeper.ts';
import { tripSaid } from './trip-said.ts';

/** A point was ticked or cleared. */
export type ChecklistEvent = CustomEvent<{ list: string; ticked: readonly string[]; of: number }>;

/**
 * @summary A checklist to tick, kept on the device: one of the shipped lists by its name, or a list of the page's own.
 * Points follow the trip that the planner keeps on the same site, or the one given.
 * @slot title - the heading, in place of the list's own
 * @csspart title - the heading
 * @csspart problem - what the author of the page should mend
 * @csspart summary - what the list is for
 * @csspart trip - to which trip the list is fitted
 * @csspart section - points of one kind, with their heading
 * @csspart cautions - that local law comes first
 * @csspart tally - how many are done, and clearing
 * @fires {ProblemEvent} homeleg-problem - an attribute cannot be used
 * @fires {ChecklistEvent} homeleg-checklist-change - a point was ticked or cleared
 */
export class ChecklistElement extends SpeakingElement {
  static override styles = [tokens, controls, checklistStyles];

  /** Name of a shipped list, such as before-launch; for an own list the name under which its ticks are kept. */
  @property({ converter: written('') }) list = '';
  /** "none" keeps no ticks on the device. */
  @property({ converter: written('') }) keep = '';
  /** A list of the page's own; property only. */
  @property({ attribute: false }) checklist: unknown;
  /** The id of a planner or other element on this page, to whose trip the list is fitted. */
  @property({ converter: written(''), attribute: 'for' }) for = '';
  /** "light" or "dark"; without it as the page. */
  @property({ converter: written(''), reflect: true }) theme = '';
  /** The trip to fit the list to, in place of the one kept by the planner; property only. */
  @property({ attribute: false }) trip: Trip | undefined;

  @state() private shown: Checklist | undefined;
  /** Why a sound list is not there. */
  @state() private problem = '';
  /** What the page asked for is no list; told to its author. */
  @state() private refused = false;
  @state() private holding: Holding | undefined;
  @state() private all = false;
  @state() private said = '';

  readonly #problems = new HostProblems(this);
  readonly #shared = new SharedTrip(this, this.#problems, () => this.for);
  #fitted: unknown;
  #keeper = new TickKeeper(undefined);
  #visit = 0;

  constructor() {
    super();
    knowValues(this, this.#problems, { theme: THEMES });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('storage', this.#stored);
  }

  override disconnectedCallback(): void {
    globalThis.removeEventListener('storage', this.#stored);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('list') || changed.has('checklist') || changed.has('keep')) void this.#load();
    if (changed.has('for') && this.hasUpdated) this.#shared.look();
    const trip = this.trip ?? this.#shared.source?.trip;
    if (trip !== this.#fitted || !this.hasUpdated) {
      this.#fitted = trip;
      void this.#fit();
    }
  }

  override render() {
    const problems = this.#problems.render();
    if (this.problem) return html`${problems}<p class="problem" role="alert">${this.problem}</p>`;
    const list = this.shown;
    if (!list) return html`${problems}${this.refused ? nothing : html`<p class="hint">${words.loading}</p>`}`;
    return html`${problems}<form autocomplete="off" @submit=${(event: Event) => event.preventDefault()}>
      <slot name="title"><h2 class="title" part="title">${list.title}</h2></slot>
      ${list.summary ? html`<p class="hint" part="summary">${list.summary}</p>` : nothing}
      ${this.#strip(list)}
      <div class="columns">${list.sections.map((section) => this.#section(section))}</div>
      <p class="law" part="cautions"><strong>${words.law}</strong> ${words.lawMore}</p>
      ${this.#tally(list)}
    </form>`;
  }

  #strip(list: Checklist) {
    const { holding } = this;
    if (!holding) return nothing;
    const asked = new Set<Condition>();
    for (const { when } of pointsOf(list)) for (const condition of when ?? []) asked.add(condition);
    if (asked.size === 0) return nothing;
    const others = pointsOf(list).filter(({ when }) => concern(when, holding) === 'no').length;
    return html`<div class="trip" part="trip">
      <p>${tripSaid(holding, asked)}</p>
      ${
        others > 0
          ? html`<button type="button" @click=${() => (this.all = !this.all)}>
              ${this.all ? words.hideRest : words.showRest(others)}
            </button>`
          : nothing
      }
    </div>`;
  }

  #section(section: Section) {
    const items = section.items.filter((point) => this.#concerns(point));
    if (items.length === 0) return nothing;
    return html`<section part="section">
      <h3>${section.title}</h3>
      ${section.note ? html`<p class="hint">${section.note}</p>` : nothing}
      <ul>
        ${items.map((point) => this.#point(section, point))}
      </ul>
    </section>`;
  }

  #point({ title }: Section, point: Point) {
    const tags = (point.when ?? []).map((each) => checklistConditions[each]);
    const yours = this.holding && concern(point.when, this.holding) === 'yes';
    return html`<li>
      <label>
        <input
          type="checkbox"
          aria-describedby=${point.why ? `${point.id}-why` : nothing}
          .checked=${this.#keeper.ticked.has(point.id)}
          @change=${(event: Event) => this.#ticked(point.id, (event.target as HTMLInputElement).checked)}
        />
        <span>
          ${point.text}
          ${tags.filter((tag) => !title.toLowerCase().includes(tag)).map((tag) => html`<span class="tag">${tag}</span>`)}
          ${yours ? html`<span class="tag yours">${words.yours}</span>` : nothing}
        </span>
      </label>
      ${point.why ? html`<p class="why" id="${point.id}-why">${point.why}</p>` : nothing}
    </li>`;
  }

  #tally(list: Checklist) {
    const points = pointsOf(list).filter((point) => this.#concerns(point));
    const done = points.filter(({ id }) => this.#keeper.ticked.has(id)).length;
    return html`<div class="tally" part="tally">
      <progress max=${points.length} .value=${done} aria-label=${words.doneLabel}></progress>
      <span>${words.done(done, points.length)}</span>
      <span class="hint" role="status">${this.said}</span>
      ${
        this.#keeper.undoable
          ? html`<button type="button" @click=${() => this.#changed(this.#keeper.takeBack(), words.back)}>
              ${words.takeBack}
            </button>`
          : nothing
      }
      <button type="button" @click=${() => this.#changed(this.#keeper.clear(), words.cleared)}>${words.clear}</button>
    </div>`;
  }

  #concerns({ when }: Point): boolean {
    return this.all || !this.holding || concern(when, this.holding) !== 'no';
  }

  #ticked(id: string, on: boolean): void {
    this.#changed(this.#keeper.tick(id, on), '');
  }

  #changed(kept: boolean, said: string): void {
    this.said = kept ? said : words.notKept;
    this.requestUpdate();
    const detail = {
      list: this.list,
      ticked: [...this.#keeper.ticked],
      of: this.shown ? pointsOf(this.shown).length : 0,
    };
    const options = { bubbles: true, composed: true };
    this.dispatchEvent(new CustomEvent('homeleg-checklist-change', { detail, ...options }) satisfies ChecklistEvent);
  }

  async #load(): Promise<void> {
    const visit = ++this.#visit;
    const { list, checklist } = this;
    const value = checklist ?? (await this.#shipped(list));
    if (visit !== this.#visit || value === undefined) return;
    const read = readChecklist(value);
    this.problem = '';
    this.#refuse('checklist', read.ok ? '' : words.badList + read.problems.map(({ message }) => message).join('; '));
    this.shown = read.ok ? read.value : undefined;
    this.#keeper = new TickKeeper(this.keep === 'none' || !list ? undefined : list);
    const { oldSince } = this.#keeper;
    const day = new Intl.DateTimeFormat(this.language, { dateStyle: 'long', timeStyle: 'short' });
    this.said = oldSince === undefined ? '' : words.old(day.format(oldSince));
  }

  async #shipped(list: string): Promise<unknown> {
    const load = Object.hasOwn(shippedLists, list) ? shippedLists[list] : undefined;
    if (!load) {
      this.shown = undefined;
      this.problem = '';
      this.#refuse('list', words.noList(list) + Object.keys(shippedLists).join(', '));
      return undefined;
    }
    try {
      return (await load()).default;
    } catch {
      this.problem = words.notLoaded;
      return undefined;
    }
  }

  #refuse(attribute: string, message: string): void {
    this.refused = message !== '';
    this.#problems.tell(['list', 'checklist'], message === '' ? [] : [{ attribute, message }]);
  }

  async #fit(): Promise<void> {
    const trip = this.trip ?? this.#shared.source?.trip ?? (await keptTrip(PLANNER_KEY));
    this.holding = trip && (await holdingOf(trip));
  }

  readonly #stored = ({ key }: StorageEvent): void => {
    if (key === PLANNER_KEY || key === null) void this.#fit();
  };
}

function pointsOf(list: Checklist): readonly Point[] {
  return list.sections.flatMap(({ items }) => items);
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-checklist': ChecklistElement;
  }
  interface HTMLElementEventMap {
    'homeleg-checklist-change': ChecklistEvent;
  }
}
