import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Waters } from '../../core/route/waters.ts';
import { type Company, company, type Help, type Kept, type Member } from '../../core/trip/company.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { verdictMark } from '../answer/verdict-mark.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import { cell, head } from '../further/table-parts.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { keptNotes, withoutTyped } from '../passage-plan/passage-notes.ts';
import { sheetText } from '../passage-plan/passage-sheet.ts';
import { printSheet } from '../passage-plan/print-sheet.ts';
import { saveFile } from '../planner/save-file.ts';
import { controls } from '../theme/controls.styles.ts';
import { formStyles } from '../theme/form.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { cautions } from '../words/en-cautions.ts';
import { companyWords as words } from '../words/en-company.ts';
import { reasonText } from '../words/en-reasons.ts';
import { verdictWords } from '../words/en-verdict.ts';
import { companySheet } from './company-sheet.ts';
import { savedStyles } from './saved.styles.ts';
import type { Saved } from './saved-store.ts';

/** Boats that go along at most: every one may have to help every other. */
const MOST = 7;

/** @summary Several boats on the passage of the trip on screen: pace, who runs short first, who can help whom, one plan. */
export class BoatsInCompany extends SpeakingElement {
  static override styles = [tokens, controls, formStyles, savedStyles, answersStyles];

  @property({ attribute: false }) entries: readonly Saved[] = [];
  /** On screen, as planned. */
  @property({ attribute: false }) trip: Trip | undefined;
  @property({ attribute: false }) waters: Waters | undefined;
  @property({ attribute: false }) prepared: (trip: Trip) => Trip | undefined = (trip) => trip;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private along: ReadonlySet<string> = new Set();
  @state() private found: Company | undefined;
  @state() private refused = '';
  @state() private stale = false;

  protected override willUpdate(changed: PropertyValues): void {
    if (this.found && (changed.has('trip') || changed.has('along') || changed.has('waters'))) this.stale = true;
  }

  override render() {
    const trips = this.#trips;
    return html`
      <p class="hint">${words.about}</p>
      ${
        trips.length === 0
          ? html`<p class="hint">${words.none}</p>`
          : html`<fieldset>
              <legend class="sr">${words.title}</legend>
              ${trips.map((entry) => this.#tick(entry))}
            </fieldset>`
      }
      <div class="buttons">
        <button type="button" class="primary" ?disabled=${!this.trip} @click=${this.#work}>${words.work}</button>
      </div>
      ${this.refused ? html`<p class="problem" role="alert">${this.refused}</p>` : nothing}
      ${this.found ? this.#answer(this.found) : nothing}
    `;
  }

  #tick({ id, name }: Saved) {
    const ticked = (event: Event) => {
      const along = new Set(this.along);
      if ((event.target as HTMLInputElement).checked) along.add(id);
      else along.delete(id);
      this.along = along;
    };
    const full = this.along.size >= MOST && !this.along.has(id);
    return html`<label class="check">
      <input type="checkbox" .checked=${this.along.has(id)} ?disabled=${full} @change=${ticked} /> <span>${name}</span>
    </label>`;
  }

  #answer(found: Company) {
    const { boats, slowest, pace, shortest, verdict, helps } = found;
    const m = this.measures;
    const short = boats[shortest]!;
    return html`
      ${this.stale ? html`<p class="hint" role="status">${words.stale}</p>` : nothing}
      <p class="verdict ${verdict}">${verdictMark(verdict)} ${verdictWords[verdict]}</p>
      <p>
        ${boats.length > 1 ? words.pace(boats[slowest]!.name, m.show('speed', pace)) : words.alone(boats[0]!.name)}
        ${boats.length > 1 ? words.shortest(short.name, short.plan.store) : nothing}
      </p>
      <table role="table" class="cards">
        <caption>${words.boats}</caption>
        <thead role="rowgroup">
          <tr role="row">
            ${head(words.boat, false)} ${head(words.answer, false)} ${head(words.left)} ${head(words.over)}
            ${head(words.ifAlone)} ${head(words.time)}
          </tr>
        </thead>
        <tbody role="rowgroup">${boats.map((boat) => this.#boat(boat))}</tbody>
      </table>
      ${helps.length > 0 ? this.#helps(boats, helps) : nothing}
      <div class="buttons">
        <button type="button" @click=${this.#print}>${words.print}</button>
        <button type="button" @click=${this.#save}>${words.save}</button>
      </div>
      <p class="hint">${cautions().join(' ')}</p>
    `;
  }

  #boat({ name, plan, alone }: Kept) {
    const m = this.measures;
    const amount = (value: number) => m.show('amount', value, plan.store);
    const worst = plan.reasons.find(({ level }) => level === plan.verdict);
    const why = worst ? reasonText(worst, m, plan.store) : '';
    return html`<tr role="row" class=${plan.verdict}>
      <th role="rowheader" scope="row">${name} <span class="sub">${why}</span></th>
      ${cell(words.answer, html`<span class="verdict">${verdictWords[plan.verdict]}</span>`, 'text')}
      ${cell(words.left, amount(plan.left.median))} ${cell(words.over, amount(plan.left.median - plan.reserve))}
      ${cell(words.ifAlone, amount(alone.left.median))} ${cell(words.time, m.show('time', plan.time))}
    </tr>`;
  }

  #helps(boats: readonly Kept[], helps: readonly Help[]) {
    const m = this.measures;
    return html`<table role="table" class="cards">
        <caption>${words.helps}</caption>
        <thead role="rowgroup">
          <tr role="row">
            ${head(words.helper, false)} ${head(words.helped, false)} ${head(words.tow, false)}
            ${head(words.people, false)}
          </tr>
        </thead>
        <tbody role="rowgroup">
          ${helps.map(({ from, to, tow, aboard }) => {
            const { name, plan } = boats[from]!;
            const towed = tow
              ? words.towed[tow.verdict](m.show('speed', tow.speed ?? 0), m.show('amount', tow.left, plan.store))
              : words.towed['no-go']();
            return html`<tr role="row">
              <th role="rowheader" scope="row">${name}</th>
              ${cell(words.helped, boats[to]!.name, 'text')} ${cell(words.tow, towed, 'text')}
              ${cell(words.people, words.taken[aboard.verdict](aboard.people), 'text')}
            </tr>`;
          })}
        </tbody>
      </table>
      <p class="hint">${words.towNote}</p>`;
  }

  get #trips() {
    return this.entries.flatMap((entry) => (entry.kind === 'trip' ? [entry] : []));
  }

  #work(): void {
    const { trip } = this;
    if (!trip) return;
    const members: Member[] = [{ name: words.onScreen, trip }];
    for (const entry of this.#trips) {
      if (!this.along.has(entry.id)) continue;
      const own = this.prepared(entry.trip);
      if (!own) {
        // What its trials say is on its way.
        this.refused = words.stale;
        return;
      }
      members.push({ name: entry.name, trip: own });
    }
    const answer = company(members, this.waters);
    this.found = answer.ok ? answer.value : undefined;
    this.refused = answer.ok ? '' : [words.notPlanned(members[answer.boat]!.name), answer.message].join(' ');
    this.stale = false;
  }

  #print(): void {
    if (!this.found) return;
    const notes = keptNotes();
    void printSheet(
      companySheet(this.found, notes.onPaper ? notes : withoutTyped(notes), this.measures),
      this.language,
    );
  }

  #save(): void {
    if (!this.found) return;
    const text = sheetText(companySheet(this.found, withoutTyped(keptNotes()), this.measures));
    saveFile('passage-plan-in-company.txt', text, 'text/plain');
  }
}

define('homeleg-company', BoatsInCompany);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-company': BoatsInCompany;
  }
}
