import { html } from 'lit';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Waters } from '../../core/route/waters.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { plannerWords as words } from '../words/en-planner.ts';
import type { Cards } from './cards.ts';
import { loadCard } from './load-card.ts';
import { passageCard } from './passage-card.ts';
import type { PlanMaker } from './plan-maker.ts';
import { plannedSpeed } from './shown.ts';
import type { TripEdits } from './trip-edits.ts';
import type { TripOnScreen } from './trip-on-screen.ts';

export interface Wide {
  readonly cards: Cards;
  readonly screen: TripOnScreen;
  readonly edits: TripEdits;
  readonly maker: PlanMaker;
  readonly waters: WatersFile | undefined;
  readonly measures: Measures;
  /** A saved trip as this page would plan it. */
  readonly prepared: (trip: Trip) => Trip | undefined;
}

/** What follows from the answer: legs, load, passage plan, further questions and what is saved. */
export function wideCards({ cards, screen, edits, maker, waters: file, measures, prepared }: Wide) {
  const { plan, settled, trip, waters } = maker;
  const entered = screen.trip;
  const speed = plannedSpeed(plan, entered.route);
  const shown = cards.shows('passage');
  return [
    cards.wide(
      'legs',
      words.legs,
      plan ? words.stretches(plan.legs.length) : '',
      html`<homeleg-leg-table
        .plan=${plan}
        .measures=${measures}
        .departure=${entered.conditions.departure}
        .route=${entered.route}
        .streamPlaces=${entered.conditions.stream === 'by-tide' ? streamNames(entered, waters) : undefined}
        @stream-picked=${edits.streamPicked}
      ></homeleg-leg-table>`,
    ),
    cards.wide(
      'load',
      words.load,
      '',
      loadCard({ trip, waters, plan, settled, speed, measures, taken: edits.adviceTaken }),
    ),
    cards.wide(
      'passage',
      words.passage,
      words.passageState,
      passageCard({ entered, trip, waters, plan, settled, shown, measures }),
    ),
    cards.wide(
      'further',
      words.further,
      words.furtherState,
      html`<homeleg-further
        .trip=${trip}
        .plan=${plan}
        .waters=${waters}
        .watersFile=${file}
        .settled=${settled}
        .measures=${measures}
        @speed-taken=${edits.speedTaken}
        @departure-taken=${edits.departureTaken}
      ></homeleg-further>`,
    ),
    cards.wide(
      'saved',
      words.savedTitle,
      words.savedState,
      html`<homeleg-saved
        .trip=${entered}
        .planned=${trip}
        .plan=${plan}
        .waters=${waters}
        .prepared=${prepared}
        ?fitted=${maker.measures}
        .measures=${measures}
        @saved-opened=${edits.savedOpened}
      ></homeleg-saved>`,
    ),
  ];
}

/** Names of the places whose stream a leg can take, one's own first. */
function streamNames({ conditions }: Trip, waters: Waters | undefined): readonly string[] {
  return [...new Set([...(conditions.streamPlaces ?? []), ...(waters?.streams ?? [])].map(({ name }) => name))];
}
