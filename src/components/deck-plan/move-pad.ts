import { html } from 'lit';
import { deckWords } from '../words/en-deck.ts';

/** m per press. */
const STEP = 0.05;

const WAYS = [
  ['port', 'M10 3L4 8L10 13', 0, -STEP],
  ['forward', 'M3 10L8 4L13 10', STEP, 0],
  ['aft', 'M3 6L8 12L13 6', -STEP, 0],
  ['starboard', 'M6 3L12 8L6 13', 0, STEP],
] as const;

/** Four buttons that move a piece by a hand's breadth. */
export function movePad(move: (x: number, y: number) => void) {
  return html`<div class="pad">${WAYS.map(
    ([way, path, x, y]) => html`<button
      type="button"
      class="icon"
      aria-label=${deckWords.directions[way]}
      @click=${() => move(x, y)}
    >
      <svg viewBox="0 0 16 16" width="18" height="18" aria-hidden="true"><path d=${path} /></svg>
    </button>`,
  )}</div>`;
}
