import type { ReactiveControllerHost } from 'lit';
import type { Craft } from '../../core/craft/shapes.ts';
import { ownCraft } from '../../core/hire/own-craft.ts';
import type { Fleet, HireBoat } from '../../core/hire/shapes.ts';
import { prepareWaters, type Waters } from '../../core/route/waters.ts';
import type { Policy } from '../../core/trip/shapes.ts';
import type { HostGiven, HostTaken } from '../host/host-given.ts';
import { HostProblems } from '../host/host-problems.ts';
import { HostWishes, inlineJson } from '../host/host-wishes.ts';
import { shippedWaters } from '../planner/fetch-waters.ts';
import { DEMO_CRAFTS } from './demo-crafts.ts';
import { DEMO_FLEET } from './demo-fleet.ts';

/** What the page wrote on a reserve check. */
export type DeskGiven = Pick<HostGiven, 'units' | 'theme' | 'reserve' | 'boat' | 'fleet' | 'fleetFile'> & {
  readonly boats: readonly HireBoat[];
};

/** The desk as the page wishes it: its fleet with routes and waters, the boat to begin with, a reserve always kept. */
export class PageDesk {
  readonly problems: HostProblems;
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #wishes: HostWishes;
  #asked = false;
  #demoWaters: Waters | undefined;
  #ownWaters: Waters | undefined;
  #own: Fleet | undefined;
  /** Makes boats of shipped parts, once it is loaded. */
  #shipped: ((boat: HireBoat) => Craft) | undefined;
  #shippedAsked = false;
  reserve: Partial<Policy> = {};
  /** The boat that the page names, until another one is picked. */
  boatId: string | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    this.problems = new HostProblems(host);
    this.#wishes = new HostWishes(host, this.problems, (taken) => this.#take(taken), {
      units: 'metric',
      boats: DEMO_FLEET.boats,
    });
  }

  /** Undefined while a page's own fleet is not there: nobody goes out on the word of an invented one instead. */
  get fleet(): Fleet | undefined {
    return this.#asked ? this.#own : DEMO_FLEET;
  }

  get invented(): boolean {
    return this.fleet === DEMO_FLEET;
  }

  /** Those of the set routes; undefined where they are not there, and the answer then says what was not checked. */
  get waters(): Waters | undefined {
    const { fleet } = this;
    return fleet?.localWaters ? this.#ownWaters : fleet?.waters === DEMO_FLEET.waters ? this.#demoWaters : undefined;
  }

  look({ units, theme, reserve, boat, fleet, fleetFile, boats }: DeskGiven): void {
    // Named one by one: accessors of an element do not spread.
    const given = { units, theme, reserve, boat, fleet, fleetFile, center: '', zoom: undefined, tiles: '' };
    this.#asked = (fleet ?? '') !== '' || fleetFile !== undefined || inlineJson(this.#host).includes('"fleet"');
    const known = boats === DEMO_FLEET.boats && this.#asked ? undefined : boats;
    void this.#wishes.look({ ...given, boats: known });
  }

  /**
   * What a boat of this desk is. Undefined while the catalogue is not there, of which only a page's own boats may be made:
   * the invented ones bring what they are.
   */
  craftOf(boat: HireBoat): Craft | undefined {
    const known = DEMO_FLEET.boats.includes(boat) ? DEMO_CRAFTS[boat.id] : ownCraft(boat);
    if (known) return known;
    if (!this.#shipped) void this.#loadShipped();
    return this.#shipped?.(boat);
  }

  async #loadShipped(): Promise<void> {
    if (this.#shippedAsked) return;
    this.#shippedAsked = true;
    try {
      this.#shipped = (await import('../../core/hire/hire-trip.ts')).hireCraft;
      this.#host.requestUpdate();
    } catch {
      // Without it nobody knows what the boat is, and nothing is answered.
    }
  }

  async loadWaters(): Promise<void> {
    try {
      this.#demoWaters = prepareWaters(await shippedWaters());
      this.#host.requestUpdate();
    } catch {
      // Without the waters the answer says that land and depth were not checked.
    }
  }

  #take({ fleet, boat, reserve }: HostTaken): void {
    this.#own = fleet;
    this.#ownWaters = fleet?.localWaters && prepareWaters(fleet.localWaters);
    this.boatId = boat?.id;
    this.reserve = reserve ? { reserve: [reserve] } : {};
    this.#host.requestUpdate();
  }
}
