import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { readFleet, readFleetText, writeFleet } from '../../core/files/fleet-file.ts';
import type { Fleet, FuelNote, HireBoat, HireRoute } from '../../core/hire/shapes.ts';
import type { Problem, Result } from '../../core/units/result.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { saveFile } from '../planner/save-file.ts';
import { DEMO_FLEET } from '../reserve-check/demo-fleet.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { plannerDraft } from '../trials/to-planner.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { fleetWords as words } from '../words/en-desk.ts';
import './boat-form.ts';
import type { BoatKept } from './boat-form.ts';
import { deskFormStyles } from './desk-form.styles.ts';
import { fleetCardStyles } from './fleet-card.styles.ts';

/** Absent: back to the invented one. */
export type FleetSet = CustomEvent<{ fleet: Fleet | undefined }>;

type Field = 'name' | 'answers' | 'surveyed' | 'until' | 'call' | 'rescue' | 'area' | 'site';
const FIELDS: readonly { readonly field: Field; readonly type: string }[] = [
  { field: 'name', type: 'text' },
  { field: 'answers', type: 'text' },
  { field: 'surveyed', type: 'date' },
  { field: 'until', type: 'date' },
  { field: 'call', type: 'text' },
  { field: 'rescue', type: 'text' },
  { field: 'area', type: 'text' },
  { field: 'site', type: 'url' },
];
/** Told at once; a wrong export would repeat one problem for every boat. */
const TOLD = 8;

/**
 * @summary The fleet of a desk: who answers for it and until when, its boats and set routes, from a file or typed.
 * @fires fleet-set - it is to be kept
 */
export class FleetCard extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, deskFormStyles, fleetCardStyles];

  @property({ attribute: false }) fleet: Fleet = DEMO_FLEET;
  @property({ type: Boolean }) demo = false;
  @property({ attribute: false }) notes: readonly FuelNote[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  /** Typed and not kept yet. */
  @state() private typed: Readonly<Partial<Record<Field, string>>> = {};
  @state() private problems: readonly Problem[] = [];
  /** Id of the boat being changed; '' for a new one. */
  @state() private editing: string | undefined;
  @state() private said = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('fleet')) this.problems = [];
  }

  override render() {
    const { fleet, problems } = this;
    return html`<section class="card" aria-label=${words.title}>
      <h2>${words.title}</h2>
      ${this.demo ? html`<p class="warn">${words.demo}</p>` : nothing}
      ${fleet.note ? html`<p class="muted">${fleet.note}</p>` : nothing}
      <div class="row">
        <label class="file">
          ${words.open}
          <input type="file" accept=".json,application/json" @change=${this.#opened} />
        </label>
        <button type="button" @click=${() => saveFile('fleet.json', writeFleet(fleet))}>${words.save}</button>
        ${
          this.demo
            ? nothing
            : html`<button type="button" class="quiet" @click=${() => this.#tell(undefined)}>${words.demoBack}</button>`
        }
      </div>
      ${
        problems.length > 0
          ? html`<div class="refused" role="alert">
              <p>${words.problems(problems.length)}</p>
              <ul>
                ${problems
                  .slice(0, TOLD)
                  .map(
                    ({ message, path }) =>
                      html`<li>${message}${path ? html` <small>${words.place(path)}</small>` : nothing}</li>`,
                  )}
              </ul>
            </div>`
          : nothing
      }
      ${this.#about()} ${this.#boats()} ${this.#routes()}
      <p role="status" class="muted">${this.said}</p>
    </section>`;
  }

  #about() {
    const hints: Partial<Record<Field, string>> = { area: words.areaHint, site: words.siteHint };
    return html`<form class="about" @submit=${this.#keepAbout}>
      <div class="fields wide">
        ${FIELDS.map(
          ({ field, type }) => html`<div class="field">
            <label for=${field}>${words[field]}</label>
            <input
              id=${field}
              type=${type}
              autocomplete="off"
              .value=${this.typed[field] ?? this.fleet[field] ?? ''}
              aria-describedby=${hints[field] ? `${field}-hint` : nothing}
              @input=${(event: Event) =>
                (this.typed = { ...this.typed, [field]: (event.target as HTMLInputElement).value })}
            />
            ${hints[field] ? html`<p id="${field}-hint" class="hint">${hints[field]}</p>` : nothing}
          </div>`,
        )}
      </div>
      <button>${words.keep}</button>
    </form>`;
  }

  #boats() {
    return html`<h3>${words.boats}</h3>
      <ul class="list">
        ${this.fleet.boats.map((boat) =>
          this.editing === boat.id
            ? html`<li>${this.#boatForm(boat)}</li>`
            : html`<li class="line">
                <span><strong>${boat.name}</strong> <span class="muted">${this.#kind(boat)}</span></span>
                <span class="row">
                  <button type="button" @click=${() => (this.editing = boat.id)}>${words.edit(boat.name)}</button>
                  <button
                    type="button"
                    class="quiet"
                    ?disabled=${this.fleet.boats.length === 1}
                    @click=${() => this.#keepBoats(this.fleet.boats.filter(({ id }) => id !== boat.id))}
                  >
                    ${words.remove(boat.name)}
                  </button>
                </span>
              </li>`,
        )}
      </ul>
      ${
        this.editing === ''
          ? this.#boatForm(undefined)
          : html`<div><button type="button" @click=${() => (this.editing = '')}>${words.addBoat}</button></div>`
      }`;
  }

  #kind(boat: HireBoat): string {
    const { measures: m, notes } = this;
    const count = notes.filter(({ boatId }) => boatId === boat.id).length;
    return [
      m.show('speed', boat.speed),
      boat.profile ? words.measured : boat.craft ? words.own : words.shipped,
      ...(count > 0 ? [words.notes(count)] : []),
    ].join(', ');
  }

  #boatForm(boat: HireBoat | undefined) {
    return html`<homeleg-boat-form
      .boat=${boat}
      .boatId=${freshId(this.fleet.boats)}
      .measures=${this.measures}
      @boat-kept=${({ detail }: BoatKept) => {
        const { boats } = this.fleet;
        this.#keepBoats(
          boat ? boats.map((each) => (each.id === boat.id ? detail.boat : each)) : [...boats, detail.boat],
        );
      }}
      @boat-left=${() => (this.editing = undefined)}
    ></homeleg-boat-form>`;
  }

  #routes() {
    const { routes } = this.fleet;
    return html`<h3>${words.routes}</h3>
      ${
        routes.length === 0
          ? html`<p class="muted">${words.noRoutes}</p>`
          : html`<ul class="list">
              ${routes.map(
                (route) => html`<li class="line">
                  <strong>${route.name}</strong>
                  <button
                    type="button"
                    class="quiet"
                    @click=${() => this.#check({ ...this.fleet, routes: routes.filter(({ id }) => id !== route.id) })}
                  >
                    ${words.remove(route.name)}
                  </button>
                </li>`,
              )}
            </ul>`
      }
      <div><button type="button" @click=${this.#routeFromPlanner}>${words.routeFromPlanner}</button></div>`;
  }

  async #routeFromPlanner(): Promise<void> {
    const trip = (await plannerDraft())?.trip;
    if (!trip || trip.route.waypoints.length < 2 || trip.route.shape === 'one-way') {
      this.said = this.say(() => words.routeNone);
      return;
    }
    const { routes } = this.fleet;
    const { shape, waypoints } = trip.route;
    const far = shape === 'loop' ? waypoints[Math.floor(waypoints.length / 2)] : waypoints.at(-1);
    const name = trip.name || far?.name || `${routes.length + 1}`;
    const route: HireRoute = { id: freshId(routes), name, shape, waypoints };
    const waters = this.fleet.waters ?? trip.waters;
    this.#check({ ...this.fleet, routes: [...routes, route], ...(waters && { waters }) });
  }

  async #opened(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    this.#taken(readFleetText(await file.text()));
    input.value = '';
  }

  #keepAbout(event: Event): void {
    event.preventDefault();
    const filled = Object.fromEntries(
      FIELDS.map(({ field }) => [field, (this.typed[field] ?? this.fleet[field] ?? '').trim()]),
    );
    const { call: _, rescue: __, area: ___, site: ____, ...rest } = this.fleet;
    const given = Object.entries(filled).filter(
      ([field, text]) => text !== '' || field === 'name' || field === 'answers',
    );
    this.#check({ ...rest, ...Object.fromEntries(given) } as Fleet);
  }

  #keepBoats(boats: readonly HireBoat[]): void {
    this.editing = undefined;
    // The note on invented boats goes with the last of them.
    const invented = boats.some((boat) => DEMO_FLEET.boats.includes(boat));
    const { note, ...rest } = this.fleet;
    this.#check({ ...rest, boats, ...(note && (note !== DEMO_FLEET.note || invented) && { note }) });
  }

  /** What is typed goes through the same door as a file. */
  #check(fleet: Fleet): void {
    this.#taken(readFleet(JSON.parse(JSON.stringify(fleet))));
  }

  #taken(read: Result<Fleet>): void {
    this.problems = read.ok ? [] : read.problems;
    this.said = '';
    if (!read.ok) return;
    this.typed = {};
    this.#tell(read.value);
  }

  #tell(fleet: Fleet | undefined): void {
    this.dispatchEvent(new CustomEvent('fleet-set', { detail: { fleet }, bubbles: true }) satisfies FleetSet);
  }
}

function freshId(entries: readonly { readonly id: string }[]): string {
  const taken = new Set(entries.map(({ id }) => id));
  let n = entries.length + 1;
  while (taken.has(`own-${n}`)) n++;
  return `own-${n}`;
}

define('homeleg-fleet-card', FleetCard);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-fleet-card': FleetCard;
  }
}
