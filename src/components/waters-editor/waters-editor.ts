import { html, nothing, type PropertyValues } from 'lit';
import { state } from 'lit/decorators.js';
import type { LatLon, WatersFile } from '../../core/route/shapes.ts';
import type { Problem } from '../../core/units/result.ts';
import { InTurns } from '../in-turns.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { fetchWaters, SHIPPED_WATERS } from '../planner/fetch-waters.ts';
import { saveFile } from '../planner/save-file.ts';
import { toolButton } from '../route-map/map-controls.ts';
import { undoKey } from '../route-map/map-keys.ts';
import { belowStyles } from '../theme/below.styles.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { measuresFor } from '../units/measures.ts';
import { problemText } from '../words/en-problems.ts';
import { watersWords as words } from '../words/en-waters.ts';
import './about-form.ts';
import type { MemberEdited } from './about-form.ts';
import { boxRound } from './box-round.ts';
import './check-list.ts';
import type { ShowWanted } from './check-list.ts';
import './feature-form.ts';
import type { GeometryEdited, OutlineChosen, PropertyEdited } from './feature-form.ts';
import './feature-list.ts';
import './plan-here.ts';
import type { FeatureAdded, FeatureChosen, FeatureRemoved } from './feature-list.ts';
import { featureTitle, kindTitle } from './feature-title.ts';
import { keptSheet } from './kept-waters.ts';
import { featureAt } from './look-over.ts';
import { openSheet, sheetFileName, sheetText } from './open-sheet.ts';
import {
  EMPTY,
  geometryOf,
  outlinesOf,
  type Sheet,
  withFeature,
  withMember,
  withoutFeature,
  withPlaces,
  withProperty,
} from './sheet.ts';
import { SheetHistory } from './sheet-history.ts';
import { SheetKeeper } from './sheet-keeper.ts';
import { SheetLook } from './sheet-look.ts';
import { featureUnder } from './under.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';
import './waters-map.ts';
import { withNew } from './kinds.ts';
import type { Edited, PlacesEdited, PlaceTapped } from './waters-map.ts';

/** Waters as a file for the fleet of a desk. */
export type WatersReady = CustomEvent<{ waters: WatersFile | undefined }>;

/**
 * @summary Draws and checks a file of local waters: land, shoals, zones, landings, stream places and set routes, on a map
 * or in tables.
 * @csspart tools - beginning, opening, saving, undo
 * @csspart map - the map to draw on
 * @csspart chosen - what there is, or what was chosen
 * @csspart check - what is wrong or odd
 * @csspart about - who answers for the file, and its days
 * @csspart try - a trip on these waters
 * @fires {WatersReady} homeleg-waters-ready - the waters as they stand, undefined while they have errors
 */
export class WatersEditor extends SpeakingElement {
  static override styles = [tokens, controls, belowStyles, watersEditorStyles];

  @state() private sheet: Sheet = EMPTY;
  @state() private chosen: number | undefined;
  @state() private outline = 0;
  @state() private said = '';
  @state() private refused: readonly Problem[] = [];

  readonly #turns = new InTurns(this, () => 3);
  #history = new SheetHistory();
  readonly #keeper = new SheetKeeper(this);
  readonly #seen = new SheetLook(this);
  #edited: Edited | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('keydown', this.#keys);
    if (!this.hasUpdated) void this.#restore();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('keydown', this.#keys);
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('sheet')) this.#look();
    if (changed.has('sheet') || changed.has('chosen') || changed.has('outline')) this.#edited = this.#editedNow();
  }

  override render() {
    const { sheet, chosen } = this;
    const title = chosen === undefined ? '' : featureTitle(sheet, chosen);
    return html`<div class="bench two">
      ${this.#toolCard()}
      <div class="card" part="map">
        <homeleg-waters-map
          .waters=${this.#seen.shown}
          .edited=${this.#edited}
          .measures=${measuresFor('nautical', this.language)}
          @places-edited=${this.#placesEdited}
          @place-tapped=${this.#placeTapped}
        ></homeleg-waters-map>
      </div>
      <section class="card below" part="chosen" id="chosen" tabindex="-1" aria-label=${title || words.list}>
        ${this.#turns.part(1, () => (chosen === undefined ? this.#listPart() : this.#formPart(chosen, title)))}
      </section>
      <section class="card whole below" part="check" aria-label=${words.check}>
        <h2>${words.check}</h2>
        ${this.#turns.part(
          1,
          () => html`<homeleg-waters-check
            .sheet=${sheet}
            .problems=${this.#seen.problems}
            .doubts=${this.#seen.doubts}
            @show-wanted=${this.#showWanted}
          ></homeleg-waters-check>`,
        )}
      </section>
      <section class="card whole below" part="about" aria-label=${words.about}>
        <h2>${words.about}</h2>
        ${this.#turns.part(
          2,
          () => html`<homeleg-waters-about
            .sheet=${sheet}
            .problems=${this.#seen.problems}
            .extent=${boxRound(sheet)}
            @member-edited=${({ detail }: MemberEdited) =>
              this.#change(withMember(sheet, detail.member, detail.value), detail.member)}
          ></homeleg-waters-about>`,
        )}
      </section>
      <section class="card whole below" part="try" aria-label=${words.planHere}>
        <homeleg-plan-here .waters=${this.#seen.waters}></homeleg-plan-here>
      </section>
    </div>`;
  }

  #toolCard() {
    return html`<section class="card whole" part="tools" aria-label=${words.tools}>
      <div class="row" role="group" aria-label=${words.tools}>
        <label class="file">
          ${words.open}
          <input type="file" accept=".geojson,.json,application/geo+json,application/json" @change=${this.#opened} />
        </label>
        <button type="button" @click=${() => saveFile(sheetFileName(this.sheet), sheetText(this.sheet), 'application/geo+json')}>
          ${words.save}
        </button>
        ${toolButton(words.undo, this.#history.canUndo, () => this.#stepped('undone'))}
        ${toolButton(words.redo, this.#history.canRedo, () => this.#stepped('redone'))}
        <button type="button" @click=${this.#exampleWanted}>${words.example}</button>
        <button type="button" class="quiet" @click=${() => this.#replaced(EMPTY, words.freshDone)}>${words.fresh}</button>
      </div>
      ${
        this.refused.length > 0
          ? html`<div class="refused" role="alert">
              <p>${words.refused}</p>
              <ul>
                ${this.refused.map((problem) => html`<li>${problemText(problem)}</li>`)}
              </ul>
            </div>`
          : nothing
      }
      <p class="muted">${this.#keeper.failed ? words.notKept : words.kept}</p>
      <p class="muted" role="status">${this.said}</p>
    </section>`;
  }

  #listPart() {
    const errors = new Map<number, number>();
    for (const problem of this.#seen.problems) {
      const at = featureAt(problem);
      if (at !== undefined) errors.set(at, (errors.get(at) ?? 0) + 1);
    }
    return html`<h2>${words.list}</h2>
      <homeleg-waters-list
        .sheet=${this.sheet}
        .errors=${errors}
        @feature-added=${({ detail }: FeatureAdded) => this.#added(detail.kind)}
        @feature-chosen=${({ detail }: FeatureChosen) => {
          this.#choose(detail.index);
          this.#map?.show(this.#placesOf(detail.index));
        }}
        @feature-removed=${({ detail }: FeatureRemoved) => this.#removed(detail.index)}
      ></homeleg-waters-list>`;
  }

  #formPart(chosen: number, title: string) {
    const feature = this.sheet.features[chosen];
    const problems = this.#seen.problems.filter((problem) => featureAt(problem) === chosen);
    return html`<h2>${title}</h2>
      <homeleg-feature-form
        .feature=${feature}
        .index=${chosen}
        .outline=${this.outline}
        .problems=${problems}
        @property-edited=${({ detail: { field, value } }: PropertyEdited) =>
          this.#change(withProperty(this.sheet, chosen, field, value), `${chosen} ${field}`)}
        @geometry-edited=${({ detail }: GeometryEdited) =>
          this.#change(withFeature(this.sheet, chosen, detail.feature), '')}
        @outline-chosen=${({ detail }: OutlineChosen) => {
          this.outline = detail.outline;
        }}
      ></homeleg-feature-form>
      <div class="row">
        <button type="button" class="primary" @click=${() => this.#choose(undefined)}>${words.done}</button>
        <button type="button" class="quiet" @click=${() => this.#removed(chosen)}>${words.remove(title)}</button>
      </div>`;
  }

  async #restore(): Promise<void> {
    const kept = await keptSheet();
    // Something may have been drawn or opened meanwhile.
    if (kept === 'unread') this.said = this.say(() => words.unread);
    else if (kept && this.sheet === EMPTY) this.sheet = kept;
  }

  #look(): void {
    this.#seen.look(this.sheet);
    this.dispatchEvent(
      new CustomEvent('homeleg-waters-ready', {
        detail: { waters: this.#seen.waters },
        bubbles: true,
        composed: true,
      }) satisfies WatersReady,
    );
  }

  #editedNow(): Edited | undefined {
    const { chosen } = this;
    const feature = chosen === undefined ? undefined : this.sheet.features[chosen];
    const outlines = outlinesOf(feature);
    const line = outlines[this.outline] ?? outlines[0];
    return line && { places: line.places, closed: line.closed, single: geometryOf(feature)?.type === 'Point' };
  }

  /** Every change goes through here: one step to undo, kept on the device. `field` joins the letters of one field. */
  #change(sheet: Sheet, field: string): void {
    this.#history.changed(this.sheet, field, performance.now());
    this.#set(sheet);
  }

  #set(sheet: Sheet): void {
    this.sheet = sheet;
    this.refused = [];
    if (this.chosen !== undefined && this.chosen >= sheet.features.length) this.chosen = undefined;
    this.#keeper.keep(sheet);
  }

  #replaced(sheet: Sheet, said: string): void {
    this.#choose(undefined, false);
    this.#change(sheet, '');
    this.said = said;
  }

  async #opened(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (!file) return;
    const read = openSheet(await file.text());
    input.value = '';
    if (!read.ok) {
      this.refused = read.problems;
      return;
    }
    const name = typeof read.value.name === 'string' ? read.value.name : file.name;
    this.#replaced(
      read.value,
      this.say(() => words.opened(name, read.value.features.length)),
    );
    await this.#showAll();
  }

  async #exampleWanted(): Promise<void> {
    const waters = await fetchWaters(SHIPPED_WATERS);
    if (!waters) return;
    this.#replaced(
      waters as unknown as Sheet,
      this.say(() => words.opened(waters.name ?? '', waters.features.length)),
    );
    await this.#showAll();
  }

  async #showAll(): Promise<void> {
    await this.updateComplete;
    const [west, south, east, north] = boxRound(this.sheet) ?? [];
    if (west === undefined || south === undefined || east === undefined || north === undefined) return;
    this.#map?.show([
      { lat: south, lon: west },
      { lat: north, lon: east },
    ]);
  }

  get #map() {
    return this.renderRoot.querySelector('homeleg-waters-map');
  }

  #placesOf(index: number): readonly LatLon[] {
    return outlinesOf(this.sheet.features[index]).flatMap(({ places }) => places);
  }

  #stepped(what: 'undone' | 'redone'): void {
    const sheet = what === 'undone' ? this.#history.undo(this.sheet) : this.#history.redo(this.sheet);
    if (!sheet) return;
    this.#set(sheet);
    this.said = words[what];
  }

  /** Opens a feature's form and takes the keyboard there; undefined goes back to the list. */
  #choose(index: number | undefined, focus = true): void {
    this.chosen = index;
    this.outline = 0;
    if (focus) void this.#focusChosen();
  }

  async #focusChosen(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('#chosen')?.focus();
  }

  #added(kind: FeatureAdded['detail']['kind']): void {
    this.#change(withNew(this.sheet, kind), '');
    this.said = words.added(kindTitle(kind));
    this.#choose(this.sheet.features.length - 1);
  }

  #removed(index: number): void {
    const title = featureTitle(this.sheet, index);
    this.#choose(undefined);
    this.#change(withoutFeature(this.sheet, index), '');
    this.said = words.removed(title);
  }

  #placesEdited({ detail: { places, live } }: PlacesEdited): void {
    const { chosen } = this;
    if (live || chosen === undefined) return;
    const feature = this.sheet.features[chosen];
    const line = outlinesOf(feature)[this.outline];
    if (line) this.#change(withFeature(this.sheet, chosen, withPlaces(feature, line, places)), '');
  }

  #placeTapped({ detail: { at } }: PlaceTapped): void {
    const index = featureUnder(this.sheet, at);
    if (index !== undefined) this.#choose(index);
  }

  async #showWanted({ detail }: ShowWanted): Promise<void> {
    const index = 'doubt' in detail ? detail.doubt.feature : featureAt(detail.problem);
    if (index === undefined) {
      const path = 'problem' in detail ? detail.problem.path.split('.')[0]! : 'name';
      this.renderRoot.querySelector('homeleg-waters-about')?.focusMember(path);
      return;
    }
    this.#choose(index);
    await this.updateComplete;
    this.renderRoot.querySelector('#chosen')?.scrollIntoView({ block: 'nearest' });
    const at: readonly LatLon[] = 'doubt' in detail && detail.doubt.at ? [detail.doubt.at] : this.#placesOf(index);
    this.#map?.show(at);
  }

  #keys = (event: KeyboardEvent): void => {
    const what = undoKey(event);
    const [target] = event.composedPath();
    // A field undoes its own letters.
    if (!what || target instanceof HTMLInputElement) return;
    event.preventDefault();
    this.#stepped(what);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-waters-editor': WatersEditor;
  }
  interface HTMLElementEventMap {
    'homeleg-waters-ready': WatersReady;
  }
}
