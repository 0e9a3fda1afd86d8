import { html, nothing } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { writeProfile } from '../../core/files/profile-file.ts';
import type { Fit } from '../../core/trials/fit-shapes.ts';
import type { BoatProfile, Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import '../field/choice-field.ts';
import type { ChoiceMade } from '../field/choice-field.ts';
import { fieldStyles } from '../field/field.styles.ts';
import type { CraftOrigin } from '../planner/first-trip.ts';
import { saveFile } from '../planner/save-file.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { filePickerStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { problemText } from '../words/en-problems.ts';
import { trialWords, profileWords as words } from '../words/en-trials.ts';
import { profileCardStyles } from './profile-card.styles.ts';
import { dayText, setupName } from './texts.ts';
import { useInPlanner } from './to-planner.ts';

export type ProfileEdited = CustomEvent<{ profile: BoatProfile }>;
/** A profile to take the place of the one on screen, or why there is none. */
export type ProfileOpened = CustomEvent<{ profile: BoatProfile; name: string } | { refused: string }>;

/**
 * @summary The boat with its runs as one file: its name, who measured, to download, to open, to use in the planner.
 * @fires profile-edited - the user changed the name, who measured or the usual setup
 * @fires profile-opened - a file was opened, or could not be
 */
export class ProfileCard extends SpeakingElement {
  static override styles = [tokens, controls, fieldStyles, formStyles, filePickerStyles, profileCardStyles];

  @property({ attribute: false }) profile: BoatProfile | undefined;
  @property({ attribute: false }) origin: CraftOrigin = {};
  @property({ attribute: false }) fit: Fit | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private handed: 'yes' | 'no' | undefined;

  @query('input[type=file]') private picker!: HTMLInputElement;

  override render() {
    const { profile, measures, handed } = this;
    if (!profile) return nothing;
    const { trials } = profile;
    return html`<div class="stack">
      <p class="why">${words.why}</p>
      <div class="fields wide">
        <div class="field">
          <label for="name">${words.name}</label>
          <input id="name" maxlength="100" autocomplete="off" .value=${profile.name} @change=${this.#named} />
        </div>
        <div class="field">
          <label for="by">${words.measuredBy}</label>
          <input id="by" maxlength="100" autocomplete="off" .value=${trials.measuredBy ?? ''} @change=${this.#measuredBy} />
        </div>
      </div>
      ${
        trials.setups.length > 1
          ? html`<homeleg-choice-field
            label=${words.usual}
            .choices=${trials.setups.map((setup) => ({ value: setup.id, label: setupName(setup, measures) }))}
            .value=${profile.usual}
            @choice-made=${({ detail }: ChoiceMade) => this.#tell({ ...profile, usual: detail.value })}
          ></homeleg-choice-field>`
          : nothing
      }
      <p class="facts">${this.#facts(trials)}</p>
      <div class="buttons">
        <button type="button" class="primary" @click=${this.#usePressed}>${words.usePlanner}</button>
        <button type="button" @click=${this.#downloadPressed}>${words.download}</button>
        <button type="button" @click=${() => this.picker.click()}>${words.upload}</button>
        <input
          type="file"
          accept=".json,application/json"
          tabindex="-1"
          aria-label=${words.upload}
          @change=${this.#filePicked}
        />
      </div>
      <p class="hint">${words.link}</p>
      <p role="status" class="handed">
        ${handed === 'yes' ? html`${words.used} <a href="/">${words.toPlanner}</a>` : handed === 'no' ? words.notUsed : ''}
      </p>
    </div>`;
  }

  #facts({ runs, refills, measuredBy }: Trials): string {
    const last = this.fit?.lastDay && dayText(this.fit.lastDay, this.measures);
    return words.facts(trialWords.count(runs.length, refills.length), measuredBy, last);
  }

  #named(event: Event): void {
    const name = (event.target as HTMLInputElement).value.trim();
    if (this.profile) this.#tell({ ...this.profile, name: name || this.profile.trials.hull.name });
  }

  #measuredBy(event: Event): void {
    const { profile } = this;
    if (!profile) return;
    const by = (event.target as HTMLInputElement).value.trim();
    const { measuredBy: _, ...rest } = profile.trials;
    this.#tell({ ...profile, trials: by ? { ...rest, measuredBy: by } : rest });
  }

  async #usePressed(): Promise<void> {
    if (!this.profile) return;
    this.handed = (await useInPlanner(this.profile, this.origin)) ? 'yes' : 'no';
  }

  #downloadPressed(): void {
    const { profile } = this;
    if (!profile) return;
    const name = profile.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'boat';
    saveFile(`${name}.boat.json`, writeProfile(profile));
  }

  async #filePicked(): Promise<void> {
    const file = this.picker.files?.[0];
    this.picker.value = '';
    if (!file) return;
    try {
      const { readProfile } = await import('../../core/files/profile-file.ts');
      const read = readProfile(await file.text());
      const why = read.ok ? [] : this.say(() => read.problems.slice(0, 3).map((problem) => `${problemText(problem)}.`));
      this.#opened(
        read.ok ? { profile: read.value, name: file.name } : { refused: [words.notOpened, ...why].join(' ') },
      );
    } catch {
      this.#opened({ refused: words.notOpened });
    }
  }

  #opened(detail: ProfileOpened['detail']): void {
    this.handed = undefined;
    this.dispatchEvent(new CustomEvent('profile-opened', { detail, bubbles: true }) satisfies ProfileOpened);
  }

  #tell(profile: BoatProfile): void {
    this.profile = profile;
    this.handed = undefined;
    const detail = { profile };
    this.dispatchEvent(new CustomEvent('profile-edited', { detail, bubbles: true }) satisfies ProfileEdited);
  }
}

define('homeleg-profile-card', ProfileCard);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-profile-card': ProfileCard;
  }
}
