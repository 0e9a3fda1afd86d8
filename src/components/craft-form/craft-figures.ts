import { html, nothing } from 'lit';
import { property } from 'lit/decorators.js';
import type { Battery, Drive, Propeller, Tank } from '../../core/craft/shapes.ts';
import { PETROL_DENSITY } from '../../core/units/constants.ts';
import { INCH, WATT_HOUR } from '../../core/units/convert.ts';
import { define } from '../define.ts';
import { fieldStyles } from '../field/field.styles.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/quantity-field.ts';
import type { QuantityTyped } from '../field/quantity-field.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { commonWords } from '../words/en-common.ts';
import { craftWords, shaftWords } from '../words/en-craft.ts';
import { dataName } from '../words/en-data.ts';
import { type ChosenCraft, withFigures, withFirst } from './edit-craft.ts';
import { movedTo, placeOf } from './place-store.ts';
import { resizedHull } from './resized-hull.ts';

export type FiguresEdited = CustomEvent<ChosenCraft>;

type Typed = (value: number) => ChosenCraft;
type Field = {
  label: string;
  measure: 'length' | 'mass' | 'power' | 'amount' | 'share';
  value: number;
  range: readonly [number, number];
  inches?: boolean;
  hint?: string;
  typed: Typed;
};

const SHAFTS = ['short', 'long', 'extra-long'] as const;

/**
 * @summary The figures of boat, engine, tank or battery that an owner can read or weigh.
 * @fires figures-edited - the user typed a figure inside its limits
 */
export class CraftFigures extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles];

  @property({ attribute: false }) chosen!: ChosenCraft;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    const { drive, store } = this.chosen.craft;
    const first = store.kind === 'tank' ? store.tanks[0] : store.batteries[0];
    return html`<div class="stack">
      ${this.#group(craftWords.boat, this.#hullFields())}
      ${this.#group(craftWords.engine, this.#driveFields(), this.#shaft(drive))}
      ${this.#group(craftWords.propeller, this.#propellerFields(), html`<p class="hint">${craftWords.propellerHint}</p>`)}
      ${
        first
          ? this.#group(
              store.kind === 'tank' ? craftWords.tank : craftWords.battery,
              store.kind === 'tank' ? this.#tankFields(first as Tank) : this.#batteryFields(first as Battery),
              this.#place(),
            )
          : nothing
      }
    </div>`;
  }

  #group(title: string, fields: readonly Field[], more: unknown = nothing) {
    return html`<fieldset>
      <legend>${title}</legend>
      <div class="fields">${fields.map((field) => this.#field(field))}${more}</div>
    </fieldset>`;
  }

  #field({ label, measure, value, range: [min, max], inches, hint, typed }: Field) {
    return html`<homeleg-quantity-field
      label=${label}
      required
      hint=${hint ?? ''}
      .measure=${measure}
      .store=${this.chosen.craft.store.kind === 'tank' ? 'fuel' : 'charge'}
      .unit=${inches ? 'in' : undefined}
      .unitSize=${inches ? INCH : undefined}
      .min=${min}
      .max=${max}
      .measures=${this.measures}
      .value=${value}
      @quantity-typed=${(event: QuantityTyped) => event.detail.value !== undefined && this.#tell(typed(event.detail.value))}
    ></homeleg-quantity-field>`;
  }

  #hullFields(): readonly Field[] {
    const { chosen } = this;
    const { hull } = chosen.craft;
    const resize = (size: { length?: number; beam?: number }) => withFigures(chosen, { hull: resizedHull(hull, size) });
    return [
      {
        label: craftWords.length,
        measure: 'length',
        value: hull.length,
        range: [1.5, 12],
        typed: (length) => resize({ length }),
      },
      {
        label: craftWords.beam,
        measure: 'length',
        value: hull.beam,
        range: [0.8, 4],
        typed: (beam) => resize({ beam }),
      },
      {
        label: craftWords.hullMass,
        measure: 'mass',
        value: hull.mass,
        range: [8, 3000],
        hint: craftWords.hullMassHint,
        typed: (mass) => withFigures(chosen, { hull: { mass } }),
      },
    ];
  }

  #driveFields(): readonly Field[] {
    const { chosen } = this;
    const { drive } = chosen.craft;
    const change = (part: Partial<Drive>) => withFigures(chosen, { drive: part });
    return [
      {
        label: craftWords.ratedPower,
        measure: 'power',
        value: drive.ratedPower,
        range: [100, 300_000],
        hint: craftWords.ratedPowerHint,
        typed: (ratedPower) => change({ ratedPower }),
      },
      {
        label: craftWords.engineMass,
        measure: 'mass',
        value: drive.mass,
        range: [2, 600],
        typed: (mass) => change({ mass }),
      },
    ];
  }

  #propellerFields(): readonly Field[] {
    const { chosen } = this;
    const { propeller } = chosen.craft.drive;
    const change = (part: Partial<Propeller>) =>
      withFigures(chosen, { drive: { propeller: { ...propeller, ...part } } });
    return [
      {
        label: craftWords.propellerDiameter,
        measure: 'length',
        value: propeller.diameter,
        range: [4 * INCH, 20 * INCH],
        inches: true,
        typed: (diameter) => change({ diameter }),
      },
      {
        label: craftWords.propellerPitch,
        measure: 'length',
        value: propeller.pitch,
        range: [2 * INCH, 30 * INCH],
        inches: true,
        typed: (pitch) => change({ pitch }),
      },
    ];
  }

  #tankFields(tank: Tank): readonly Field[] {
    return [
      {
        label: craftWords.tankCapacity,
        measure: 'amount',
        value: tank.capacityL * PETROL_DENSITY,
        range: [0.3 * PETROL_DENSITY, 500 * PETROL_DENSITY],
        hint: tank.name,
        typed: (kg) => withFirst(this.chosen, { capacityL: kg / PETROL_DENSITY }),
      },
    ];
  }

  #batteryFields(battery: Battery): readonly Field[] {
    return [
      {
        label: craftWords.batteryEnergy,
        measure: 'amount',
        value: battery.energyWh * WATT_HOUR,
        range: [100 * WATT_HOUR, 200_000 * WATT_HOUR],
        hint: battery.name,
        typed: (joules) => withFirst(this.chosen, { energyWh: joules / WATT_HOUR }),
      },
      {
        label: craftWords.batteryHealth,
        measure: 'share',
        value: battery.health,
        range: [0.3, 1],
        hint: craftWords.batteryHealthHint,
        typed: (health) => withFirst(this.chosen, { health }),
      },
      {
        label: craftWords.batteryMass,
        measure: 'mass',
        value: battery.mass,
        range: [1, 1500],
        typed: (mass) => withFirst(this.chosen, { mass }),
      },
    ];
  }

  #shaft(drive: Drive) {
    return html`<div class="field">
      <label for="shaft">${craftWords.shaft}</label>
      <select id="shaft" @change=${this.#shaftPicked}>
        <option value="" .selected=${!drive.shaft}>${commonWords.notKnown}</option>
        ${SHAFTS.map((each) => html`<option value=${each} .selected=${drive.shaft === each}>${shaftWords[each]}</option>`)}
      </select>
    </div>`;
  }

  #shaftPicked(event: Event): void {
    const { value } = event.target as HTMLSelectElement;
    this.#tell(withFigures(this.chosen, { drive: { shaft: value === '' ? undefined : (value as 'short') } }));
  }

  #place() {
    const { hull, store } = this.chosen.craft;
    const places = hull.stations.filter(({ use }) => use === 'store');
    const at = placeOf(store);
    if (!at || places.length === 0) return nothing;
    const here = places.find(({ x, z }) => x === at.x && z === at.z);
    return html`<div class="field">
      <label for="place">${craftWords.place(store.kind === 'tank' ? 'fuel' : 'charge')}</label>
      <select id="place" @change=${this.#placePicked}>
        ${here ? nothing : html`<option value="" .selected=${true}>${craftWords.placeKept}</option>`}
        ${places.map(({ id, label }) => html`<option value=${id} .selected=${here?.id === id}>${dataName(label)}</option>`)}
      </select>
    </div>`;
  }

  #placePicked(event: Event): void {
    const { chosen } = this;
    const { hull, store } = chosen.craft;
    const place = hull.stations.find(({ id }) => id === (event.target as HTMLSelectElement).value);
    if (place) this.#tell({ ...chosen, craft: { ...chosen.craft, store: movedTo(store, place) } });
  }

  #tell(detail: ChosenCraft): void {
    this.chosen = detail;
    this.dispatchEvent(new CustomEvent('figures-edited', { detail, bubbles: true }) satisfies FiguresEdited);
  }
}

define('homeleg-craft-figures', CraftFigures);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-craft-figures': CraftFigures;
  }
}
