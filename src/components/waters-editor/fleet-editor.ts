import { html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { readFleet } from '../../core/files/fleet-file.ts';
import type { Fleet, HireRoute } from '../../core/hire/shapes.ts';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Problem } from '../../core/units/result.ts';
import '../hire-desk/fleet-card.ts';
import type { FleetSet } from '../hire-desk/fleet-card.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { DEMO_FLEET } from '../reserve-check/demo-fleet.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { measuresFor } from '../units/measures.ts';
import { problemText } from '../words/en-problems.ts';
import { watersWords as words } from '../words/en-waters.ts';
import { routesOf } from './routes-of.ts';
import { watersEditorStyles } from './waters-editor.styles.ts';

/**
 * @summary A fleet file, opened, checked and saved beside the waters; it can take them in with their set routes. Nothing
 * of it is kept: the hire desk keeps its own.
 */
export class FleetEditor extends SpeakingElement {
  static override styles = [tokens, controls, watersEditorStyles];

  /** The waters as they stand; undefined while they have errors. */
  @property({ attribute: false }) waters: WatersFile | undefined;

  @state() private fleet: Fleet | undefined;
  @state() private said = '';
  @state() private problems: readonly Problem[] = [];

  override render() {
    const { fleet, waters } = this;
    return html`<div class="bench">
      ${fleet ? nothing : html`<p class="hint">${words.fleetDemo}</p>`}
      <homeleg-fleet-card
        .fleet=${fleet ?? DEMO_FLEET}
        ?demo=${fleet === undefined}
        .measures=${measuresFor('nautical', this.language)}
        @fleet-set=${({ detail }: FleetSet) => {
          this.fleet = detail.fleet;
          this.said = '';
        }}
      ></homeleg-fleet-card>
      <div class="row">
        <button type="button" aria-disabled=${waters ? nothing : 'true'} @click=${this.#takeWaters}>
          ${words.fleetWaters}
        </button>
      </div>
      ${this.problems.map((problem) => html`<p class="problem">${problemText(problem)}</p>`)}
      <p role="status">${this.said}</p>
    </div>`;
  }

  #takeWaters(): void {
    const { waters } = this;
    if (!waters) return;
    const fleet = this.fleet ?? DEMO_FLEET;
    const drawn = routesOf(waters);
    const names = new Set(drawn.map(({ name }) => name));
    // A route drawn anew takes the place of the one of its name.
    const routes = renamed([...fleet.routes.filter(({ name }) => !names.has(name)), ...drawn]);
    const { waters: _, ...rest } = fleet;
    const read = readFleet(JSON.parse(JSON.stringify({ ...rest, localWaters: waters, routes })));
    this.problems = read.ok ? [] : read.problems;
    if (!read.ok) return;
    this.fleet = read.value;
    this.said = words.fleetTaken(drawn.length);
  }
}

/** Routes with ids of their own. */
function renamed(routes: readonly HireRoute[]): readonly HireRoute[] {
  const taken = new Set<string>();
  return routes.map((route) => {
    let { id } = route;
    for (let n = 2; taken.has(id); n++) id = `${route.id}-${n}`;
    taken.add(id);
    return { ...route, id };
  });
}

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-fleet-editor': FleetEditor;
  }
}
