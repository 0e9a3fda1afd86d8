import { html, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Route, WatersFile, Waypoint } from '../../core/route/shapes.ts';
import { define } from '../define.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { toolButton } from '../route-map/map-controls.ts';
import { place, type RouteEdit, sameWaypoints } from '../route-map/waypoint-edits.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { roundText } from './round-text.ts';
import { tableFieldStyles } from './table-field.styles.ts';
import { waypointWords as words } from './words.ts';

/** Distances to keep off that can be chosen, m. */
const CLEARANCES = [10, 20, 50, 100, 200];

/**
 * @summary Takes legs round land, shoals and keep-outs at a chosen distance.
 * @fires route-edited - waypoints were put in between
 */
export class RoundHelp extends SpeakingElement {
  static override styles = [tokens, controls, tableFieldStyles];

  @property({ attribute: false }) route: Route | undefined;
  @property({ attribute: false }) waters: WatersFile | undefined;
  /** ISO 8601; keep-outs count in their season. */
  @property() departure: string | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  @state() private clearance = 50;
  @state() private said = '';

  /** What was made of what the last time, so that another distance starts from the route as it was drawn. */
  #last: { before: readonly Waypoint[]; after: readonly Waypoint[] } | undefined;

  /** The waypoints that `said` is about. */
  #about: readonly Waypoint[] = [];

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('route') && !sameWaypoints(this.#about, this.route?.waypoints ?? [])) this.said = '';
  }

  override render() {
    const { route, measures } = this;
    const possible = this.waters !== undefined && (route?.waypoints.length ?? 0) > 1;
    return html`<div class="fields round">
        <div class="field">
          <label for="clearance">${words.keepOff}</label>
          <select
            id="clearance"
            .value=${String(this.clearance)}
            @change=${(event: Event) => {
              this.clearance = Number((event.currentTarget as HTMLSelectElement).value);
            }}
          >
            ${CLEARANCES.map(
              (metres) =>
                html`<option value=${metres} ?selected=${metres === this.clearance}>
                  ${measures.show('length', metres)}
                </option>`,
            )}
          </select>
        </div>
        ${toolButton(words.takeRound, possible, () => void this.takeRound())}
      </div>
      <p class="hint" id="said" role="status">${this.waters ? this.said : words.roundNeedsWaters}</p>`;
  }

  /** Takes all legs round, or those that are sailed as these, and says what came of it. */
  async takeRound(legs?: readonly number[]): Promise<void> {
    const { route, waters, clearance, measures } = this;
    if (!route || !waters) return;
    // A press must be seen to do something before the search holds everything up.
    this.#about = route.waypoints;
    this.said = words.lookingForWay;
    await this.updateComplete;
    await new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn)));
    const [{ drawnLegOf, takeRouteRound }, { prepareWaters }] = await Promise.all([
      import('../../core/route/take-round-route.ts'),
      import('../../core/route/waters.ts'),
    ]);
    // Edited meanwhile: that was not what was asked for. The same waypoints in a new object are no edit.
    if (!this.route || !sameWaypoints(this.route.waypoints, route.waypoints)) {
      this.said = '';
      return;
    }
    const again = !legs && this.#last && sameWaypoints(this.#last.after, route.waypoints);
    const from = again ? { ...route, waypoints: this.#last!.before } : route;
    const drawn = legs && [...new Set(legs.map((leg) => drawnLegOf(route, leg)))];
    const choice = { clearance, departure: this.departure };
    const found = takeRouteRound(from, prepareWaters(waters), choice, drawn);
    this.said = roundText(found, clearance, measures);
    const waypoints = found.waypoints.map((at) => (from.waypoints.includes(at) ? at : { ...at, ...place(at) }));
    this.#about = waypoints;
    if (sameWaypoints(waypoints, route.waypoints)) return;
    this.#last = { before: from.waypoints, after: waypoints };
    const detail: RouteEdit = { waypoints, live: false, what: 'inserted' };
    this.dispatchEvent(new CustomEvent('route-edited', { detail, bubbles: true, composed: true }));
  }
}

define('homeleg-round-help', RoundHelp);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-round-help': RoundHelp;
  }
}
