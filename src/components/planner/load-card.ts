import { html } from 'lit';
import type { Waters } from '../../core/route/waters.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import type { AdviceTaken } from '../load-advice/seat-advice.ts';
import type { Measures } from '../units/measures.ts';
import { loadTitles as titles } from '../words/en-planner.ts';

export interface LoadCard {
  readonly trip: Trip | undefined;
  readonly waters: Waters | undefined;
  readonly plan: Plan | undefined;
  readonly settled: boolean;
  /** Planned, m/s. */
  readonly speed: number | undefined;
  readonly measures: Measures;
  readonly taken: (event: AdviceTaken) => void;
}

/** Where to sit, what it may carry, and what if. */
export function loadCard({ trip, waters, plan, settled, speed, measures, taken }: LoadCard) {
  return html`<div class="load">
    <div>
    <section>
      <h3>${titles.seat}</h3>
      <homeleg-seat-advice
        .trip=${trip}
        .waters=${waters}
        .speed=${speed}
        .measures=${measures}
        @advice-taken=${taken}
      ></homeleg-seat-advice>
    </section>
    <section>
      <h3>${titles.payload}</h3>
      <homeleg-payload-plot
        .trip=${trip}
        .waters=${waters}
        .payload=${settled ? plan?.payload : undefined}
        .speed=${speed}
        .measures=${measures}
      ></homeleg-payload-plot>
    </section>
    </div>
    <div>
    <section>
      <h3>${titles.capacity}</h3>
      <homeleg-capacity-table .trip=${trip} .speed=${speed} .measures=${measures}></homeleg-capacity-table>
    </section>
    <section>
      <homeleg-load-questions
        .trip=${trip}
        .waters=${waters}
        .plan=${plan}
        .speed=${speed}
        .measures=${measures}
      ></homeleg-load-questions>
    </section>
    </div>
  </div>`;
}
