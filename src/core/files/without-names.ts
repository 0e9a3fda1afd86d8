import type { Load } from '../load/shapes.ts';
import type { Trials } from '../trials/shapes.ts';
import type { Trip } from '../trip/shapes.ts';

/**
 * A trip without what tells of people: its title, the names of who and what is aboard, and the notes and the measurer
 * of trial runs. The boat, its places, the waypoints and every figure stay, so the plan is the same one.
 */
export function withoutNames({ name: _, ...trip }: Trip): Trip {
  return {
    ...trip,
    load: unnamed(trip.load),
    ...(trip.trials && { trials: unsigned(trip.trials) }),
  };
}

function unsigned({ measuredBy: _, ...trials }: Trials): Trials {
  return {
    ...trials,
    runs: trials.runs.map(({ note: _, ...run }) => ({ ...run, load: unnamed(run.load) })),
    refills: trials.refills.map(({ note: _, ...refill }) => ({ ...refill, load: unnamed(refill.load) })),
  };
}

/** Somebody may have made ids of names, so they are counted anew; nothing refers to them. */
function unnamed(load: Load): Load {
  return { ...load, items: load.items.map(({ name: _, ...item }, at) => ({ ...item, id: String(at + 1) })) };
}
