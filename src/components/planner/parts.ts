/** What a part of the planner is made of; each is loaded when it is first shown. */
export type Part =
  | 'route'
  | 'boat'
  | 'aboard'
  | 'day'
  | 'kept'
  | 'curve'
  | 'details'
  | 'legs'
  | 'load'
  | 'passage'
  | 'saved'
  | 'further';

const LOAD: Record<Part, () => Promise<unknown>> = {
  route: () => Promise.all([import('../route-map/route-map.ts'), import('../waypoint-table/waypoint-table.ts')]),
  boat: () => import('../craft-form/craft-form.ts'),
  aboard: () =>
    Promise.all([
      import('../deck-plan/deck-plan.ts'),
      import('../attitude/attitude.ts'),
      import('../field/fill-field.ts'),
    ]),
  day: () => import('../conditions-form/conditions-form.ts'),
  kept: () => import('../reserve-form/reserve-form.ts'),
  curve: () => import('../curve-plot/curve-plot.ts'),
  details: () => Promise.all([import('../trip-details/trip-details.ts'), import('../daylight/daylight.ts')]),
  legs: () => import('../leg-table/leg-table.ts'),
  load: () =>
    Promise.all([
      import('../load-advice/seat-advice.ts'),
      import('../load-advice/capacity-table.ts'),
      import('../load-advice/payload-plot.ts'),
      import('../load-advice/load-questions.ts'),
    ]),
  passage: () => Promise.all([import('../passage-plan/passage-plan.ts'), import('../passage-plan/share-trip.ts')]),
  saved: () => import('../saved/saved.ts'),
  further: () => import('../further/further.ts'),
};

/** Loads a part's elements; they come to life where they stand. False where the network or the host refused. */
export async function loadPart(part: Part): Promise<boolean> {
  try {
    await LOAD[part]();
    return true;
  } catch {
    return false;
  }
}
