import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { hostWords as words } from '../words/en-host.ts';
import type { HostProblems } from './host-problems.ts';

/** An element whose trip others show: a planner, a reserve check, or a piece that was given a trip. */
export interface TripSource extends HTMLElement {
  readonly trip?: Trip | undefined;
  readonly plan?: Plan | undefined;
  /** The trip with what its trials say of its boat. */
  readonly plannedTrip?: Trip | undefined;
  readonly watersInUse?: WatersFile | undefined;
  readonly units?: string;
  editTrip?(trip: Trip): void;
}

/** Follows the element that `for` names, wherever on the page it stands and whenever it comes. */
export class SharedTrip implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #problems: HostProblems;
  readonly #id: () => string;
  #root: Node | undefined;
  source: TripSource | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, problems: HostProblems, id: () => string) {
    this.#host = host;
    this.#problems = problems;
    this.#id = id;
    host.addController(this);
  }

  hostConnected(): void {
    this.#root = this.#host.getRootNode();
    this.#root.addEventListener('homeleg-plan', this.#heard);
    document.addEventListener('DOMContentLoaded', this.look);
    this.look();
  }

  hostDisconnected(): void {
    this.#root?.removeEventListener('homeleg-plan', this.#heard);
    document.removeEventListener('DOMContentLoaded', this.look);
    this.source = undefined;
  }

  /** Looks for the element anew. */
  readonly look = (): void => {
    // An attribute taken away leaves null.
    const id = this.#id() ?? '';
    const found = id === '' ? undefined : (this.#root as Document | ShadowRoot).getElementById?.(id);
    this.source = (found as TripSource | null) ?? undefined;
    const missing = id !== '' && !found && document.readyState !== 'loading';
    this.#problems.tell(['for'], missing ? [{ attribute: 'for', message: words.noSource(id) }] : []);
  };

  readonly #heard = (event: Event): void => {
    const { target } = event;
    if (!(target instanceof HTMLElement) || target === this.#host || target.id !== this.#id() || target.id === '')
      return;
    if (this.source !== target) this.look();
    this.#host.requestUpdate();
  };
}
