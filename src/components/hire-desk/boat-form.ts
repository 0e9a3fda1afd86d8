import { html, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Craft } from '../../core/craft/shapes.ts';
import { craftFrom } from '../../core/files/catalogue.ts';
import { HIRE_SPEED } from '../../core/files/fleet-file.ts';
import { readProfile } from '../../core/files/profile-file.ts';
import { hireCraft } from '../../core/hire/hire-trip.ts';
import type { HireBoat } from '../../core/hire/shapes.ts';
import type { BoatProfile } from '../../core/trials/shapes.ts';
import '../craft-form/craft-form.ts';
import type { CraftEdited } from '../craft-form/craft-form.ts';
import '../craft-form/plate-field.ts';
import type { PlateEdited } from '../craft-form/plate-field.ts';
import { define } from '../define.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { fleetWords as words } from '../words/en-desk.ts';
import { problemAt } from '../words/en-problems.ts';
import { deskFormStyles } from './desk-form.styles.ts';

export type BoatKept = CustomEvent<{ boat: HireBoat }>;

/** m/s; 6 kn. */
const USUAL_SPEED = 3.0867;

/**
 * @summary One boat of a fleet: name, hire speed, plate, and what it is: like a shipped one, own figures, or its profile.
 * @fires boat-kept - to go into the fleet
 * @fires boat-left - nothing is to change
 */
export class BoatForm extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, deskFormStyles];

  /** Absent: a new one, to get `boatId`. */
  @property({ attribute: false }) boat: HireBoat | undefined;
  @property() boatId = '';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private name = '';
  @state() private speed: number | undefined = USUAL_SPEED;
  @state() private craft: Craft = craftFrom('rigid-v-4-2', 'petrol-9-9hp-4s', 'tank-12');
  @state() private profile: BoatProfile | undefined;
  @state() private asked = false;
  @state() private problems: readonly string[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('boat') || !this.boat) return;
    const { name, speed, plate, profile } = this.boat;
    const craft = hireCraft(this.boat);
    this.name = name;
    this.speed = speed;
    this.profile = profile;
    this.craft = { ...craft, hull: { ...craft.hull, plate } };
  }

  override render() {
    const { measures: m, profile } = this;
    const missing = this.asked && (this.name.trim() === '' || this.speed === undefined);
    return html`<form class="card" @submit=${this.#keep}>
      <div class="ask">
        <label for="name">${words.boatName}</label>
        <input
          id="name"
          maxlength="80"
          autocomplete="off"
          .value=${this.name}
          aria-invalid=${missing && this.name.trim() === '' ? 'true' : 'false'}
          aria-describedby="missing"
          @input=${(event: Event) => (this.name = (event.target as HTMLInputElement).value)}
        />
      </div>
      <homeleg-quantity-field
        label=${words.speed}
        measure="speed"
        min=${HIRE_SPEED.least}
        max=${HIRE_SPEED.most}
        required
        .measures=${m}
        .value=${this.speed}
        @quantity-typed=${(event: QuantityTyped) => (this.speed = event.detail.value)}
      ></homeleg-quantity-field>
      ${
        profile
          ? html`<p>${words.profileTaken(profile.name)}</p>
              <homeleg-plate-field
                .plate=${this.craft.hull.plate}
                .measures=${m}
                @plate-edited=${(event: PlateEdited) =>
                  (this.craft = { ...this.craft, hull: { ...this.craft.hull, plate: event.detail.plate } })}
              ></homeleg-plate-field>`
          : html`<homeleg-craft-form
              .craft=${this.craft}
              no-bottom
              .measures=${m}
              @craft-edited=${(event: CraftEdited) => (this.craft = event.detail.craft)}
            ></homeleg-craft-form>`
      }
      <div class="ask">
        <label for="profile">${words.profile}</label>
        <input id="profile" type="file" accept=".json,application/json" @change=${this.#profileOpened} />
        ${this.problems.map((problem) => html`<p class="problem">${problem}</p>`)}
      </div>
      <p id="missing" class="problem" ?hidden=${!missing}>${words.boatProblem}</p>
      <div class="row">
        <button class="primary">${words.keepBoat}</button>
        <button type="button" @click=${() => this.dispatchEvent(new CustomEvent('boat-left'))}>${words.cancel}</button>
      </div>
    </form>`;
  }

  async #profileOpened(event: Event): Promise<void> {
    const file = (event.target as HTMLInputElement).files?.[0];
    if (!file) return;
    const read = readProfile(await file.text());
    this.problems = read.ok ? [] : this.say(() => read.problems.slice(0, 5).map(problemAt));
    if (!read.ok) return;
    this.profile = read.value;
    this.name ||= read.value.name.slice(0, 80);
    const { plate } = read.value.trials.hull;
    if (plate) this.craft = { ...this.craft, hull: { ...this.craft.hull, plate } };
  }

  #keep(event: Event): void {
    event.preventDefault();
    this.asked = true;
    const name = this.name.trim();
    const { speed, profile } = this;
    if (name === '' || speed === undefined) return;
    const { hull, drive, store } = this.craft;
    const { plate, ...body } = hull;
    const out = {
      id: this.boat?.id ?? this.boatId,
      name,
      speed,
      // A plate that nobody has read keeps every answer from being a plain go.
      plate: plate ?? ({ scheme: 'unknown' } as const),
    };
    const boat: HireBoat = profile ? { ...out, profile } : { ...out, craft: { hull: body, drive, store } };
    this.dispatchEvent(new CustomEvent('boat-kept', { detail: { boat } }) satisfies BoatKept);
  }
}

define('homeleg-boat-form', BoatForm);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-boat-form': BoatForm;
  }
}
