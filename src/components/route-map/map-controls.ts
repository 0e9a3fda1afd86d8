import { html, nothing } from 'lit';
import { mapWords as words } from './words.ts';

/** A button that stays focusable while it can do nothing: undo pressed to the end must not lose the place. */
export function toolButton(label: string, possible: boolean, act: () => void) {
  return html`<button type="button" aria-disabled=${possible ? nothing : 'true'} @click=${() => possible && act()}>
    ${label}
  </button>`;
}

const SIDES = [
  { name: 'west', sign: '←', x: -1, y: 0 },
  { name: 'north', sign: '↑', x: 0, y: -1 },
  { name: 'south', sign: '↓', x: 0, y: 1 },
  { name: 'east', sign: '→', x: 1, y: 0 },
] as const;

/** Four arrows that move the map, or the selected waypoint. */
export function arrowButtons(selected: number | undefined, act: (x: number, y: number) => void) {
  const target = selected === undefined ? words.moveMap : words.moveWaypoint(selected + 1);
  return html`<div class="arrows" role="group" aria-label=${target}>
    <span aria-hidden="true">${target}</span>
    ${SIDES.map(
      ({ name, sign, x, y }) => html`<button
        type="button"
        class="icon"
        aria-label="${target} ${words.directions[name]}"
        @click=${() => act(x, y)}
      >
        ${sign}
      </button>`,
    )}
  </div>`;
}

export interface SelectionActions {
  insert(index: number): void;
  delete(index: number): void;
  letGo(): void;
}

/** What can be done with the selected waypoint. */
export function selectionButtons(index: number, count: number, act: SelectionActions) {
  const name = words.selected(index + 1, count);
  return html`<div class="selection" role="group" aria-label=${name}>
    <p class="hint"><b>${name}.</b> ${words.hintSelected}</p>
    <button type="button" class="primary" @click=${() => act.letGo()}>${words.done}</button>
    <button type="button" @click=${() => act.insert(index)}>${words.insertBefore}</button>
    <button type="button" @click=${() => act.insert(index + 1)}>${words.insertAfter}</button>
    <button type="button" @click=${() => act.delete(index)}>${words.delete}</button>
  </div>`;
}

/** How the map is used, while nothing is selected. */
export function hints(count: number, thinned: boolean) {
  return html`<p class="hint">
    ${count === 0 ? words.hintEmpty : words.hint} <span class="fingers">${words.hintFingers}</span>
    ${thinned ? words.hintThinned : nothing}
  </p>`;
}

/** Whose map pictures these are: plain text of the page, or the makers of the street map. */
export function attribution(text: string) {
  const link = html`© <a href="https://www.openstreetmap.org/copyright" target="_blank" rel="noopener"
      >${words.openStreetMap}</a
    >`;
  return html`<p class="attribution">${text || link}</p>`;
}

/** Shows the pictures of a street map, or takes them away. */
export function streetMapButton(shown: boolean, act: (shown: boolean) => void) {
  return html`<button type="button" class="street-map" aria-pressed=${shown} @click=${() => act(!shown)}>
    ${words.streetMap}
  </button>`;
}

export function zoomButtons(act: (by: number) => void) {
  return html`<div class="zoom">
    <button type="button" class="icon" aria-label=${words.zoomIn} @click=${() => act(1)}>+</button>
    <button type="button" class="icon" aria-label=${words.zoomOut} @click=${() => act(-1)}>−</button>
  </div>`;
}
