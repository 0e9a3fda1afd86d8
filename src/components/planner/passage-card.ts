import { html } from 'lit';
import type { Trip } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';

export interface PassageCard {
  /** As entered. */
  readonly entered: Trip;
  readonly measures: Measures;
}

/** What goes to others: the passage plan, files and the link. */
export function passageCard({ entered, measures }: PassageCard) {
  return html`<homeleg-share-trip .trip=${entered} .measures=${measures}></homeleg-share-trip>`;
}
