import { html, nothing } from 'lit';
import { linkWords } from '../words/en-link.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import type { TripOnScreen } from './trip-on-screen.ts';

export interface Failures {
  readonly waters: boolean;
  readonly trials: boolean;
  readonly part: boolean;
}

/** What happened to the trip on screen, and what could not be had. */
export function notes(screen: TripOnScreen, failed: Failures) {
  const all = [
    screen.message &&
      html`<p class="note" part="note" role="status">
        ${screen.message}
        ${
          screen.cleared
            ? html`<button type="button" class="quiet" @click=${() => screen.stepped('undone')}>
                ${words.undoFresh}
              </button>`
            : nothing
        }
      </p>`,
    screen.aside &&
      html`<p class="note" part="note">
        ${linkWords.aside}
        <button type="button" class="quiet" @click=${() => screen.takeAside()}>${linkWords.takeAside}</button>
        <button type="button" class="quiet" @click=${() => screen.dropAside()}>${linkWords.dropAside}</button>
      </p>`,
    screen.notKept && html`<p class="note" part="note">${words.notKept}</p>`,
    failed.waters && html`<p class="note" part="note">${words.watersFailed}</p>`,
    failed.trials && html`<p class="note" part="note">${words.trialsFailed}</p>`,
    failed.part && html`<p class="note" part="note">${words.partFailed}</p>`,
  ].filter(Boolean);
  return all.length > 0 ? html`<div class="notes">${all}</div>` : nothing;
}
