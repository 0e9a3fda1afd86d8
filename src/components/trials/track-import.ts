import { html, nothing } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Run, Trials } from '../../core/trials/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { saveFile } from '../planner/save-file.ts';
import { controls } from '../theme/controls.styles.ts';
import { filePickerStyles } from '../theme/open-file.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { trackWords as words } from '../words/en-trials.ts';
import { lastLoad, withRun } from './edit-trials.ts';
import './group-card.ts';
import type { ReadingsTyped } from './group-card.ts';
import { sampleTracks } from './sample.ts';
import './stretch-table.ts';
import type { RunPicked, StretchAsked } from './stretch-table.ts';
import { trackImportStyles } from './track-import.styles.ts';
import './track-plot.ts';
import { problemText } from '../words/en-problems.ts';
import type { EndMoved, StretchWanted } from './track-plot.ts';
import type { TextFile } from './track-reader.ts';
import {
  addedStretch,
  type Found,
  type GroupReadings,
  moved,
  type OpenTrack,
  paired,
  type RunToBe,
  runFrom,
  runsToBe,
} from './track-work.ts';
import { tracksBeside } from './tracks-beside.ts';

export type RunsMade = CustomEvent<{ runs: readonly Run[] }>;

/** Runs shown before somebody asks for all. */
const FIRST = 12;

/**
 * @summary Opens recorded tracks, finds the passes in them, pairs them out and back, and makes runs of them.
 * @fires runs-made - the user takes the runs over
 */
export class TrackImport extends SpeakingElement {
  static override styles = [tokens, controls, filePickerStyles, trackImportStyles];

  @property({ attribute: false }) trials: Trials | undefined;
  @property() usual = '';
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private tracks: readonly OpenTrack[] = [];
  @state() private found: readonly Found[] = [];
  @state() private readings: Readonly<Record<string, GroupReadings>> = {};
  /** What could not be used, and what was found amiss. */
  @state() private messages: readonly string[] = [];
  /** Share read, 0 to 1; undefined while nothing is being read. */
  @state() private progress: { readonly share: number; readonly file: string } | undefined;
  @state() private mapShown = false;
  @state() private said = '';
  /** Runs beyond the first few are shown as well. */
  @state() private all = false;

  @query('input[type=file]') private picker!: HTMLInputElement;

  #reading: AbortController | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#reading?.abort();
  }

  override render() {
    const { trials } = this;
    if (!trials) return nothing;
    return html`
      <p class="why">${words.why}</p>
      <div class="buttons">
        <button type="button" class="primary" @click=${() => this.picker.click()}>${words.open}</button>
        <input
          type="file"
          multiple
          accept=".gpx,application/gpx+xml"
          tabindex="-1"
          aria-label=${words.open}
          @change=${this.#picked}
        />
        <button type="button" @click=${this.#sampleWanted}>${words.sample}</button>
        ${
          this.tracks.length > 0
            ? html`<button type="button" class="quiet" @click=${this.#closed}>${words.close}</button>`
            : nothing
        }
      </div>
      <div role="status">
        ${this.#progress()}
        ${
          this.messages.length > 0
            ? html`<ul class="messages">
              ${this.messages.map((message) => html`<li>${message}</li>`)}
            </ul>`
            : nothing
        }
        ${this.said ? html`<p class="said">${this.said}</p>` : nothing}
      </div>
      ${repeat(
        this.tracks,
        ({ id }) => id,
        (open) => this.#track(open),
      )}
      ${this.tracks.length > 0 ? this.#map() : nothing} ${this.#toBe(trials)}
    `;
  }

  #progress() {
    const { progress } = this;
    if (!progress) return nothing;
    return html`<div class="progress">
      <label>${words.reading(progress.file)} <progress max="1" .value=${progress.share}></progress></label>
      <button type="button" @click=${this.#cancelled}>${words.cancel}</button>
    </div>`;
  }

  #track(open: OpenTrack) {
    const own = this.found.filter(({ track }) => track === open.id);
    return html`<section data-track=${open.id}>
      <homeleg-track-plot
        .open=${open}
        .found=${own}
        .measures=${this.measures}
        @end-moved=${(event: EndMoved) => this.#endMoved(event, open)}
        @stretch-wanted=${(event: StretchWanted) => this.#stretchWanted(event, open)}
      ></homeleg-track-plot>
      <homeleg-stretch-table
        .all=${this.found}
        track=${open.id}
        .measures=${this.measures}
        @end-moved=${(event: EndMoved) => this.#endMoved(event, open)}
        @run-picked=${this.#runPicked}
        @stretch-asked=${this.#stretchAsked}
      ></homeleg-stretch-table>
    </section>`;
  }

  #map() {
    return html`<details @toggle=${this.#mapToggled}>
      <summary>${words.map}</summary>
      ${
        this.mapShown
          ? html`<homeleg-track-map
            .tracks=${this.tracks}
            .found=${this.found}
            .measures=${this.measures}
          ></homeleg-track-map>`
          : nothing
      }
    </details>`;
  }

  #toBe(trials: Trials) {
    if (this.tracks.length === 0) return nothing;
    const runs = runsToBe(this.found);
    return html`
      <div class="groups">
        ${repeat(
          this.all ? runs : runs.slice(0, FIRST),
          ({ name }) => name,
          (toBe) => html`<homeleg-group-card
            class="group"
            .trials=${trials}
            .toBe=${toBe}
            .readings=${this.#readingsOf(toBe, trials)}
            .measures=${this.measures}
            @readings-typed=${this.#readingsTyped}
          ></homeleg-group-card>`,
        )}
      </div>
      ${
        runs.length > FIRST && !this.all
          ? html`<button type="button" class="quiet" @click=${this.#allWanted}>${words.allRuns(runs.length)}</button>`
          : nothing
      }
      <div class="buttons">
        <button type="button" class="primary" ?disabled=${runs.length === 0} @click=${() => this.#taken(trials, runs)}>
          ${words.take(runs.length)}
        </button>
        <button type="button" @click=${this.#saved}>${words.saveTracks}</button>
      </div>
    `;
  }

  /** Nobody changed seat between two runs until somebody says so. */
  #readingsOf({ name }: RunToBe, trials: Trials): GroupReadings {
    const own = this.readings[name];
    if (own) return own;
    const before = runsToBe(this.found).findLast((run) => run.name < name && this.readings[run.name]);
    const last = before && this.readings[before.name];
    return {
      setup: last?.setup ?? trials.runs.at(-1)?.setup ?? this.usual,
      load: last?.load ?? lastLoad(trials),
      fullThrottle: false,
      reading: { kind: last?.reading.kind ?? 'rate' },
    };
  }

  async #picked(): Promise<void> {
    const files = [...(this.picker.files ?? [])];
    this.picker.value = '';
    const { textOfBytes } = await import('../../core/files/text-of-bytes.ts');
    await this.#read(
      files.map((file) => ({
        name: file.name,
        text: async () => textOfBytes(new Uint8Array(await file.arrayBuffer())),
      })),
    );
  }

  async #sampleWanted(): Promise<void> {
    const files = await sampleTracks();
    if (files.length === 0) this.messages = [words.sampleFailed];
    else await this.#read(files.map(({ name, text }) => ({ name, text: async () => text })));
  }

  async #read(files: readonly TextFile[]): Promise<void> {
    if (files.length === 0) return;
    this.#reading?.abort();
    const reading = new AbortController();
    this.#reading = reading;
    const wanted = () => !reading.signal.aborted;
    this.messages = [];
    this.said = '';
    this.all = false;
    this.progress = { share: 0, file: files[0]!.name };
    try {
      const told = (share: number, file: string) => {
        if (wanted()) this.progress = { share, file };
      };
      const read = await tracksBeside(files, told, reading.signal);
      if (!read || !wanted()) return;
      this.tracks = read.tracks;
      this.found = paired(read.tracks);
      this.readings = {};
      this.messages = [
        ...read.refused.flatMap(({ file, problems }) =>
          problems.map((problem) => words.of(file, problemText(problem))),
        ),
        ...read.tracks.flatMap(({ track, notes }) => notes.map(({ message }) => words.of(track.name, message))),
      ];
      this.said = words.foundSaid(this.found.length, runsToBe(this.found).length);
      void this.#askLand(wanted);
    } catch {
      if (wanted()) this.messages = [words.failed];
    } finally {
      if (wanted()) this.progress = undefined;
    }
  }

  /** Passes over land are a sign of a wrong file or a wrong boat; only known where there are local waters. */
  async #askLand(wanted: () => boolean): Promise<void> {
    try {
      const { overLand } = await import('./over-land.ts');
      const ashore = await overLand(this.found.map(({ stretch }) => stretch));
      if (wanted() && ashore.length > 0)
        this.messages = [...this.messages, words.ashore(ashore.map((i) => i + 1).join(', '))];
    } catch {
      // Without the network nobody knows; the runs are good without.
    }
  }

  #cancelled(): void {
    this.#reading?.abort();
    this.progress = undefined;
  }

  #closed(): void {
    this.#reading?.abort();
    this.tracks = [];
    this.found = [];
    this.messages = [];
    this.said = '';
  }

  #endMoved({ detail }: EndMoved, open: OpenTrack): void {
    this.found = moved(this.found, detail.id, detail, open);
  }

  #stretchWanted({ detail }: StretchWanted, open: OpenTrack): void {
    const more = addedStretch(this.found, open, detail);
    if (more) this.found = more;
    else this.said = words.tooShort;
  }

  #runPicked({ detail }: RunPicked): void {
    this.found = this.found.map((one) => (one.id === detail.id ? { ...one, run: detail.run } : one));
  }

  #stretchAsked({ detail }: StretchAsked): void {
    const one = this.found.find(({ id }) => id === detail.id);
    if (!one) return;
    if (detail.what === 'remove') {
      this.found = this.found.filter((other) => other !== one);
      return;
    }
    const plot = this.renderRoot.querySelector(`[data-track="${one.track}"]`)?.querySelector('homeleg-track-plot');
    plot?.show(one.stretch.start, one.stretch.end);
    plot?.scrollIntoView({ block: 'nearest' });
  }

  #allWanted(): void {
    this.all = true;
  }

  #readingsTyped({ detail }: ReadingsTyped): void {
    this.readings = { ...this.readings, [detail.run]: detail.readings };
  }

  #mapToggled(event: Event): void {
    if (!(event.currentTarget as HTMLDetailsElement).open) return;
    this.mapShown = true;
    void import('./track-map.ts');
  }

  #taken(trials: Trials, toBe: readonly RunToBe[]): void {
    let next = trials;
    const runs = toBe.map((run) => {
      const made = runFrom(run, this.#readingsOf(run, trials), next);
      next = withRun(next, made);
      return made;
    });
    this.#closed();
    this.dispatchEvent(new CustomEvent('runs-made', { detail: { runs }, bubbles: true }) satisfies RunsMade);
  }

  async #saved(): Promise<void> {
    const { gpxOfTracks } = await import('../../core/files/gpx-writer.ts');
    const name = this.tracks[0]?.track.name.replace(/[^\p{L}\p{N}]+/gu, '-') || 'track';
    saveFile(`${name}.gpx`, gpxOfTracks(this.tracks.map(({ track }) => track)), 'application/gpx+xml');
  }
}

define('homeleg-track-import', TrackImport);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-track-import': TrackImport;
  }
}
