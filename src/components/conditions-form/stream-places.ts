import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Waypoint } from '../../core/route/shapes.ts';
import type { StreamPlace } from '../../core/water/shapes.ts';
import { STREAM_REACH } from '../../core/water/streams.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { saveFile } from '../planner/save-file.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { streamPlaceWords as words } from '../words/en-streams.ts';
import { draftOf, newDraft, type PlaceDraft, readPlace, redrafted } from './place-draft.ts';
import type { PlacesTaken } from './stream-import.ts';
import './stream-place-form.ts';
import type { DraftEdited } from './stream-place-form.ts';
import { streamPlacesStyles } from './stream-places.styles.ts';

/** One's own places that are whole. */
export type StreamPlacesEdited = CustomEvent<{ streamPlaces: readonly StreamPlace[] }>;

/**
 * @summary Places with streams by the hour: those of the local waters to look at, one's own to type, take from a file, and keep.
 * @fires stream-places-edited - others of one's own are whole now
 */
export class StreamPlaces extends SpeakingElement {
  static override styles = [tokens, controls, streamPlacesStyles];

  /** One's own. */
  @property({ attribute: false }) places: readonly StreamPlace[] = [];
  /** Those of the local waters. */
  @property({ attribute: false }) ofWaters: readonly StreamPlace[] | undefined;
  @property({ attribute: false }) waypoints: readonly Waypoint[] = [];
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private drafts: readonly PlaceDraft[] = [];
  @state() private importing = false;
  @state() private message = '';

  #told: readonly StreamPlace[] | undefined;
  #open = new Set<number>();
  #keys = 0;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('measures');
    if (before) this.drafts = this.drafts.map((draft) => redrafted(draft, before, this.measures));
    if (changed.has('places') && this.places !== this.#told) this.#follow(this.places);
  }

  /** Takes over places from outside, as after an undo; those the same keep what is being typed in them. */
  #follow(places: readonly StreamPlace[]): void {
    const whole = this.drafts.filter((draft) => draft.whole);
    const followed = places.map((place, i) => {
      const same = whole.find((draft) => draft.whole === place);
      if (same) return same;
      const renewed = whole.find((draft) => draft.whole?.name === place.name) ?? whole[i];
      return draftOf(place, renewed?.key ?? ++this.#keys, this.measures);
    });
    const keys = new Set<number>();
    const kept = followed.map((draft) => {
      const { key } = draft;
      const taken = keys.has(key);
      keys.add(key);
      return taken ? { ...draft, key: ++this.#keys } : draft;
    });
    this.drafts = [...kept, ...this.drafts.filter((draft) => !draft.whole)];
    this.#told = places;
  }

  override render() {
    const { measures: m, ofWaters, drafts } = this;
    return html`<fieldset class="inside">
      <legend>${words.title}</legend>
      <p class="hint">${words.why(m.show('distance', STREAM_REACH))}</p>
      ${ofWaters ? this.#ofWaters(ofWaters) : nothing}
      ${drafts.length === 0 ? html`<p>${words.noneOwn}</p>` : nothing}
      <div class="own">
        ${repeat(
          drafts,
          ({ key }) => key,
          (draft) => this.#own(draft),
        )}
      </div>
      <div class="buttons">
        <button type="button" id="add" @click=${this.#added}>${words.add}</button>
        ${
          drafts.some(({ whole }) => whole)
            ? html`<button type="button" class="quiet" @click=${this.#saved}>${words.save}</button>`
            : nothing
        }
      </div>
      <p role="status" class="problem" ?hidden=${!this.message}>${this.message}</p>
      <details ?open=${this.importing} @toggle=${this.#importToggled}>
        <summary>${words.takeFile}</summary>
        <div class="inside">
          ${
            this.importing
              ? html`<homeleg-stream-import
                  .measures=${m}
                  .own=${drafts.map(({ name }) => name.trim())}
                  @places-taken=${this.#taken}
                ></homeleg-stream-import>`
              : nothing
          }
        </div>
      </details>
    </fieldset>`;
  }

  #ofWaters(places: readonly StreamPlace[]) {
    if (places.length === 0) return html`<p>${words.noneOfWaters}</p>`;
    return html`<details>
      <summary>${words.ofWaters(places.length)}</summary>
      <ul class="plain">
        ${places.map((place) => html`<li>${words.upTo(place.name, this.#strongest(place))}</li>`)}
      </ul>
    </details>`;
  }

  #own(draft: PlaceDraft) {
    const { key, whole, name } = draft;
    const { faults } = this.#read(draft);
    const title = name.trim() || words.unnamed;
    const open = this.#open.has(key);
    return html`<details
      ?open=${open}
      @toggle=${(event: Event) => this.#toggled(key, (event.currentTarget as HTMLDetailsElement).open)}
    >
      <summary>
        ${whole ? words.upTo(title, this.#strongest(whole)) : title}
        ${Object.keys(faults).length > 0 && !open ? html`<span class="mark">${whole ? words.standing : words.unfinished}</span>` : nothing}
      </summary>
      ${
        open
          ? html`<div class="inside">
              <homeleg-stream-place-form
                id="place-${key}"
                .draft=${draft}
                .faults=${faults}
                .waypoints=${this.waypoints}
                .measures=${this.measures}
                @draft-edited=${({ detail }: DraftEdited) => this.#edited(detail.draft)}
              ></homeleg-stream-place-form>
              <div class="buttons">
                <button type="button" class="quiet" @click=${() => this.#removed(key)}>${words.remove(title)}</button>
              </div>
            </div>`
          : nothing
      }
    </details>`;
  }

  #read(draft: PlaceDraft) {
    const others = this.drafts.filter(({ key }) => key !== draft.key);
    const taken = new Set([...(this.ofWaters ?? []), ...others].map(({ name }) => name.trim()));
    return readPlace(draft, taken, this.measures);
  }

  #strongest({ springs, neaps }: StreamPlace): string {
    return this.measures.show('speed', Math.max(...springs.map(({ rate }) => rate), ...neaps.map(({ rate }) => rate)));
  }

  #edited(draft: PlaceDraft): void {
    const { place } = this.#read(draft);
    const { whole: _, ...rest } = draft;
    const whole = place && draft.whole && samePlace(place, draft.whole) ? draft.whole : (place ?? draft.whole);
    const next: PlaceDraft = { ...rest, ...(whole && { whole }) };
    this.#keep(this.drafts.map((each) => (each.key === draft.key ? next : each)));
  }

  #toggled(key: number, open: boolean): void {
    if (open === this.#open.has(key)) return;
    if (open) this.#open.add(key);
    else this.#open.delete(key);
    this.requestUpdate();
  }

  async #added(): Promise<void> {
    const draft = newDraft(++this.#keys);
    this.#open.add(draft.key);
    this.drafts = [...this.drafts, draft];
    await this.updateComplete;
    const form = this.renderRoot.querySelector(`homeleg-stream-place-form#place-${draft.key}`) as HTMLElement & {
      updateComplete: Promise<unknown>;
    };
    await form.updateComplete;
    form.focus();
  }

  async #removed(key: number): Promise<void> {
    this.#open.delete(key);
    this.#keep(this.drafts.filter((draft) => draft.key !== key));
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('#add')?.focus();
  }

  /** Places of a file take the place of one's own of the same name; what is wrong with them is said at once. */
  #taken({ detail: { drafts } }: PlacesTaken): void {
    this.importing = false;
    const names = new Set(drafts.map(({ name }) => name.trim()));
    const kept = this.drafts.filter(({ name }) => !names.has(name.trim()));
    const brought = drafts.map((draft) => ({ ...draft, key: ++this.#keys, checked: true }));
    this.drafts = [...kept, ...brought];
    const read = brought.map((draft): PlaceDraft => {
      const { whole, ...rest } = draft;
      const { place } = this.#read(draft);
      if (!place) this.#open.add(draft.key);
      return place ? { ...rest, whole: whole ?? place } : rest;
    });
    this.#keep([...kept, ...read]);
  }

  #keep(drafts: readonly PlaceDraft[]): void {
    this.drafts = drafts;
    const streamPlaces = drafts.flatMap(({ whole }) => whole ?? []);
    const before = this.#told ?? [];
    if (streamPlaces.length === before.length && streamPlaces.every((place, i) => place === before[i])) return;
    this.#told = streamPlaces;
    this.places = streamPlaces;
    const detail = { streamPlaces };
    this.dispatchEvent(new CustomEvent('stream-places-edited', { detail }) satisfies StreamPlacesEdited);
  }

  async #importToggled(event: Event): Promise<void> {
    const { open } = event.currentTarget as HTMLDetailsElement;
    if (!open) {
      this.importing = false;
      return;
    }
    try {
      await import('./stream-import.ts');
      this.message = '';
      this.importing = true;
    } catch {
      this.message = this.say(() => words.partFailed);
    }
  }

  async #saved(): Promise<void> {
    try {
      const { streamPlacesText } = await import('./stream-door.ts');
      saveFile('stream-places.json', streamPlacesText(this.drafts.flatMap(({ whole }) => whole ?? [])));
    } catch {
      this.message = this.say(() => words.partFailed);
    }
  }
}

function samePlace(a: StreamPlace, b: StreamPlace): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

define('homeleg-stream-places', StreamPlaces);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-stream-places': StreamPlaces;
  }
}
