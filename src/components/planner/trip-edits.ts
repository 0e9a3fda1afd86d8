import type { Waypoint } from '../../core/route/shapes.ts';
import type { ConditionsEdited } from '../conditions-form/conditions-form.ts';
import type { CraftEdited } from '../craft-form/craft-form.ts';
import type { LoadEdited, StoreMoved } from '../deck-plan/deck-plan.ts';
import type { FillEdited } from '../field/fill-field.ts';
import type { StreamPicked } from '../leg-table/leg-streams.ts';
import type { AdviceTaken } from '../load-advice/seat-advice.ts';
import type { PolicyEdited } from '../reserve-form/reserve-form.ts';
import type { RouteEdited } from '../route-map/route-map.ts';
import type { SavedOpened } from '../saved/saved.ts';
import type { SpeedTaken } from '../speed-choice/speed-choice.ts';
import type { DepartureTaken } from '../start-times/start-times.ts';
import { afterPicture } from '../turn.ts';
import type { RouteSettingsEdited } from '../waypoint-table/waypoint-table.ts';
import { measuredWords } from '../words/en-measured.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import { followedStreams } from './followed-streams.ts';
import { seated } from './seated.ts';
import type { TripOnScreen } from './trip-on-screen.ts';
import { withBoat } from './with-boat.ts';

/** So many times as long as a plan and its picture took is the hand's own, as long as it moves; and at most this, ms. */
const HAND = 3;
const LONGEST_REST = 600;

/** What the parts of the planner report as edited, made a changed trip: one listener per event. */
export class TripEdits {
  readonly #screen: TripOnScreen;
  /** The route under a finger that goes on moving. */
  #moving: RouteEdited['detail']['waypoints'] | undefined;
  /** When the next plan of a moving route is due. */
  #rested = 0;

  constructor(screen: TripOnScreen) {
    this.#screen = screen;
  }

  readonly routeEdited = (event: RouteEdited): void => {
    event.stopPropagation();
    const { waypoints, live } = event.detail;
    if (!live) {
      this.#moving = undefined;
      this.#routeDrawn(waypoints);
      return;
    }
    // The map has drawn it already: the picture goes before what the plan says of it, and of several moves the last.
    const waits = this.#moving !== undefined;
    this.#moving = waypoints;
    if (!waits) void this.#follow();
  };

  /** Plans under a moving hand: each once the hand had time for itself, in which only the line moves. */
  async #follow(): Promise<void> {
    await afterPicture();
    const rest = this.#rested - performance.now();
    if (rest > 0) await new Promise((done) => setTimeout(done, rest));
    const waypoints = this.#moving;
    this.#moving = undefined;
    if (!waypoints) return;
    const from = performance.now();
    this.#routeDrawn(waypoints);
    await afterPicture();
    const now = performance.now();
    this.#rested = now + Math.min(HAND * (now - from), LONGEST_REST);
  }

  #routeDrawn(waypoints: RouteEdited['detail']['waypoints']): void {
    const { trip } = this.#screen;
    this.#screen.change({ ...trip, route: { ...trip.route, waypoints: waypoints as Waypoint[] } });
  }

  readonly settingsEdited = ({ detail }: RouteSettingsEdited): void => {
    const { trip } = this.#screen;
    this.#screen.change({ ...trip, route: { ...trip.route, ...detail } });
  };

  readonly speedTaken = ({ detail }: SpeedTaken): void => {
    this.#screen.change({ ...this.#screen.trip, route: detail.route });
  };

  readonly departureTaken = ({ detail }: DepartureTaken): void => {
    const { trip } = this.#screen;
    this.#screen.change({ ...trip, conditions: { ...trip.conditions, ...detail } });
  };

  readonly craftEdited = ({ detail }: CraftEdited): void => {
    const { trip } = this.#screen;
    const { craft, hullId, engineId, storeId } = detail;
    this.#screen.change(
      { ...trip, craft, load: seated(trip.load, craft.hull, trip.craft.hull) },
      { hullId, engineId, storeId },
    );
  };

  readonly loadEdited = ({ detail }: LoadEdited): void => {
    this.#screen.change({ ...this.#screen.trip, load: detail.load });
  };

  readonly storeMoved = ({ detail }: StoreMoved): void => {
    const { trip } = this.#screen;
    this.#screen.change({ ...trip, craft: { ...trip.craft, store: detail.store } });
  };

  readonly adviceTaken = ({ detail }: AdviceTaken): void => {
    const { trip } = this.#screen;
    this.#screen.change({ ...trip, load: detail.load, craft: { ...trip.craft, store: detail.store } });
  };

  readonly fillEdited = ({ detail }: FillEdited): void => {
    const { trip } = this.#screen;
    const { fill, fillKnownBy } = detail;
    this.#screen.change({ ...trip, load: { ...trip.load, fill, fillKnownBy } });
  };

  readonly conditionsEdited = ({ detail }: ConditionsEdited): void => {
    const { trip } = this.#screen;
    const { conditions } = detail;
    const route = followedStreams(trip.route, trip.conditions.streamPlaces, conditions.streamPlaces);
    this.#screen.change({ ...trip, route, conditions });
  };

  readonly streamPicked = ({ detail: { waypoint, name } }: StreamPicked): void => {
    const { trip } = this.#screen;
    const waypoints = trip.route.waypoints.map((each, i) => {
      if (i !== waypoint) return each;
      const { streamPlace: _, ...rest } = each;
      return name === undefined ? rest : { ...rest, streamPlace: name };
    });
    this.#screen.change({ ...trip, route: { ...trip.route, waypoints } });
  };

  readonly policyEdited = ({ detail }: PolicyEdited): void => {
    this.#screen.change({ ...this.#screen.trip, policy: detail.policy });
  };

  readonly trialsForgotten = (): void => {
    const { trials: _, ...trip } = this.#screen.trip;
    this.#screen.replace({ trip, origin: this.#screen.draft.origin }, measuredWords.forgotten);
  };

  readonly savedOpened = ({ detail }: SavedOpened): void => {
    const next = 'trip' in detail ? detail.trip : withBoat(this.#screen.trip, detail.boat);
    this.#screen.replace({ trip: next, origin: {} }, words.opened(detail.name));
  };
}
