import type { Trip } from '../../core/trip/shapes.ts';

export const EXAMPLES = ['petrol-day', 'electric-tender', 'hire-hull'] as const;
export type ExampleName = (typeof EXAMPLES)[number];

const FILES: Record<ExampleName, () => Promise<{ default: unknown }>> = {
  'petrol-day': () => import('../../../shared/trips/petrol-day.json'),
  'electric-tender': () => import('../../../shared/trips/electric-tender.json'),
  'hire-hull': () => import('../../../shared/trips/hire-hull.json'),
};

/** A shipped example trip, loaded when asked for; undefined where it cannot be loaded. */
export async function exampleTrip(name: ExampleName): Promise<Trip | undefined> {
  try {
    const { readTrip } = await import('../../core/files/trip-schema.ts');
    const read = readTrip((await FILES[name]()).default);
    return read.ok ? read.value : undefined;
  } catch {
    return undefined;
  }
}
