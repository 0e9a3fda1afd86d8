import { html, nothing, type ReactiveController, type ReactiveControllerHost } from 'lit';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Policy } from '../../core/trip/shapes.ts';
import type { HostBoat, HostGiven, HostTaken } from '../host/host-given.ts';
import { HostProblems } from '../host/host-problems.ts';
import { HostWishes, type Wished } from '../host/host-wishes.ts';
import { dataName } from '../words/en-data.ts';
import { hostWords as words } from '../words/en-host.ts';
import { firstDraft } from './first-trip.ts';
import { sameTrip } from './trip-history.ts';
import type { TripOnScreen } from './trip-on-screen.ts';
import { withHostBoat } from './with-host-boat.ts';

/** What the page round the planner wishes: its boats and reserve, a trip and waters to begin with, and what is wrong with it. */
export class HostSide implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement & { tellSize: boolean };
  readonly #screen: TripOnScreen;
  readonly #wishes: HostWishes;
  readonly problems: HostProblems;
  #sizes: object | undefined;
  #endSizes: (() => void) | undefined;
  /** The reserve that the page insists on. */
  reserve: Partial<Policy> = {};
  waters: WatersFile | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement & { tellSize: boolean }, screen: TripOnScreen) {
    this.#host = host;
    this.#screen = screen;
    this.problems = new HostProblems(host);
    this.#wishes = new HostWishes(host, this.problems, (taken, before) => void this.#take(taken, before));
    host.addController(this);
  }

  hostUpdated(): void {
    if (this.#host.tellSize !== (this.#sizes !== undefined)) void this.#tellSizes(this.#host.tellSize);
  }

  hostDisconnected(): void {
    this.#endSizes?.();
    this.#sizes = this.#endSizes = undefined;
  }

  async #tellSizes(wanted: boolean): Promise<void> {
    this.hostDisconnected();
    if (!wanted) return;
    const visit = {};
    this.#sizes = visit;
    const { tellSizes } = await import('../host/size-told.ts');
    if (this.#sizes === visit && this.#host.isConnected) this.#endSizes = tellSizes(this.#host);
  }

  /** The local waters came, or could not be had. */
  watersLooked(failed: boolean): void {
    this.problems.tell(['waters'], failed ? [{ attribute: 'waters', message: words.waters }] : []);
  }

  look(given: Wished): void {
    void this.#wishes.look(given);
  }

  /** The page's boats to choose from, if it has any. */
  boats() {
    const { boats } = this.#wishes;
    if (boats.length === 0) return nothing;
    const now = boats.find(({ craft }) => craft === this.#screen.trip.craft);
    return html`<label>
      ${words.boats}
      <select @change=${this.#picked}>
        <option value="" ?selected=${!now}>${words.chooseBoat}</option>
        ${boats.map((boat) => html`<option value=${boat.id} ?selected=${boat === now}>${dataName(boat.name)}</option>`)}
      </select>
    </label>`;
  }

  readonly #picked = (event: Event): void => {
    const { value } = event.target as HTMLSelectElement;
    const boat = this.#wishes.boats.find(({ id }) => id === value);
    if (boat) this.#put(boat);
  };

  #put(boat: HostBoat): void {
    const trip = withHostBoat(this.#screen.trip, boat);
    this.#screen.replace({ trip, origin: {} }, words.boatTaken(dataName(boat.name)));
  }

  /** What somebody entered before goes first over a boat or trip to begin with. */
  async #take({ boat, reserve, trip, waters }: HostTaken, before: HostGiven): Promise<void> {
    this.reserve = reserve ? { reserve: [reserve] } : {};
    this.waters = waters;
    await this.#screen.restored;
    const fresh = sameTrip(this.#screen.draft, firstDraft());
    if (trip && fresh) this.#screen.set(trip);
    if (boat && (before.boat !== '' || (fresh && !trip))) this.#screen.set(withHostBoat(this.#screen.trip, boat));
    this.#host.requestUpdate();
  }
}
