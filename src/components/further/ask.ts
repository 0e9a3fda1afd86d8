import type { WatersFile } from '../../core/route/shapes.ts';
import type { Waters } from '../../core/route/waters.ts';
import type { Plan, Trip } from '../../core/trip/shapes.ts';
import { type Standing, standingOf } from '../../core/trip/standing.ts';

/** A trip as it stands with its settled plan: what every further question starts from. */
export class Ask {
  readonly trip: Trip;
  readonly plan: Plan;
  readonly waters: Waters | undefined;
  /** The same waters as plain data, for a worker. */
  readonly file: WatersFile | undefined;
  #opened: { readonly standing: Standing | undefined } | undefined;

  constructor(trip: Trip, plan: Plan, waters: Waters | undefined, file: WatersFile | undefined) {
    this.trip = trip;
    this.plan = plan;
    this.waters = waters;
    this.file = file;
  }

  /** Worked out when first asked for; undefined where the route cannot be opened. */
  get standing(): Standing | undefined {
    if (!this.#opened) {
      const found = standingOf(this.trip, this.waters);
      this.#opened = { standing: found.ok ? found.value : undefined };
    }
    return this.#opened.standing;
  }

  get departure(): string | undefined {
    return this.trip.conditions.departure;
  }
}
