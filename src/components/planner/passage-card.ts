import { html } from 'lit';
import type { Waters } from '../../core/route/waters.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';

export interface PassageCard {
  /** As entered, and as planned. */
  readonly entered: Trip;
  readonly trip: Trip | undefined;
  readonly waters: Waters | undefined;
  readonly plan: Plan | undefined;
  readonly settled: boolean;
  readonly shown: boolean;
  readonly measures: Measures;
}

/** What goes to others: the passage plan, files and the link. */
export function passageCard({ entered, trip, waters, plan, settled, shown, measures }: PassageCard) {
  return html`
    <homeleg-passage-plan
      .trip=${trip}
      .waters=${waters}
      .plan=${plan}
      ?settled=${settled}
      ?shown=${shown}
      .measures=${measures}
    ></homeleg-passage-plan>
    <homeleg-share-trip .trip=${entered} .measures=${measures}></homeleg-share-trip>
  `;
}
