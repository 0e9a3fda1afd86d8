import { html, nothing } from 'lit';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Policy } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import type { Cards } from './cards.ts';
import type { PlanMaker } from './plan-maker.ts';
import { hazardsOf, plannedSpeed, tidal } from './shown.ts';
import { cardStates } from './states.ts';
import type { TripEdits } from './trip-edits.ts';
import type { TripOnScreen } from './trip-on-screen.ts';
import { watersLine } from './waters-line.ts';

export interface Asked {
  readonly cards: Cards;
  readonly screen: TripOnScreen;
  readonly edits: TripEdits;
  readonly maker: PlanMaker;
  readonly waters: WatersFile | undefined;
  readonly measures: Measures;
  readonly map: {
    readonly tiles: string;
    readonly tilesAttribution: string;
    readonly center: string;
    readonly zoom: number | undefined;
  };
  readonly forecastSource: string;
  readonly tighten: Partial<Policy>;
  /** The page's boats to choose from. */
  readonly boats: unknown;
}

/** What a trip is made of, one card each: route, boat, who and what is aboard, the day, and what is kept back. */
export function questionCards(asked: Asked) {
  const { cards, screen, maker, measures } = asked;
  const states = cardStates(screen.trip, measures, maker.plan);
  return [
    cards.question('route', 1, states.route, routeInside(asked)),
    cards.question('boat', 2, states.boat, boatInside(asked)),
    cards.question('aboard', 3, states.aboard, aboardInside(asked)),
    cards.question('day', 4, states.day, dayInside(asked)),
    cards.question('kept', 5, states.kept, keptInside(asked)),
  ];
}

function kindOfStore({ screen }: Asked): 'charge' | 'fuel' {
  return screen.trip.craft.drive.kind === 'electric' ? 'charge' : 'fuel';
}

function routeInside(asked: Asked) {
  const { screen, edits, maker, waters, measures, map } = asked;
  const { trip } = screen;
  const { plan } = maker;
  return html`
    ${waters ? html`<p class="hint">${watersLine(waters)}</p>` : nothing}
    <homeleg-route-map
      .route=${trip.route}
      .waters=${waters}
      .legs=${plan?.legs}
      .turnBack=${plan?.turnBack?.onRoute ? plan.turnBack : undefined}
      .hazards=${hazardsOf(plan, measures)}
      .measures=${measures}
      .tiles=${map.tiles}
      .fresh=${screen.count}
      .trip=${maker.trip}
      .chart=${maker.waters}
      .tilesAttribution=${map.tilesAttribution}
      .center=${map.center}
      .zoom=${map.zoom}
      @route-edited=${edits.routeEdited}
    ></homeleg-route-map>
    <homeleg-waypoint-table
      .route=${trip.route}
      .legs=${plan?.legs}
      .waters=${waters}
      .departure=${trip.conditions.departure}
      .fresh=${screen.count}
      .store=${kindOfStore(asked)}
      .measures=${measures}
      @route-edited=${edits.routeEdited}
      @route-settings-edited=${edits.settingsEdited}
    ></homeleg-waypoint-table>
  `;
}

function boatInside({ screen, edits, maker, measures, boats }: Asked) {
  const { trip, origin } = screen.draft;
  const { measured } = maker;
  const note =
    measured &&
    html`<homeleg-measured-note
      .trials=${measured.trials}
      .fit=${measured.fit}
      ?other-hull=${measured.otherHull}
      .measures=${measures}
      @trials-forgotten=${edits.trialsForgotten}
    ></homeleg-measured-note>`;
  return html`${boats}<homeleg-craft-form
      .craft=${trip.craft}
      .hullId=${origin.hullId}
      .engineId=${origin.engineId}
      .storeId=${origin.storeId}
      .measures=${measures}
      @craft-edited=${edits.craftEdited}
    ></homeleg-craft-form>
    ${note ?? nothing}`;
}

function aboardInside(asked: Asked) {
  const { screen, edits, maker, measures } = asked;
  const { trip } = screen;
  const { plan } = maker;
  return html`
    <homeleg-deck-plan
      .craft=${trip.craft}
      .load=${trip.load}
      .balance=${plan?.balance}
      .measures=${measures}
      @load-edited=${edits.loadEdited}
      @store-moved=${edits.storeMoved}
    >
      <homeleg-attitude
        .trip=${maker.trip}
        .plan=${plan}
        .speed=${plannedSpeed(plan, trip.route)}
        .measures=${measures}
      ></homeleg-attitude>
    </homeleg-deck-plan>
    <homeleg-fill-field
      .fill=${trip.load.fill}
      .fillKnownBy=${trip.load.fillKnownBy}
      .store=${kindOfStore(asked)}
      .full=${plan?.full}
      .measures=${measures}
      @fill-edited=${edits.fillEdited}
    ></homeleg-fill-field>
  `;
}

function dayInside(asked: Asked) {
  const { screen, edits, maker, waters, measures, forecastSource } = asked;
  const { trip } = screen;
  return html`<homeleg-conditions-form
    .conditions=${trip.conditions}
    .duration=${maker.plan?.time}
    .place=${trip.route.waypoints[0]}
    .waypoints=${trip.route.waypoints}
    .streamsOfWaters=${maker.waters?.streams}
    .forecastSource=${forecastSource}
    ?waters-told=${waters !== undefined}
    ?tidal=${tidal(waters)}
    ?electric=${kindOfStore(asked) === 'charge'}
    .measures=${measures}
    @conditions-edited=${edits.conditionsEdited}
  ></homeleg-conditions-form>`;
}

function keptInside({ screen, edits, tighten, measures }: Asked) {
  return html`<homeleg-reserve-form
    .policy=${screen.trip.policy}
    .tighten=${tighten}
    .measures=${measures}
    @policy-edited=${edits.policyEdited}
  ></homeleg-reserve-form>`;
}
